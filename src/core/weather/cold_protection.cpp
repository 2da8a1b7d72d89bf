#include <boardmark/core/weather/cold_protection.hpp>

#include "../basis/tolerance.hpp"

namespace boardmark::core {
namespace {

double days_of(const ProtectionDays& row, const ColdPour& pour) {
    return pour.accelerated ? row.accelerated_d : row.normal_d;
}

} // namespace

std::optional<ColdPlan> cold_plan(const ColdPour& pour, const CuringRules& rules,
                                  const WeatherTables& weather) {
    if (!pour.coldest_c || !below(*pour.coldest_c, weather.cold_air_c.value)) {
        return std::nullopt;
    }
    constexpr double freezing_c = 0;
    const ProtectionRules& table = rules.protection;
    const double loaded_d = days_of(table.partial_load_exposed, pour);
    const double unloaded_d =
        days_of(pour.exposed ? table.no_load_exposed : table.no_load_not_exposed, pour);
    ColdPlan plan{.coldest_c = *pour.coldest_c,
                  .days = pour.loaded.value_or(false) ? loaded_d : unloaded_d,
                  .days_if_loaded = loaded_d,
                  .loaded = pour.loaded,
                  .least_c = weather.section(pour.thinnest_mm).least_placed_c,
                  .most_fall_k = weather.section(pour.thickest_mm).most_fall_k,
                  .frost_strength_mpa = pour.frost_strength_mpa,
                  .days_source = table.source,
                  .freezes = !above(*pour.coldest_c, freezing_c)};
    if (pour.held_at_c) {
        plan.fall_k = *pour.held_at_c - *pour.coldest_c;
    }
    if (pour.lift.strength_28d_mpa && pour.lift.gain && !pour.held.empty()) {
        plan.frost_strength_h =
            age_of_part_h(pour.held, pour.frost_strength_mpa / *pour.lift.strength_28d_mpa,
                          *pour.lift.gain, rules);
    }
    return plan;
}

} // namespace boardmark::core
