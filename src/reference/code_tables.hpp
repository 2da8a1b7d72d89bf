#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include "code_data.hpp"

#include <string_view>

namespace boardmark::reference {

/// A code from its tables, in one system of units. Asserts that the ones it must have are there:
/// PREFIX-exposure and PREFIX-aggregate-size. Average strength is one practice for all codes.
core::CodeTables code_tables(const CodeData& data, core::UnitSystem system);

/// One of the codes of data/ by its name; the first for any other name.
core::CodeTables code_named(std::string_view name, core::UnitSystem system);

/// The code that `requirements` are held against where a file names none: the first of data/.
core::CodeTables first_code(core::UnitSystem system);

} // namespace boardmark::reference
