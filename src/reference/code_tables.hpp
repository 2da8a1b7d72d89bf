#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/code_tables.hpp>

namespace boardmark::reference {

/// Exposure classes and requirements of ACI 318-19 and the ACI 301 rules it relies on.
core::CodeTables code_tables(core::UnitSystem system);

} // namespace boardmark::reference
