#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/panels/panel_tables.hpp>

namespace boardmark::reference {

core::PanelTables panel_tables(core::UnitSystem system);

} // namespace boardmark::reference
