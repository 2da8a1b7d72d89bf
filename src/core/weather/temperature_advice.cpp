#include "temperature_advice.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "placing_temperature.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// The temperature as mixed that a haul turns into one as placed.
double before_haul_c(double placed_c, const PlacingConditions& placing,
                     const WeatherTables& weather) {
    if (!placing.haul_h || !placing.air_c) {
        return placed_c;
    }
    const double lost = std::min(weather.haul_share.value * *placing.haul_h, 0.9);
    return (placed_c - lost * *placing.air_c) / (1 - lost);
}

/// A mixture with its water at the hottest that may be batched.
MixtureHeat with_hottest_water(MixtureHeat heat, const WeatherTables& weather) {
    heat.water_c = weather.hottest_water_c.value;
    return heat;
}

void advise_hot_water(const MixtureHeat& heat, double target_c, const WeatherTables& weather,
                      Worksheet& worksheet) {
    const TypicalFigure& hottest = weather.hottest_water_c;
    const auto water_c = water_temperature_for_c(heat, target_c, weather);
    const Argument target = quantity("target", {target_c, Measure::temperature});
    if (water_c && !above(*water_c, hottest.value)) {
        worksheet.steps.push_back(
            {.quantity = "advised_water_temperature",
             .value = *water_c,
             .measure = Measure::temperature,
             .provenance = Provenance::computed,
             .reason = {"water this hot brings the mixture to {target}, which cold weather and the "
                        "haul require; hot water meets the aggregates before the cement",
                        {target}},
             .source = weather.solids_heat.source,
             .marks = with_confidence({Mark::estimate}, weather.solids_heat.source),
             .keep = Keep::at_least});
        return;
    }
    const double reached_c = mixture_temperature_c(with_hottest_water(heat, weather), weather);
    worksheet.cautions.push_back(
        {"The mixture is too cold, and even water at {hottest} brings it only to {reached} of "
         "{target}: heat the aggregates too, and use no ice ({source}).",
         {quantity("hottest", {hottest.value, Measure::temperature}),
          quantity("reached", {reached_c, Measure::temperature}), target,
          word("source", hottest.source.citation)}});
}

void advise_ice(const MixtureHeat& heat, double target_c, const WeatherTables& weather,
                Worksheet& worksheet) {
    const double ice_kg_m3 = ice_for_kg(heat, target_c, weather);
    const Argument target = quantity("target", {target_c, Measure::temperature});
    if (!above(ice_kg_m3, heat.water_kg)) {
        worksheet.steps.push_back(
            {.quantity = "advised_ice",
             .value = ice_kg_m3,
             .measure = Measure::concentration,
             .provenance = Provenance::computed,
             .reason = {"as much ice in place of batched water brings the mixture down to "
                        "{target} as mixed",
                        {target}},
             .source = weather.ice_as_water_c.source,
             .marks = with_confidence({Mark::estimate}, weather.ice_as_water_c.source),
             .keep = Keep::at_least});
        return;
    }
    worksheet.cautions.push_back(
        {"The mixture is too hot, and even ice for all of the {water} to batch does not bring it "
         "down to {target}: shade and sprinkle the aggregates, place at night.",
         {quantity("water", {heat.water_kg, Measure::concentration}), target}});
}

} // namespace

void advise_temperature(const Requirements& requirements, const MixtureTemperature& temperature,
                        const Tables& tables, Worksheet& worksheet) {
    const WeatherTables& weather = tables.weather;
    const PlacingConditions& placing = requirements.placing;
    if (is_cold(placing, weather)) {
        const double least_placed_c = cold_section(requirements, weather).least_placed_c.value;
        const double target_c = std::max(least_mixed(requirements, weather).value,
                                         before_haul_c(least_placed_c, placing, weather));
        if (below(*temperature.mixed_c, target_c)) {
            advise_hot_water(*temperature.heat, target_c, weather, worksheet);
        }
        return;
    }
    const double most_c = before_haul_c(weather.hottest_c.value, placing, weather);
    if (above(*temperature.mixed_c, most_c)) {
        advise_ice(*temperature.heat, most_c, weather, worksheet);
    }
}

} // namespace boardmark::core
