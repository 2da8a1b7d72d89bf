#pragma once

#include <boardmark/core/basis/deferred.hpp>
#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/class_names.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include <string_view>

namespace boardmark::reference {

/// One of the codes of data/ by its name, made once for a system; the first for any other name: it
/// is the one that requirements are held against where a file names none.
const core::Deferred<core::CodeTables>& kept_code(std::string_view name, core::UnitSystem system);

/// The names of its classes, made once, without reading what they ask.
const core::ClassNames& names_of_classes(std::string_view name);

} // namespace boardmark::reference
