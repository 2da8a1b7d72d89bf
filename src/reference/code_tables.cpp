#include "code_tables.hpp"

#include "lookup.hpp"

#include <algorithm>

namespace boardmark::reference {
namespace {

using core::UnitSystem;

core::ClassLimits limits(const EmbeddedTable& classes, const EmbeddedRow& printed,
                         UnitSystem system) {
    const double us_mpa = cell(classes, printed, "min_strength_us");
    const double si_mpa = cell(classes, printed, "min_strength_si");
    const bool us = system == UnitSystem::us;
    return {.max_w_cm = present(cell(classes, printed, "max_w_cm")),
            .min_strength_mpa = us ? us_mpa : si_mpa,
            .min_strength_twin_mpa = us ? si_mpa : us_mpa,
            .source = source_of(printed.source)};
}

std::vector<std::string> split(const std::string& list) {
    std::vector<std::string> parts;
    for (std::size_t at = 0; at < list.size();) {
        const std::size_t end = std::min(list.find("; ", at), list.size());
        parts.push_back(list.substr(at, end - at));
        at = end + 2;
    }
    return parts;
}

std::vector<core::ExposureClass> exposure_classes_of(UnitSystem system) {
    const EmbeddedTable& printed = table("aci318-19-exposure");
    std::vector<core::ExposureClass> classes;
    for (const EmbeddedRow& line : printed.rows) {
        if (line.group == "plain concrete") {
            classes.back().plain_limits = limits(printed, line, system);
        } else if (line.group == "with pozzolan or slag") {
            classes.back().pozzolanic_limits = limits(printed, line, system);
        } else {
            classes.push_back(
                {.name = std::string{line.name},
                 .meaning = note(line, "meaning"),
                 .limits = limits(printed, line, system),
                 .plain_limits = {},
                 .pozzolanic_limits = {},
                 .chloride_percent = present(cell(printed, line, "chloride")),
                 .bars_calcium_chloride = note(line, "calcium_chloride") == "barred",
                 .asks_reactivity_evidence = note(line, "alkali_reactivity") == "evidence",
                 .sulfate_cements = split(note(line, "cements")),
                 .other_editions = note(line, "other_editions")});
        }
    }
    return classes;
}

core::SiteRules site_rules() {
    const EmbeddedTable& sulfate = table("aci318-19-soil-sulfate");
    core::SiteRules rules{.soil_sulfate = {}, .source = source_of(sulfate.source)};
    for (const EmbeddedRow& line : sulfate.rows) {
        rules.soil_sulfate.push_back({.class_name = std::string{line.name},
                                      .from_percent = cell(sulfate, line, "from"),
                                      .holds_at_bound = note(line, "bound") == "itself"});
    }
    return rules;
}

core::AirRules air_rules(UnitSystem system) {
    const EmbeddedTable& air = table("aci318-19-air");
    const EmbeddedTable& rules = table("aci318-19-air-rules");
    core::AirRules result{.by_class = {},
                          .tolerance_percent = constant(rules, "tolerance", system),
                          .reduction_percent = constant(rules, "reduction", system),
                          .reduction_above_strength_mpa =
                              constant(rules, "reduction_above_strength", system),
                          .reduction_above_strength_twin_mpa =
                              constant(rules, "reduction_above_strength",
                                       system == UnitSystem::us ? UnitSystem::si : UnitSystem::us),
                          .reduction_in_other_editions =
                              note(row(rules, "reduction_above_strength"), "other_editions")};
    for (const EmbeddedRow& exposure : air.rows) {
        result.by_class[std::string{exposure.name}] = size_row(air, exposure, system);
    }
    return result;
}

core::SupplementaryCaps supplementary_caps() {
    const EmbeddedTable& caps = table("aci318-19-supplementary");
    const auto most = [&](std::string_view what) -> core::Cap {
        const EmbeddedRow& line = row(caps, what);
        return {cell(caps, line, "most"), source_of(line.source)};
    };
    return {.class_name = "F3",
            .fly_ash = most("fly_ash"),
            .slag_cement = most("slag_cement"),
            .silica_fume = most("silica_fume"),
            .total = most("total"),
            .ash_and_fume = most("ash_and_fume")};
}

core::SeawaterCement seawater_cement() {
    const EmbeddedTable& rules = table("aci318-19-seawater");
    const EmbeddedRow& c3a = row(rules, "c3a");
    return {.class_name = note(c3a, "class"),
            .max_c3a_percent = cell(rules, c3a, "most"),
            .max_w_cm = cell(rules, row(rules, "w_cm"), "most"),
            .source = source_of(c3a.source)};
}

core::AverageStrengthRules average_strength_rules(UnitSystem system) {
    const EmbeddedTable& factors = table("average-strength-factor");
    const EmbeddedTable& rules = table("average-strength");
    const auto value = [&](std::string_view name) { return constant(rules, name, system); };
    const auto source = [&](std::string_view name) { return source_of(row(rules, name).source); };
    core::AverageStrengthRules result{
        .factors = {},
        .average_of_three_factor = value("average_of_three_factor"),
        .single_test_factor = value("single_test_factor"),
        .single_test_allowance_mpa = value("single_test_allowance"),
        .single_test_fraction = value("single_test_fraction"),
        .step_mpa = value("step"),
        .no_record_low_step_mpa = value("no_record_low_step"),
        .no_record_low_margin_mpa = value("no_record_low_margin"),
        .no_record_middle_margin_mpa = value("no_record_middle_margin"),
        .no_record_high_factor = value("no_record_high_factor"),
        .no_record_high_margin_mpa = value("no_record_high_margin"),
        .oldest_record_d = value("oldest_record"),
        .record_strength_distance_mpa = value("record_strength_distance"),
        .with_records = source("single_test_factor"),
        .without_records = source("no_record_middle_margin"),
        .without_records_above_step = source("no_record_high_margin")};
    for (const EmbeddedRow& factor : factors.rows) {
        result.factors.push_back({factor.from_us, cell(factors, factor, "factor")});
    }
    return result;
}

core::SizeRules size_rules() {
    const EmbeddedTable& rules = table("aci318-19-aggregate-size");
    const auto fraction = [&](std::string_view name) {
        return cell(rules, row(rules, name), "fraction");
    };
    return {.of_form = fraction("of_form"),
            .of_slab = fraction("of_slab"),
            .of_bar_spacing = fraction("of_bar_spacing"),
            .of_cover = fraction("of_cover"),
            .source = source_of(rules.source),
            .cover_source = source_of(row(rules, "of_cover").source)};
}

} // namespace

core::CodeTables code_tables(UnitSystem system) {
    return {.name = "ACI 318-19",
            .classes = exposure_classes_of(system),
            .site = site_rules(),
            .air = air_rules(system),
            .supplementary = supplementary_caps(),
            .seawater = seawater_cement(),
            .average_strength = average_strength_rules(system),
            .size = size_rules()};
}

} // namespace boardmark::reference
