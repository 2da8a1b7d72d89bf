#pragma once

#include <boardmark/core/tables.hpp>

namespace boardmark::reference {

core::PlacingTables placing_tables(core::UnitSystem system);

} // namespace boardmark::reference
