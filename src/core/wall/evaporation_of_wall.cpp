#include "evaporation_of_wall.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "../checks/supplementary.hpp"

#include <algorithm>
#include <string>

namespace boardmark::core {

namespace {

std::optional<double> stronger(std::optional<double> one, std::optional<double> other) {
    return one && other ? std::max(*one, *other) : one ? one : other;
}

std::optional<double> drier(std::optional<double> one, std::optional<double> other) {
    return one && other ? std::min(*one, *other) : one ? one : other;
}

/// A figure of the weather in both files, where they disagree: there is one weather.
void watch_weather(const char* text, std::optional<double> here, std::optional<double> of_mix,
                   Measure measure, Check& check) {
    if (!here || !of_mix || same(*here, *of_mix)) {
        return;
    }
    const std::string number = std::to_string(check.message.arguments.size());
    check.verdict = worse(check.verdict, Verdict::watch);
    check.message.text += std::string{"; "} + text + " {here_" + number + "} by this file, {mix_" +
                          number + "} by the mix file: the one that dries more counts";
    check.message.arguments.push_back(quantity("here_" + number, {*here, measure}));
    check.message.arguments.push_back(quantity("mix_" + number, {*of_mix, measure}));
}

} // namespace

std::optional<Evaporation>
evaporation_of(const Wall& wall, const ConcreteTemperatures& temperatures, const Tables& tables) {
    const PlacingConditions& of_mix = requirements_of(wall.mix).placing;
    const auto humidity_percent = drier(wall.placing.humidity_percent, of_mix.humidity_percent);
    const auto wind_km_h = stronger(wall.placing.wind_km_h, of_mix.wind_km_h);
    if (!temperatures.concrete || !temperatures.air || !humidity_percent || !wind_km_h) {
        return std::nullopt;
    }
    const auto in_air = [&](double air_c) {
        return evaporation(
            {temperatures.concrete->warmer.value_c, air_c, *humidity_percent, *wind_km_h},
            tables.weather);
    };
    const Evaporation warmer = in_air(temperatures.air->warmer.value_c);
    const Evaporation colder = in_air(temperatures.air->colder.value_c);
    return warmer.kg_m2_h < colder.kg_m2_h ? colder : warmer;
}

Check evaporation_check(const Wall& wall, const Evaporation& found, const Proportions& proportions,
                        const Tables& tables) {
    const TypicalFigure& limit =
        evaporation_precaution(holds_silica_fume(proportions), tables.weather);
    const bool protect = found.high_kg_m2_h >= limit.value;
    Check check{
        .id = check_ids::placing_evaporation,
        .verdict = protect ? Verdict::watch : Verdict::holds,
        .value = found.kg_m2_h,
        .limit = Limit{.low = std::nullopt, .high = limit.value},
        .measure = Measure::evaporation,
        .requirement = "drying",
        .source = limit.source,
        .message = {protect ? "{value} may evaporate, give or take {uncertainty} %; from {limit} "
                              "protect the top edge, and the faces once stripped"
                            : "{value} may evaporate, give or take {uncertainty} %; from {limit} "
                              "precautions are needed",
                    {quantity("value", {found.kg_m2_h, Measure::evaporation}),
                     quantity("limit", {limit.value, Measure::evaporation}),
                     quantity("uncertainty", {tables.weather->evaporation.uncertainty_percent.value,
                                              Measure::ratio})}}};
    const PlacingConditions& of_mix = requirements_of(wall.mix).placing;
    watch_weather("air", wall.placing.air_c, of_mix.air_c, Measure::temperature, check);
    watch_weather("wind", wall.placing.wind_km_h, of_mix.wind_km_h, Measure::wind, check);
    watch_weather("humidity", wall.placing.humidity_percent, of_mix.humidity_percent,
                  Measure::percent, check);
    return check;
}

} // namespace boardmark::core
