#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/method/method_tables.hpp>
#include <boardmark/core/mix/mix.hpp>

#include "../mixing_water.hpp"

namespace boardmark::core {

/// Free water by size, slump and the surfaces of the aggregates, recorded. Where they differ it is
/// two thirds by the fine and one third by the coarse. Entrained air lets it be taken from the next
/// lower range of slump.
/// Unresolved where the table does not reach, or a surface is not stated.
Outcome<double> british_water_kg_m3(const Mix& mix, const WaterEntry& entry,
                                    const MethodTables& method, Worksheet& worksheet);

} // namespace boardmark::core
