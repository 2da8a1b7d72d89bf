#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/trial/trial_tables.hpp>

namespace boardmark::reference {

core::TrialTables trial_tables(core::UnitSystem system);

} // namespace boardmark::reference
