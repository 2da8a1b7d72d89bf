#pragma once

#include <boardmark/core/basis/tables.hpp>

namespace boardmark::reference {

/// Advice for a board-marked face.
core::FinishTables finish_tables(core::UnitSystem system);

} // namespace boardmark::reference
