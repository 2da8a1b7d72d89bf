#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/code/printed_code.hpp>

namespace boardmark::reference {

/// The tables of a code that a user's file prints, by the same rules as those of data/. What the
/// file does not have — strength classes, sizes of stone — is that of data/.
core::CodeTables code_of_print(const core::PrintedCode& code, core::UnitSystem system);

} // namespace boardmark::reference
