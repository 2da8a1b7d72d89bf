#pragma once

#include <boardmark/core/basis/tables.hpp>

namespace boardmark::reference {

core::PlacingTables placing_tables(core::UnitSystem system);

} // namespace boardmark::reference
