#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/checks/finish_tables.hpp>

namespace boardmark::reference {

/// Advice for a board-marked face.
core::FinishTables finish_tables(core::UnitSystem system);

} // namespace boardmark::reference
