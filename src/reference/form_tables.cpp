#include "form_tables.hpp"

#include <boardmark/units/unit.hpp>

#include "lookup.hpp"

namespace boardmark::reference {
namespace {

using core::UnitSystem;

/// What one of a print's own units is in SI, and where its scale of temperature begins.
struct PrintUnits {
    double pressure_kpa;
    double rise_m_h;
    double degree_k;
    double scale_shift_k; ///< from the print's zero to 0 degC
};

PrintUnits print_units(UnitSystem system) {
    if (system == UnitSystem::si) {
        return {.pressure_kpa = 1, .rise_m_h = 1, .degree_k = 1, .scale_shift_k = 0};
    }
    const units::Unit& fahrenheit = units::unit("degF");
    return {.pressure_kpa = 1000 * units::unit("psi").factor / 144,
            .rise_m_h = units::unit("ft").factor / 1000,
            .degree_k = fahrenheit.factor,
            .scale_shift_k = -fahrenheit.to_inside(0)};
}

core::FormFigure form_figure(const EmbeddedTable& printed, std::string_view name,
                             std::string_view column = "value") {
    const EmbeddedRow& line = row(printed, name);
    return {cell(printed, line, column), source_of(line.source)};
}

core::FormFigure scaled(core::FormFigure figure, double factor) {
    figure.value *= factor;
    return figure;
}

core::CementGroups cement_groups(std::string_view name) {
    const EmbeddedTable& printed = table(name);
    const auto group = [&](std::string_view which) -> core::CementCoefficients {
        const EmbeddedRow& line = row(printed, which);
        return {cell(printed, line, "no_retarder"), cell(printed, line, "retarder")};
    };
    return {.portland = group("portland"),
            .blend = group("blend"),
            .rich_blend = group("rich blend"),
            .source = source_of(printed.source)};
}

core::AciFormPressure aci(UnitSystem system) {
    const EmbeddedTable& printed =
        table(system == UnitSystem::us ? "form-pressure-aci-us" : "form-pressure-aci-si");
    const PrintUnits print = print_units(system);
    const double over_temperature = print.pressure_kpa * print.degree_k;
    const auto value = [&](std::string_view name) {
        return cell(printed, row(printed, name), "value");
    };
    const auto metres = [&](std::string_view name) { return value(name) / 1000; };
    return {.base_kpa = value("base") * print.pressure_kpa,
            .slope_kpa_k_h_m = value("slope") * over_temperature / print.rise_m_h,
            .temperature_shift_k =
                value("temperature_shift") * print.degree_k + print.scale_shift_k,
            .tall_constant_kpa_k = value("tall_constant") * over_temperature,
            .tall_slope_kpa_k_h_m = value("tall_slope") * over_temperature / print.rise_m_h,
            .floor_kpa = scaled(form_figure(printed, "floor"), print.pressure_kpa),
            .slow_rise_m_h = value("slow_rise") * print.rise_m_h,
            .low_wall_m = metres("low_wall"),
            .fastest_rise_m_h = scaled(form_figure(printed, "fastest_rise"), print.rise_m_h),
            .deepest_vibration_m = scaled(form_figure(printed, "deepest_vibration"), 0.001),
            .column_side_m = metres("column_side"),
            .light_below_kg_m3 = value("light_below"),
            .heavy_above_kg_m3 = value("heavy_above"),
            .reference_density_kg_m3 = value("reference_density"),
            .light_factor = value("light_factor"),
            .light_least = value("light_least"),
            .weight_source = form_figure(printed, "light_factor").source,
            .first_source = form_figure(printed, "slope").source,
            .tall_source = form_figure(printed, "tall_slope").source,
            .cement = cement_groups("form-pressure-aci-cement")};
}

core::CiriaFormPressure ciria() {
    const EmbeddedTable& printed = table("form-pressure-ciria");
    const auto value = [&](std::string_view name) {
        return cell(printed, row(printed, name), "value");
    };
    return {.wall = value("wall"),
            .column = value("column"),
            .column_side_m = value("column_side") / 1000,
            .temperature_numerator = value("temperature_numerator"),
            .temperature_shift = value("temperature_shift"),
            .source = source_of(printed.source),
            .cement = cement_groups("form-pressure-ciria-cement")};
}

core::DinFormPressure din() {
    const EmbeddedTable& printed = table("form-pressure-din");
    const EmbeddedTable& setting = table("form-pressure-din-set");
    constexpr double hours_in_day = 24;
    core::DinFormPressure result{.classes = {},
                                 .set_times_h = {},
                                 .weight_kn_m3 =
                                     form_figure(table("form-rules"), "din_weight", "si"),
                                 .source = source_of(printed.source),
                                 .set_source = source_of(setting.source)};
    for (const EmbeddedColumn& column : setting.columns) {
        result.set_times_h.push_back(hours_in_day * column.at_si);
    }
    for (const EmbeddedRow& line : printed.rows) {
        const auto factors = row(setting, line.name).cells;
        result.classes.push_back({.name = std::string{line.name},
                                  .fluid = line.group == "fluid",
                                  .base_kpa = cell(printed, line, "base"),
                                  .slope_kpa_h_m = cell(printed, line, "slope"),
                                  .least_kpa = cell(printed, line, "least"),
                                  .set_factors = {factors.begin(), factors.end()}});
    }
    return result;
}

std::vector<core::PrintedTie> printed_ties() {
    const EmbeddedTable& printed = table("form-tie-wire");
    // One pound of force is the stress of 1 psi on one square inch, here in N/mm2 and mm2.
    const double inch_mm = units::unit("in").factor;
    const double pound_kn = units::unit("psi").factor * inch_mm * inch_mm / 1000;
    std::vector<core::PrintedTie> ties;
    for (const EmbeddedRow& line : printed.rows) {
        ties.push_back({std::string{line.name}, cell(printed, line, "breaking") * pound_kn,
                        source_of(line.source)});
    }
    return ties;
}

} // namespace

core::FormTables form_tables(UnitSystem system) {
    const EmbeddedTable& rules = table("form-rules");
    const std::string_view column = system == UnitSystem::us ? "us" : "si";
    return {.aci = aci(system),
            .ciria = ciria(),
            .din = din(),
            .high_slag_percent = form_figure(rules, "high_slag", column),
            .high_fly_ash_percent = form_figure(rules, "high_fly_ash", column),
            .pumped_factor = form_figure(rules, "pumped_factor", column),
            .tie_safety_factor = form_figure(rules, "tie_safety_factor", column),
            .mild_steel_from_face_mm = form_figure(rules, "mild_steel_from_face", column),
            .freezing_c = form_figure(rules, "freezing", column),
            .low_form_m = scaled(form_figure(rules, "low_form", column), 0.001),
            .assumed_density_kg_m3 = form_figure(rules, "assumed_density", column),
            .ties = printed_ties(),
            .flow = flow_classes()};
}

core::FlowClasses flow_classes() {
    const EmbeddedTable& printed = table("flow-classes");
    core::FlowClasses classes{.ends = {}, .source = source_of(printed.source)};
    for (const EmbeddedRow& line : printed.rows) {
        classes.ends.push_back(
            {cell(printed, line, "spread_to"), present(cell(printed, line, "slump_to"))});
    }
    return classes;
}

} // namespace boardmark::reference
