#include "weather_tables.hpp"

#include <boardmark/units/unit.hpp>

#include "lookup.hpp"

#include <cmath>

namespace boardmark::reference {
namespace {

using core::UnitSystem;

constexpr double kelvin_per_fahrenheit = 5.0 / 9;
constexpr double fahrenheit_at_zero_c = 32;

double pound_per_square_foot_kg_m2() {
    const double foot_m = units::unit("ft").factor / 1000;
    return units::unit("lb").factor / (foot_m * foot_m);
}

std::vector<core::ColdSection> cold_sections(UnitSystem system) {
    const std::string ending = system == UnitSystem::us ? "_us" : "_si";
    const EmbeddedTable& placed = table("placing-temperature");
    const EmbeddedTable& mixed = table("mixed-temperature");
    std::vector<core::ColdSection> sections;
    for (const EmbeddedRow& line : placed.rows) {
        const EmbeddedRow& as_mixed = row(mixed, line.name);
        const auto in_placed = [&](const char* name) {
            return core::TypicalFigure{cell(placed, line, name + ending), source_of(line.source)};
        };
        const auto in_mixed = [&](const char* name) {
            return core::TypicalFigure{cell(mixed, as_mixed, name + ending),
                                       source_of(as_mixed.source)};
        };
        core::TypicalFigure fall = in_mixed("fall");
        fall.value *= system == UnitSystem::us ? kelvin_per_fahrenheit : 1;
        sections.push_back({.below_mm = cell(placed, line, "below" + ending),
                            .least_placed_c = in_placed("least"),
                            .most_placed_c = in_placed("most"),
                            .least_mixed_mild_c = in_mixed("mild"),
                            .least_mixed_hard_c = in_mixed("hard"),
                            .least_mixed_bitter_c = in_mixed("bitter"),
                            .most_fall_k = fall});
    }
    return sections;
}

/// The printed form of a system, its constants taken over to degC, km/h and kg/m2/h.
core::UnoForm uno_form(UnitSystem system) {
    const EmbeddedTable& printed = table("evaporation");
    const auto number = [&](const char* name) { return constant(printed, name, system); };
    constexpr double millionth = 1e-6;
    core::UnoForm form{.scale = millionth * number("uno_scale"),
                       .offset_c = number("uno_offset"),
                       .power = number("uno_power"),
                       .calm = number("uno_calm"),
                       .wind = number("uno_wind"),
                       .source = source_of(printed.source)};
    if (system == UnitSystem::us) {
        form.scale *=
            pound_per_square_foot_kg_m2() * std::pow(1 / kelvin_per_fahrenheit, form.power);
        form.offset_c = (form.offset_c + fahrenheit_at_zero_c) * kelvin_per_fahrenheit;
        form.wind /= units::unit("mph").factor;
    }
    return form;
}

core::EvaporationTables evaporation(UnitSystem system) {
    const EmbeddedTable& printed = table("evaporation");
    const auto number = [&](const char* name) { return constant(printed, name, system); };
    const auto rate = [&](const char* name) {
        core::TypicalFigure found = figure(printed, name, system);
        found.value *= system == UnitSystem::us ? pound_per_square_foot_kg_m2() : 1;
        return found;
    };
    return {.uno = uno_form(system),
            .menzel = {.scale = number("menzel_scale"),
                       .calm = number("menzel_calm"),
                       .wind = number("menzel_wind"),
                       .saturation_kpa = number("saturation_scale"),
                       .saturation_rate = number("saturation_rate"),
                       .saturation_offset_c = number("saturation_offset"),
                       .source = figure(printed, "menzel_scale", system).source},
            .precaution_kg_m2_h = rate("precaution"),
            .precaution_with_silica_fume_kg_m2_h = rate("precaution_with_silica_fume"),
            .uncertainty_percent = figure(printed, "uncertainty", system)};
}

} // namespace

core::WeatherTables weather_tables(UnitSystem system) {
    const EmbeddedTable& printed = table("weather");
    return {.cold = cold_sections(system),
            .cold_air_c = figure(printed, "cold_air", system),
            .mild_air_c = constant(printed, "mild_air", system),
            .bitter_air_c = constant(printed, "bitter_air", system),
            .hottest_c = figure(table("practice"), "hottest_concrete", system),
            .older_hottest_c = figure(printed, "older_hottest", system),
            .solids_heat = figure(printed, "solids_heat", system),
            .ice_as_water_c = figure(printed, "ice", system),
            .ice_heat = figure(printed, "ice_heat", system),
            .one_concrete_k = figure(printed, "one_concrete", system),
            .haul_share = figure(printed, "haul_share", system),
            .hottest_water_c = figure(printed, "hottest_water", system),
            .evaporation = evaporation(system)};
}

} // namespace boardmark::reference
