#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/weather/evaporation.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../weather/placing_temperature.hpp"
#include "checks.hpp"

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

Check not_known(std::string id, const std::vector<std::string>& missing, Measure measure,
                std::string requirement) {
    return {.id = std::move(id),
            .verdict = Verdict::not_checked,
            .measure = measure,
            .requirement = std::move(requirement),
            .message = {"not stated: {missing}", {word("missing", listed(missing))}}};
}

Check mixed_check(const CheckContext& context, double mixed_c) {
    const TypicalFigure& least = least_mixed(context.requirements, context.tables.weather);
    const bool cold = below(mixed_c, least.value);
    return {.id = "temperature.mixed",
            .verdict = cold ? Verdict::watch : Verdict::holds,
            .value = mixed_c,
            .limit = Limit{.low = least.value, .high = std::nullopt},
            .measure = Measure::temperature,
            .requirement = "cold weather",
            .source = least.source,
            .message = {
                cold ? "{value} as mixed; for air of {air} and a section like this {limit} "
                       "is advised"
                     : "{value} as mixed, at least {limit} for air of {air}",
                {quantity("value", {mixed_c, Measure::temperature}),
                 quantity("limit", {least.value, Measure::temperature}),
                 quantity("air", {*context.requirements.placing.air_c, Measure::temperature})}}};
}

/// What is said of a temperature as placed.
struct TemperatureFinding {
    Verdict verdict;
    const char* text;
    const Source* source;
};

TemperatureFinding judged(double placed_c, bool cold, const ColdSection& section,
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

Check placed_check(const CheckContext& context, const MixtureTemperature& temperature) {
    const WeatherTables& weather = context.tables.weather;
    const ColdSection& section = cold_section(context.requirements, weather);
    const bool cold = is_cold(context.requirements.placing, weather);
    const double value = temperature.placed_c.value_or(*temperature.mixed_c);
    const TemperatureFinding finding = judged(value, cold, section, weather);
    Check check{
        .id = "temperature.placing",
        .verdict = finding.verdict,
        .value = value,
        .limit = Limit{.low = cold ? std::optional{section.least_placed_c.value} : std::nullopt,
                       .high = weather.hottest_c.value},
        .measure = Measure::temperature,
        .requirement = cold ? "cold weather" : "hot weather",
        .source = *finding.source,
        .message = {std::string{"concrete at "} + finding.text,
                    {quantity("value", {value, Measure::temperature}),
                     quantity("low", {section.least_placed_c.value, Measure::temperature}),
                     quantity("warm", {section.most_placed_c.value, Measure::temperature}),
                     quantity("high", {weather.hottest_c.value, Measure::temperature}),
                     quantity("older", {weather.older_hottest_c.value, Measure::temperature})}}};
    if (!temperature.placed_c) {
        check.message.text += " (as mixed: without 'haul' and 'air_temperature' what it loses on "
                              "the way is not known)";
    }
    return check;
}

bool holds_silica_fume(const Proportions& proportions) {
    return std::ranges::any_of(of_role(proportions, Role::binder), [](const Ingredient* binder) {
        return binder->material->kind == Kind::silica_fume ||
               std::ranges::any_of(binder->material->binder.contains, [](const Constituent& part) {
                   return part.kind == Kind::silica_fume;
               });
    });
}

Checks evaporation_check(const CheckContext& context, const MixtureTemperature& temperature) {
    const PlacingConditions& placing = context.requirements.placing;
    if (!placing.wind_km_h && !placing.humidity_percent) {
        return {};
    }
    std::vector<std::string> missing = temperature.missing;
    for (const auto& [value, key] :
         {std::pair{placing.air_c, "air_temperature"}, std::pair{placing.wind_km_h, "wind"},
          std::pair{placing.humidity_percent, "humidity"}}) {
        if (!value) {
            missing.push_back(std::string{"requirements.placing."} + key);
        }
    }
    const std::string where = "top edge, and the face once it is stripped";
    if (!missing.empty()) {
        return {not_known("evaporation", missing, Measure::evaporation, where)};
    }
    const WeatherTables& weather = context.tables.weather;
    const WetSurface surface{temperature.placed_c.value_or(*temperature.mixed_c), *placing.air_c,
                             *placing.humidity_percent, *placing.wind_km_h};
    const Evaporation rate = evaporation(surface, weather);
    const TypicalFigure& limit =
        evaporation_precaution(holds_silica_fume(context.proportions), weather);
    const bool dries = !below(rate.kg_m2_h, limit.value);
    const bool may_dry = !below(rate.high_kg_m2_h, limit.value);
    return {{.id = "evaporation",
             .verdict = may_dry ? Verdict::watch : Verdict::holds,
             .value = rate.kg_m2_h,
             .limit = Limit{.low = std::nullopt, .high = limit.value},
             .measure = Measure::evaporation,
             .requirement = where,
             .source = weather.evaporation.uno.source,
             .message = {std::string{"about {value}, within {low} to {high}; from {limit} "} +
                             (dries     ? "protect it: it dries faster than it bleeds"
                              : may_dry ? "protection is due: have it at hand"
                                        : "protection is due"),
                         {quantity("value", {rate.kg_m2_h, Measure::evaporation}),
                          quantity("low", {rate.low_kg_m2_h, Measure::evaporation}),
                          quantity("high", {rate.high_kg_m2_h, Measure::evaporation}),
                          quantity("limit", {limit.value, Measure::evaporation})}}}};
}

} // namespace

Checks check_temperature(const CheckContext& context) {
    const auto& temperature = context.proportions.temperature;
    if (!temperature) {
        return {};
    }
    Checks checks;
    if (!temperature->mixed_c) {
        checks.push_back(not_known("temperature.placing", temperature->missing,
                                   Measure::temperature, "temperature of the concrete"));
    } else {
        if (is_cold(context.requirements.placing, context.tables.weather)) {
            checks.push_back(mixed_check(context, *temperature->mixed_c));
        }
        checks.push_back(placed_check(context, *temperature));
    }
    for (Check& check : evaporation_check(context, *temperature)) {
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace boardmark::core
