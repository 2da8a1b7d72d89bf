#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/vocabulary.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::reference {

/// Every published number that a calculation needs, in one system of units. They are built into the
/// program from data/*.yaml; nothing is read from disk. The code and the method are the first of
/// codes() and methods(): a mix is worked with `tables_for(mix)`.
const core::Tables& tables(core::UnitSystem system);

/// The same, with the code that the requirements name or bring.
core::Tables tables_for(const core::Requirements& asked, core::UnitSystem system);

/// The same with the method that the mix names: what a mix is worked with.
core::Tables tables_for(const core::AnyCompleteMix& mix);

/// The tables that a mix is worked with where another method is asked.
core::Tables tables_for(const core::CompleteMix& mix, core::Method method);

/// The methods of proportioning known here, the one that holds where a file names none first.
std::vector<core::Method> methods();

/// One of `codes()`, in one system of units; nothing for another name.
///
/// @param name one of `codes()`, or empty: the first of them, as where a file names none
std::optional<core::CodeTables> code(const std::string& name, core::UnitSystem system);

/// The words of the published tables, for the reader of files. Made once.
const core::Vocabulary& vocabulary();

/// The codes whose limits are known here, the one that holds where a file names none first.
std::vector<std::string> codes();

} // namespace boardmark::reference
