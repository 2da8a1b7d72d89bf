#pragma once

#include <boardmark/core/basis/tables.hpp>

namespace boardmark::reference {

core::TrialTables trial_tables(core::UnitSystem system);

} // namespace boardmark::reference
