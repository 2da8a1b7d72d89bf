#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/method/method_tables.hpp>

namespace boardmark::reference {

/// Tables of ACI 211.1-91.
core::MethodTables method_tables(core::UnitSystem system);

} // namespace boardmark::reference
