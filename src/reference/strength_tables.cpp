#include "strength_tables.hpp"

#include <boardmark/units/unit.hpp>

#include "lookup.hpp"

namespace boardmark::reference {
namespace {

using core::UnitSystem;

core::AciAcceptance aci_acceptance(UnitSystem system) {
    const EmbeddedTable& printed = table("aci318-19-acceptance");
    const auto value = [&](std::string_view name) { return constant(printed, name, system); };
    const auto count = [&](std::string_view name) { return static_cast<int>(value(name)); };
    return {.averaged_tests = count("averaged_tests"),
            .single_test_allowance_mpa = value("single_test_allowance"),
            .single_test_fraction = value("single_test_fraction"),
            .step_mpa = value("step"),
            .source = source_of(printed.source),
            .large_diameter_mm = value("large_diameter"),
            .large_specimens = count("large_specimens"),
            .small_specimens = count("small_specimens"),
            .specimen_source = source_of(row(printed, "large_specimens").source)};
}

core::EnConformity en_conformity() {
    const EmbeddedTable& printed = table("en206-conformity");
    const auto value = [&](std::string_view name) {
        return cell(printed, row(printed, name), "value");
    };
    const auto count = [&](std::string_view name) { return static_cast<int>(value(name)); };
    return {.single_test_allowance_mpa = value("single_test_allowance"),
            .initial_tests = count("initial_tests"),
            .initial_margin_mpa = value("initial_margin"),
            .continuous_from = count("continuous_from"),
            .continuous_tests = count("continuous_tests"),
            .continuous_factor = value("continuous_factor"),
            .continuous_most_deviation = value("continuous_most_deviation"),
            .identity_few_tests = count("identity_few_tests"),
            .identity_few_margin_mpa = value("identity_few_margin"),
            .identity_most_tests = count("identity_most_tests"),
            .identity_more_margin_mpa = value("identity_more_margin"),
            .range_percent = value("range"),
            .cylinder_diameter_mm = value("cylinder_diameter"),
            .cylinder_height_mm = value("cylinder_height"),
            .cube_edge_mm = value("cube_edge"),
            .source = source_of(printed.source)};
}

core::TypicalFigure core_hours(const EmbeddedTable& printed, const char* name, UnitSystem system) {
    core::TypicalFigure found = figure(printed, name, system);
    found.value = units::unit("h").from_inside(found.value);
    return found;
}

core::CoreRules core_rules(UnitSystem system) {
    const EmbeddedTable& printed = table("cores");
    const EmbeddedTable& factors = table("core-length-factor");
    const auto one = [&](const char* name) { return figure(printed, name, system); };
    core::CoreRules rules{.cores = one("cores"),
                          .average_fraction = one("average_fraction"),
                          .single_fraction = one("single_fraction"),
                          .rounded_fraction = one("rounded_fraction"),
                          .factors = {},
                          .least_ratio = one("least_ratio"),
                          .wanted_low_ratio = one("wanted_low_ratio"),
                          .wanted_high_ratio = one("wanted_high_ratio"),
                          .least_diameter_mm = one("least_diameter"),
                          .least_in_sizes = one("least_in_sizes"),
                          .bagged_h = core_hours(printed, "bagged", system),
                          .wet_work_d = one("wet_work"),
                          .least_rest_d = one("least_rest"),
                          .latest_test_d = one("latest_test"),
                          .off_joint_mm = one("off_joint")};
    for (const EmbeddedRow& line : factors.rows) {
        rules.factors.push_back(
            {line.from_us, cell(factors, line, "factor"), source_of(line.source)});
    }
    return rules;
}

} // namespace

core::StrengthTables strength_tables(UnitSystem system) {
    const EmbeddedTable& practice = table("practice");
    const EmbeddedTable& ranges = table("range-factor");
    const EmbeddedTable& ratings = table("within-test-rating");
    core::StrengthTables result{
        .aci = aci_acceptance(system),
        .en = en_conformity(),
        .classes = strength_classes(),
        .range_factors = {},
        .range_source = source_of(ranges.source),
        .within_test = {},
        .within_test_source = source_of(ratings.source),
        .confidence_percent = figure(practice, "line_confidence", system),
        .least_pairs = figure(practice, "projection_pairs", system),
        .age_tolerance_d = figure(practice, "strength_age_tolerance", system),
        .large_range = {.of_two = figure(practice, "range_of_two_large", system),
                        .of_three = figure(practice, "range_of_three_large", system)},
        .small_range = {.of_two = figure(practice, "range_of_two_small", system),
                        .of_three = figure(practice, "range_of_three_small", system)},
        .cores = core_rules(system)};
    for (const EmbeddedRow& line : ranges.rows) {
        result.range_factors.push_back({static_cast<int>(line.from_us), cell(ranges, line, "d2")});
    }
    for (const EmbeddedRow& line : ratings.rows) {
        result.within_test.push_back({cell(ratings, line, "at_most"), std::string{line.name}});
    }
    return result;
}

std::vector<core::StrengthClass> strength_classes() {
    const EmbeddedTable& printed = table("en206-strength-class");
    std::vector<core::StrengthClass> classes;
    for (const EmbeddedRow& line : printed.rows) {
        classes.push_back(
            {std::string{line.name}, cell(printed, line, "cylinder"), cell(printed, line, "cube")});
    }
    return classes;
}

std::vector<core::StrengthName> strength_names() {
    std::vector<core::StrengthName> names;
    for (const EmbeddedTable& printed : embedded_tables()) {
        if (printed.name.ends_with("-strength-class")) {
            for (const EmbeddedRow& line : printed.rows) {
                names.push_back({std::string{line.name}, present(cell(printed, line, "cylinder")),
                                 present(cell(printed, line, "cube"))});
            }
        }
    }
    return names;
}

} // namespace boardmark::reference
