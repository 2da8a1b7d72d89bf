#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>

namespace boardmark::core {

struct Tables;

/// With what the water table is entered.
struct WaterEntry {
    double slump_mm;
    double size_mm;
    bool air_entrained;
};

/// Water by the method's table, recorded with its reason.
/// Unresolved where the table does not reach the slump or the size.
Outcome<double> table_water_kg_m3(const WaterEntry& entry, const Tables& tables,
                                  Worksheet& worksheet);

} // namespace boardmark::core
