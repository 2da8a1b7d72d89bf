#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/weather/evaporation.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../weather/placing_temperature.hpp"
#include "checks.hpp"
#include "supplementary.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

std::string listed(const std::vector<std::string>& keys) {
    std::string text;
    for (const std::string& key : keys) {
        text += (text.empty() ? "'" : ", '") + key + "'";
    }
    return text;
}

/// A check that lacks figures, by the keys that would give them.
template <class Missing>
void not_known(const Finding& found, const char* requirement, Missing missing, Findings& findings) {
    findings.add(found, [&](Check& told) {
        told.requirement = requirement;
        told.message = {"not stated: {missing}", {word("missing", listed(missing()))}};
    });
}

void mixed_check(const CheckContext& context, double mixed_c, Findings& findings) {
    const TypicalFigure& least = least_mixed(context.requirements, context.tables.weather);
    const bool cold = below(mixed_c, least.value);
    findings.add(
        {.id = check_ids::temperature_mixed,
         .verdict = cold ? Verdict::watch : Verdict::holds,
         .value = mixed_c,
         .limit = Limit{.low = least.value, .high = std::nullopt},
         .measure = Measure::temperature},
        [&](Check& told) {
            told.requirement = "cold weather";
            told.source = least.source;
            told.message = {
                cold ? "{value} as mixed; for air of {air} and a section like this {limit} "
                       "is advised"
                     : "{value} as mixed, at least {limit} for air of {air}",
                {quantity("value", {mixed_c, Measure::temperature}),
                 quantity("limit", {least.value, Measure::temperature}),
                 quantity("air", {*context.requirements.placing.air_c, Measure::temperature})}};
        });
}

/// What is said of a temperature as placed.
struct PlacedFinding {
    Verdict verdict;
    const char* text;
    const Source* source;
};

PlacedFinding judged(double placed_c, bool cold, const ColdSection& section,
                     const WeatherTables& weather) {
    constexpr double freezing_c = 0;
    const Source* cold_source = &section.least_placed_c.source;
    if (!above(placed_c, freezing_c)) {
        return {Verdict::fails, "{value}: it freezes and never gains its strength", cold_source};
    }
    if (above(placed_c, weather.hottest_c.value)) {
        return {Verdict::fails, "{value}, at most {high}", &weather.hottest_c.source};
    }
    if (cold && below(placed_c, section.least_placed_c.value)) {
        return {Verdict::fails, "{value}; in cold weather at least {low} for this section",
                cold_source};
    }
    if (cold && above(placed_c, section.most_placed_c.value)) {
        return {Verdict::watch,
                "{value}; in cold weather not above {warm}: it dries faster and cools too far "
                "afterwards",
                &section.most_placed_c.source};
    }
    if (above(placed_c, weather.older_hottest_c.value)) {
        return {Verdict::watch, "{value}, at most {high}; older specifications stop at {older}",
                &weather.older_hottest_c.source};
    }
    return {Verdict::holds,
            cold ? "{value}, {low} to {warm} in cold weather" : "{value}, at most {high}",
            cold ? cold_source : &weather.hottest_c.source};
}

/// Of a section that nobody states the coldest concrete that is permitted is the highest, and so is
/// the warmest that is advised: a thicker one asks for less.
bool may_be_too_warm(const Requirements& asked, double placed_c, const WeatherTables& weather) {
    return !asked.section.thickness_mm &&
           std::ranges::any_of(weather.cold, [&](const ColdSection& section) {
               return above(placed_c, section.most_placed_c.value);
           });
}

/// What the way to the form takes and the file does not state; what is placed is not known then.
std::vector<std::string> missing_on_the_way(const PlacingConditions& placing) {
    std::vector<std::string> missing;
    if (!placing.air_c) {
        missing.emplace_back("requirements.placing.air_temperature");
    }
    if (!placing.haul_h) {
        missing.emplace_back("requirements.placing.haul");
    }
    return missing;
}

/// As mixed it would do; what it loses or gains on the way decides.
void not_placed_check(const CheckContext& context, double mixed_c, Findings& findings) {
    findings.add(
        {.id = check_ids::temperature_placing,
         .verdict = Verdict::not_checked,
         .measure = Measure::temperature},
        [&](Check& told) {
            told.requirement = "temperature of the concrete";
            told.message = {
                "{mixed} as mixed; what it loses or gains on the way is not known, not "
                "stated: {missing}",
                {quantity("mixed", {mixed_c, Measure::temperature}),
                 word("missing", listed(missing_on_the_way(context.requirements.placing)))}};
        });
}

void placed_check(const CheckContext& context, const MixtureTemperature& temperature,
                  Findings& findings) {
    const WeatherTables& weather = context.tables.weather;
    const ColdSection& section = cold_section(context.requirements, weather);
    const bool cold = is_cold(context.requirements.placing, weather);
    const double value = temperature.placed_c.value_or(*temperature.mixed_c);
    PlacedFinding placed = judged(value, cold, section, weather);
    if (cold && placed.verdict == Verdict::holds &&
        may_be_too_warm(context.requirements, value, weather)) {
        placed = {Verdict::watch,
                  "{value}, {low} to {warm} in cold weather for a section below the thinnest step; "
                  "a thicker one is placed colder: state 'requirements.section.thickness'",
                  &section.most_placed_c.source};
    }
    if (!temperature.placed_c && placed.verdict != Verdict::fails) {
        not_placed_check(context, value, findings);
        return;
    }
    findings.add(
        {.id = check_ids::temperature_placing,
         .verdict = placed.verdict,
         .value = value,
         .limit = Limit{.low = cold ? std::optional{section.least_placed_c.value} : std::nullopt,
                        .high = weather.hottest_c.value},
         .measure = Measure::temperature},
        [&](Check& told) {
            told.requirement = cold ? "cold weather" : "hot weather";
            told.source = *placed.source;
            told.message = {
                std::string{"concrete at "} + placed.text,
                {quantity("value", {value, Measure::temperature}),
                 quantity("low", {section.least_placed_c.value, Measure::temperature}),
                 quantity("warm", {section.most_placed_c.value, Measure::temperature}),
                 quantity("high", {weather.hottest_c.value, Measure::temperature}),
                 quantity("older", {weather.older_hottest_c.value, Measure::temperature})}};
            if (!temperature.placed_c) {
                told.message.text += " (as mixed, before the way to the form)";
            }
        });
}

/// What the rate of evaporation takes and the file does not state.
std::vector<std::string> missing_of(const MixtureTemperature& temperature,
                                    const PlacingConditions& placing) {
    std::vector<std::string> missing = temperature.missing;
    if (missing.empty() && !placing.haul_h) {
        missing.emplace_back("requirements.placing.haul");
    }
    for (const auto& [value, key] :
         {std::pair{placing.air_c, "air_temperature"}, std::pair{placing.wind_km_h, "wind"},
          std::pair{placing.humidity_percent, "humidity"}}) {
        if (!value) {
            missing.push_back(std::string{"requirements.placing."} + key);
        }
    }
    return missing;
}

void evaporation_check(const CheckContext& context, const MixtureTemperature& temperature,
                       Findings& findings) {
    const PlacingConditions& placing = context.requirements.placing;
    if (!placing.wind_km_h && !placing.humidity_percent) {
        return;
    }
    const char* where = "top edge, and the face once it is stripped";
    if (!temperature.placed_c || !placing.air_c || !placing.wind_km_h ||
        !placing.humidity_percent) {
        not_known(
            {.id = check_ids::evaporation,
             .verdict = Verdict::not_checked,
             .measure = Measure::evaporation},
            where, [&] { return missing_of(temperature, placing); }, findings);
        return;
    }
    const WeatherTables& weather = context.tables.weather;
    const WetSurface surface{*temperature.placed_c, *placing.air_c, *placing.humidity_percent,
                             *placing.wind_km_h};
    const Evaporation rate = evaporation(surface, weather);
    const TypicalFigure& limit =
        evaporation_precaution(holds_silica_fume(context.proportions), weather);
    const bool dries = !below(rate.kg_m2_h, limit.value);
    const bool may_dry = !below(rate.high_kg_m2_h, limit.value);
    findings.add({.id = check_ids::evaporation,
                  .verdict = may_dry ? Verdict::watch : Verdict::holds,
                  .value = rate.kg_m2_h,
                  .limit = Limit{.low = std::nullopt, .high = limit.value},
                  .measure = Measure::evaporation},
                 [&](Check& told) {
                     told.requirement = where;
                     told.source = weather.evaporation.uno.source;
                     told.message = {
                         std::string{"about {value}, within {low} to {high}; from {limit} "} +
                             (dries     ? "protect it: it dries faster than bleed water rises"
                              : may_dry ? "protection is needed: have it at hand"
                                        : "protection is needed"),
                         {quantity("value", {rate.kg_m2_h, Measure::evaporation}),
                          quantity("low", {rate.low_kg_m2_h, Measure::evaporation}),
                          quantity("high", {rate.high_kg_m2_h, Measure::evaporation}),
                          quantity("limit", {limit.value, Measure::evaporation})}};
                 });
}

} // namespace

void check_temperature(const CheckContext& context, Findings& findings) {
    const auto& temperature = context.proportions.temperature;
    if (!temperature) {
        return;
    }
    if (!temperature->mixed_c) {
        not_known(
            {.id = check_ids::temperature_placing,
             .verdict = Verdict::not_checked,
             .measure = Measure::temperature},
            "temperature of the concrete", [&] { return temperature->missing; }, findings);
    } else {
        if (is_cold(context.requirements.placing, context.tables.weather)) {
            mixed_check(context, *temperature->mixed_c, findings);
        }
        placed_check(context, *temperature, findings);
    }
    evaporation_check(context, *temperature, findings);
}

} // namespace boardmark::core
