#include "placing_temperature.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/exposure_limits.hpp"
#include "mixture_heat.hpp"
#include "temperature_advice.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool speaks_of_temperature(const Requirements& requirements, const BatchedWater& water,
                           const Proportions& proportions) {
    const PlacingConditions& placing = requirements.placing;
    return water.temperature_c || water.ice_kg_m3 > 0 || placing.air_c || placing.wind_km_h ||
           placing.humidity_percent ||
           std::ranges::any_of(proportions.ingredients, [](const Ingredient& ingredient) {
               return ingredient.material && ingredient.material->temperature_c;
           });
}

/// The ice must fit into the water to batch, which wet aggregates make less.
std::optional<Unresolved> demand_water_for_ice(const BatchedWater& water,
                                               const MixtureTemperature& temperature,
                                               const Proportions& proportions) {
    const double room_kg_m3 = temperature.heat ? temperature.heat->water_kg
                                               : of_role(proportions, Role::water).front()->kg_m3;
    if (water.ice_kg_m3 > 0 && above(water.ice_kg_m3, room_kg_m3)) {
        return Unresolved{{"{ice} of ice replaces more water than there is to batch, {water}",
                           {quantity("ice", {water.ice_kg_m3, Measure::concentration}),
                            quantity("water", {room_kg_m3, Measure::concentration})}},
                          {{"use less ice and cool the aggregates", {}},
                           {"let wet aggregates drain: then more of the water is batched", {}}}};
    }
    return std::nullopt;
}

Step mixture_step(const MixtureHeat& heat, double mixed_c, const WeatherTables& weather) {
    Step step{.quantity = "mixture_temperature",
              .value = mixed_c,
              .measure = Measure::temperature,
              .provenance = Provenance::computed,
              .reason = {"as mixed: {solids} of solids at {solids_temperature} hold {share} of the "
                         "heat of water, {free} on the aggregates at {free_temperature}, {water} "
                         "batched at {water_temperature}",
                         {quantity("solids", {heat.solids_kg, Measure::concentration}),
                          quantity("solids_temperature", {heat.solids_c, Measure::temperature}),
                          quantity("share", {weather.solids_heat.value, Measure::ratio}),
                          quantity("free", {heat.free_water_kg, Measure::concentration}),
                          quantity("free_temperature", {heat.free_water_c, Measure::temperature}),
                          quantity("water", {heat.water_kg - heat.ice_kg, Measure::concentration}),
                          quantity("water_temperature", {heat.water_c, Measure::temperature})}},
              .source = weather.solids_heat.source,
              .marks = with_confidence({Mark::estimate}, weather.solids_heat.source)};
    if (heat.frozen_kg > 0) {
        step.reason.text +=
            "; {frozen} of that on the aggregates is ice and takes the heat to melt it";
        step.reason.arguments.push_back(
            quantity("frozen", {heat.frozen_kg, Measure::concentration}));
    }
    if (heat.ice_kg > 0) {
        step.reason.text += ", {ice} of ice";
        step.reason.arguments.push_back(quantity("ice", {heat.ice_kg, Measure::concentration}));
    }
    return step;
}

Step haul_step(double mixed_c, double placed_c, const PlacingConditions& placing,
               const WeatherTables& weather) {
    return {.quantity = "placing_temperature",
            .value = placed_c,
            .measure = Measure::temperature,
            .provenance = Provenance::computed,
            .reason = {"a drum loses {share} of the difference to the air in an hour: {mixed} as "
                       "mixed, {haul} in air of {air}",
                       {quantity("share", {weather.haul_share.value, Measure::ratio}),
                        quantity("mixed", {mixed_c, Measure::temperature}),
                        quantity("haul", {*placing.haul_h, Measure::duration}),
                        quantity("air", {*placing.air_c, Measure::temperature})}},
            .source = weather.haul_share.source,
            .marks = with_confidence({Mark::estimate}, weather.haul_share.source)};
}

void caution_hot_water(const BatchedWater& water, const WeatherTables& weather,
                       Worksheet& worksheet) {
    const TypicalFigure& hottest = weather.hottest_water_c;
    if (water.temperature_c && above(*water.temperature_c, hottest.value)) {
        worksheet.caution([&] {
            return Phrase{"Water at {water}, above {hottest}, can make the cement set at once: mix "
                          "it with the "
                          "aggregates first ({source}).",
                          {quantity("water", {*water.temperature_c, Measure::temperature}),
                           quantity("hottest", {hottest.value, Measure::temperature}),
                           word("source", hottest.source.citation)}};
        });
    }
}

/// Mixing melts the film on a stone, not a lump.
void caution_frozen_aggregate(const WeatherTables& weather, Proportions& proportions) {
    std::vector<std::string> frozen;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (is_frozen(ingredient)) {
            frozen.emplace_back(ingredient.name);
        }
    }
    if (frozen.empty()) {
        return;
    }
    proportions.worksheet.caution([&] {
        return Phrase{
            "Frozen: {aggregates}. Thaw before batching: frozen lumps, ice and snow do not "
            "melt in the mixer ({source}).",
            {word("aggregates", joined(frozen)), word("source", weather.ice_heat.source.citation)}};
    });
}

} // namespace

bool is_cold(const PlacingConditions& placing, const WeatherTables& weather) {
    return placing.air_c && below(*placing.air_c, weather.cold_air_c.value);
}

std::optional<double> after_haul_c(double mixed_c, const PlacingConditions& placing,
                                   const WeatherTables& weather) {
    if (!placing.haul_h || !placing.air_c) {
        return std::nullopt;
    }
    return mixed_c - *placing.haul_h * haul_loss_k_per_h(mixed_c, *placing.air_c, weather);
}

const ColdSection& cold_section(const Requirements& requirements, const WeatherTables& weather) {
    return weather.section(requirements.section.thickness_mm.value_or(0));
}

const TypicalFigure& least_mixed(const Requirements& requirements, const WeatherTables& weather) {
    const ColdSection& section = cold_section(requirements, weather);
    const double air_c = *requirements.placing.air_c;
    return above(air_c, weather.mild_air_c)     ? section.least_mixed_mild_c
           : below(air_c, weather.bitter_air_c) ? section.least_mixed_bitter_c
                                                : section.least_mixed_hard_c;
}

std::optional<Unresolved> record_temperature(const Requirements& requirements,
                                             const BatchedWater& water, Proportions& proportions,
                                             const Tables& tables) {
    if (!speaks_of_temperature(requirements, water, proportions)) {
        return std::nullopt;
    }
    const WeatherTables& weather = tables.weather;
    MixtureTemperature temperature = heat_of(proportions, water);
    if (auto why = demand_water_for_ice(water, temperature, proportions)) {
        return why;
    }
    if (temperature.heat) {
        const double mixed_c = mixture_temperature_c(*temperature.heat, weather);
        temperature.mixed_c = mixed_c;
        Worksheet& worksheet = proportions.worksheet;
        worksheet.record([&] { return mixture_step(*temperature.heat, mixed_c, weather); });
        temperature.placed_c = after_haul_c(mixed_c, requirements.placing, weather);
        if (temperature.placed_c) {
            worksheet.record([&] {
                return haul_step(mixed_c, *temperature.placed_c, requirements.placing, weather);
            });
        }
        if (worksheet.is_told) {
            advise_temperature(requirements, temperature, tables, worksheet);
        }
    }
    caution_hot_water(water, weather, proportions.worksheet);
    caution_frozen_aggregate(weather, proportions);
    temperature.ice_kg_m3 = water.ice_kg_m3;
    if (water.ice_kg_m3 > 0) {
        proportions.worksheet.caution([&] {
            return Phrase{"Weigh {ice} of the water as ice: weigh that much less water at the "
                          "mixer, and mix until the ice has melted.",
                          {quantity("ice", {water.ice_kg_m3, Measure::concentration})}};
        });
    }
    proportions.temperature = std::move(temperature);
    return std::nullopt;
}

} // namespace boardmark::core
