#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include "code_data.hpp"

namespace boardmark::reference {

/// The common practice, and the code's own rule where it has one.
core::AverageStrengthRules average_strength_rules(const CodeData& data, core::UnitSystem system);

} // namespace boardmark::reference
