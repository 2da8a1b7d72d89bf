#include "temperature_of_wall.hpp"

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "../checks/mass_heat.hpp"
#include "least_dimensions.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Argument degrees(const char* name, double value_c) {
    return quantity(name, {value_c, Measure::temperature});
}

bool disagree(const std::optional<TwoTemperatures>& two, const WeatherTables& weather) {
    return two && two->is_of_both_files() && above(two->apart_k(), weather.one_concrete_k.value);
}

double value_of(const TwoTemperatures& two, TemperatureOrigin from) {
    return two.colder.from == from ? two.colder.value_c : two.warmer.value_c;
}

Phrase both_files(const TwoTemperatures& two) {
    return {"{stated} by this file, {computed} by the mix file{as_mixed}",
            {degrees("stated", value_of(two, TemperatureOrigin::wall_file)),
             degrees("computed", value_of(two, TemperatureOrigin::mix_file))}};
}

/// What is said of the concrete before the limits.
Phrase concrete_told(const ConcreteTemperatures& temperatures, bool hot,
                     const WeatherTables& weather) {
    const TwoTemperatures& two = *temperatures.concrete;
    if (disagree(two, weather)) {
        Phrase told = both_files(two);
        told.text = "concrete at " + told.text + ": {apart} apart";
        told.arguments.push_back(
            quantity("apart", {two.apart_k(), Measure::temperature_difference}));
        return told;
    }
    const double value_c = hot ? two.warmer.value_c : two.colder.value_c;
    return {temperatures.concrete_stated
                ? "concrete at {value} in the form"
                : "concrete at {value}{as_mixed} by the mix file ('placing.concrete_temperature' "
                  "is not stated)",
            {degrees("value", value_c)}};
}

void add_to(Phrase& message, const std::string& text, const std::vector<Argument>& arguments) {
    message.text += text;
    message.arguments.insert(message.arguments.end(), arguments.begin(), arguments.end());
}

void tell_air(const ConcreteTemperatures& temperatures, const WeatherTables& weather,
              Check& check) {
    if (!disagree(temperatures.air, weather)) {
        return;
    }
    add_to(check.message, "; air at {air_here} by this file, {air_of_mix} by the mix file",
           {degrees("air_here", value_of(*temperatures.air, TemperatureOrigin::wall_file)),
            degrees("air_of_mix", value_of(*temperatures.air, TemperatureOrigin::mix_file))});
}

void tell_missing(const ConcreteTemperatures& temperatures, Check& check) {
    std::string keys;
    for (const std::string& key : temperatures.missing_of_mix) {
        keys += (keys.empty() ? "'" : ", '") + key + "'";
    }
    if (!keys.empty()) {
        add_to(check.message,
               "; it is not known what the mix file's own would be, because it does not state "
               "{keys}: pressure goes by this file's alone",
               {word("keys", keys)});
    }
}

} // namespace

Limit placing_temperatures(double thickness_mm, const WeatherTables& weather) {
    return {weather.section(thickness_mm).least_placed_c.value, weather.hottest_c.value};
}

Check check_placing_temperature(const ConcreteTemperatures& temperatures, double thickness_mm,
                                const WeatherTables& weather) {
    const TypicalFigure& least = weather.section(thickness_mm).least_placed_c;
    const TypicalFigure& hottest = weather.hottest_c;
    Check check{.id = check_ids::placing_temperature,
                .verdict = Verdict::not_checked,
                .measure = Measure::temperature,
                .requirement = "weather",
                .message = {"'placing.concrete_temperature' is not stated", {}}};
    if (!temperatures.concrete) {
        tell_air(temperatures, weather, check);
        return check;
    }
    const TwoTemperatures& two = *temperatures.concrete;
    const bool hot = above(two.warmer.value_c, hottest.value);
    const bool cold = below(two.colder.value_c, least.value);
    const bool apart = disagree(two, weather) || disagree(temperatures.air, weather);
    check.verdict = cold || hot ? Verdict::fails
                    : apart || !temperatures.concrete_stated || !temperatures.missing_of_mix.empty()
                        ? Verdict::watch
                        : Verdict::holds;
    check.value = hot ? two.warmer.value_c : two.colder.value_c;
    check.limit = placing_temperatures(thickness_mm, weather);
    check.source = hot ? hottest.source : least.source;
    check.message = concrete_told(temperatures, hot, weather);
    add_to(check.message, "; {low} to {high} for the thinnest section",
           {degrees("low", least.value), degrees("high", hottest.value)});
    tell_air(temperatures, weather, check);
    tell_missing(temperatures, check);
    if (apart) {
        check.message.text += ". Pressure and stripping go by the colder, evaporation by the "
                              "warmer; 'setting' must hold for the warmer, 'end_of_set' for the "
                              "colder";
    }
    const std::string mark = "{as_mixed}";
    if (const auto place = check.message.text.find(mark); place != std::string::npos) {
        check.message.text.replace(place, mark.size(),
                                   temperatures.after_haul ? "" : " (as mixed, before the haul)");
    }
    return check;
}

void watch_setting(const Wall& wall, const ConcreteTemperatures& temperatures,
                   const WeatherTables& weather, std::vector<Check>& checks) {
    if (!wall.placing.setting_h || !disagree(temperatures.concrete, weather) ||
        temperatures.concrete->warmer.from == TemperatureOrigin::wall_file) {
        return;
    }
    for (Check& check : checks) {
        const bool in_time = check.verdict == Verdict::holds || check.verdict == Verdict::watch;
        if (check.is(check_ids::lift_time) && in_time) {
            check.verdict = Verdict::watch;
            add_to(check.message,
                   "; the mix file's concrete has {warmer}: 'setting' must hold for that",
                   {degrees("warmer", temperatures.concrete->warmer.value_c)});
        }
    }
}

void watch_mass_heat(const Wall& wall, const ConcreteTemperatures& temperatures,
                     const Proportions& proportions, const Tables& tables,
                     std::vector<Check>& mix_checks) {
    const double thickest_mm = std::ranges::max(least_dimensions_mm(wall));
    if (!is_mass_concrete(thickest_mm, tables)) {
        return;
    }
    const auto placed_c =
        temperatures.concrete ? std::optional{temperatures.concrete->warmer.value_c} : std::nullopt;
    for (Check& check : mix_checks) {
        if (check.is(check_ids::binder_heat)) {
            check.verdict = worse(check.verdict, Verdict::watch);
            tell_heat({.thickness_mm = thickest_mm,
                       .placed_c = placed_c,
                       .keys_of_placed = "'placing.concrete_temperature'"},
                      proportions, tables, check);
        }
    }
}

} // namespace boardmark::core
