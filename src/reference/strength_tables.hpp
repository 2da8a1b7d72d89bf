#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

namespace boardmark::reference {

/// How strength tests are judged and evaluated.
core::StrengthTables strength_tables(core::UnitSystem system);

} // namespace boardmark::reference
