#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/vocabulary.hpp>

#include <string>
#include <vector>

namespace boardmark::reference {

/// Every published number that a calculation needs, in one system of units. They are built into the
/// program from data/*.yaml; nothing is read from disk.
core::Tables tables(core::UnitSystem system);

/// The words of the published tables, for the reader of files.
core::Vocabulary vocabulary();

/// The codes whose limits are known here.
std::vector<std::string> codes();

} // namespace boardmark::reference
