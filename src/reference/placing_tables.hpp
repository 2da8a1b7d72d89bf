#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/placing/placing_tables.hpp>

namespace boardmark::reference {

core::PlacingTables placing_tables(core::UnitSystem system);

} // namespace boardmark::reference
