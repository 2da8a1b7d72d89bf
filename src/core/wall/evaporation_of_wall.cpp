#include "evaporation_of_wall.hpp"

#include "../phrases.hpp"

#include <algorithm>

namespace boardmark::core {

std::optional<Evaporation> evaporation_of(const WallPlacing& placing,
                                          const ConcreteTemperatures& temperatures,
                                          const Tables& tables) {
    if (!temperatures.concrete || !temperatures.air || !placing.humidity_percent ||
        !placing.wind_km_h) {
        return std::nullopt;
    }
    const auto in_air = [&](double air_c) {
        return evaporation({temperatures.concrete->warmer.value_c, air_c, *placing.humidity_percent,
                            *placing.wind_km_h},
                           tables.weather);
    };
    const Evaporation warmer = in_air(temperatures.air->warmer.value_c);
    const Evaporation colder = in_air(temperatures.air->colder.value_c);
    return warmer.kg_m2_h < colder.kg_m2_h ? colder : warmer;
}

Check evaporation_check(const Evaporation& found, const Proportions& proportions,
                        const Tables& tables) {
    const bool silica_fume =
        std::ranges::any_of(of_role(proportions, Role::binder), [](const Ingredient* one) {
            return one->material->kind == Kind::silica_fume;
        });
    const TypicalFigure& limit = evaporation_precaution(silica_fume, tables.weather);
    const bool protect = found.high_kg_m2_h >= limit.value;
    return {
        .id = "placing.evaporation",
        .verdict = protect ? Verdict::watch : Verdict::holds,
        .value = found.kg_m2_h,
        .limit = Limit{.low = std::nullopt, .high = limit.value},
        .measure = Measure::evaporation,
        .requirement = "drying",
        .source = limit.source,
        .message = {protect ? "{value} may evaporate, give or take {uncertainty} %; from {limit} "
                              "protect the top edge, and the faces once stripped"
                            : "{value} may evaporate, give or take {uncertainty} %; from {limit} "
                              "precautions are due",
                    {quantity("value", {found.kg_m2_h, Measure::evaporation}),
                     quantity("limit", {limit.value, Measure::evaporation}),
                     quantity("uncertainty", {tables.weather.evaporation.uncertainty_percent.value,
                                              Measure::ratio})}}};
}

} // namespace boardmark::core
