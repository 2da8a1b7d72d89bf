// The steps of the British method: a target of cubes that waits for the air, free water by its
// table, ratio, density and fines by the user's readings of its charts.

#include <boardmark/core/basis/tables.hpp>

#include "../method_steps.hpp"
#include "british_aggregates.hpp"
#include "british_target.hpp"
#include "british_water.hpp"
#include "chart_readings.hpp"

namespace boardmark::core {

const MethodSteps& british_steps() {
    static constexpr MethodSteps steps{
        .average_before_air = [](const Mix&, const Tables&, Worksheet&)
            -> Outcome<std::optional<double>> { return std::optional<double>{}; },
        .average_with_air =
            [](const Mix& mix, double entrained_percent, const Tables& tables,
               Worksheet& worksheet) {
                return british_target_mpa(mix, entrained_percent, tables, worksheet);
            },
        .ratio_by_strength = [](const Mix& mix, const PasteDemand& demand, const Tables& tables,
                                Worksheet&) -> Outcome<double> {
            return no_ratio_reading(mix, {demand.average_mpa}, tables.method);
        },
        .water_kg_m3 =
            [](const Mix& mix, const WaterEntry& entry, const Tables& tables,
               Worksheet& worksheet) {
                return british_water_kg_m3(mix, entry, tables.method, worksheet);
            },
        .add_aggregates = add_british_aggregates,
        .entrapped_air = [](const MethodTables&) -> const SizeRow* { return nullptr; },
        .is_checked_by_mass = false,
        .has_margin_of_cubes = true};
    return steps;
}

} // namespace boardmark::core
