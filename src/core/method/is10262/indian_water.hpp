#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/method/method_tables.hpp>
#include <boardmark/core/mix/mix.hpp>

#include "../mixing_water.hpp"

namespace boardmark::core {

/// Mixing water by size, slump and the shape of the stone, recorded.
/// Unresolved where the table does not reach the size, or the shape is not stated.
Outcome<double> indian_water_kg_m3(const Mix& mix, const WaterEntry& entry,
                                   const MethodTables& method, Worksheet& worksheet);

} // namespace boardmark::core
