#include "code_tables.hpp"

#include "lookup.hpp"
#include "site_rules.hpp"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <limits>
#include <utility>

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

core::Salt salt_of(const EmbeddedRow& line) {
    const std::string_view said = note(line, "salt");
    return said == "none"      ? core::Salt::none
           : said == "deicers" ? core::Salt::deicers
           : said == "any"     ? core::Salt::any
                               : core::Salt::unsaid;
}

std::optional<core::ClassBeside> beside_of(const EmbeddedRow& line) {
    const std::string_view name = note(line, "beside");
    return name.empty() ? std::nullopt
                        : std::optional{core::ClassBeside{
                              std::string{name}, std::string{note(line, "beside_reason")}}};
}

/// Evidence stands in a clause of its own.
std::optional<core::Source> reactivity_evidence(const EmbeddedRow& line) {
    if (note(line, "alkali_reactivity") != "evidence") {
        return std::nullopt;
    }
    return core::Source{
        std::string{line.source.work}.append(" ").append(note(line, "reactivity_place")),
        core::Confidence::read};
}

core::Addition addition_named(std::string_view name) {
    static constexpr std::pair<std::string_view, core::Addition> additions[] = {
        {"fly_ash", core::Addition::fly_ash},
        {"slag_cement", core::Addition::slag_cement},
        {"silica_fume", core::Addition::silica_fume},
        {"total", core::Addition::total},
        {"ash_and_fume", core::Addition::ash_and_fume}};
    const auto found =
        std::ranges::find(additions, name, &std::pair<std::string_view, core::Addition>::first);
    assert(found != std::end(additions));
    return found->second;
}

std::vector<core::Cap> caps_of(std::string_view class_name, const CodeData& data) {
    std::vector<core::Cap> caps;
    if (const EmbeddedTable* printed = data.find("supplementary")) {
        for (const EmbeddedRow& line : printed->rows) {
            if (note(line, "class") == class_name) {
                caps.push_back({addition_named(line.name), cell(*printed, line, "most"),
                                source_of(line.source)});
            }
        }
    }
    return caps;
}

std::optional<core::SizeRow> air_of(std::string_view class_name, const CodeData& data,
                                    UnitSystem system) {
    const EmbeddedTable* air = data.find("air");
    if (!air) {
        return std::nullopt;
    }
    const auto line = std::ranges::find(air->rows, class_name, &EmbeddedRow::name);
    return line == air->rows.end() ? std::nullopt : std::optional{size_row(*air, *line, system)};
}

std::vector<core::ExposureCategory> categories_of(const EmbeddedTable& printed) {
    std::vector<core::ExposureCategory> categories;
    for (const EmbeddedRow& line : printed.rows) {
        if (line.group == "category") {
            categories.push_back({std::string{line.name}, std::string{note(line, "subject")},
                                  std::string{note(line, "step")}});
        }
    }
    return categories;
}

std::size_t category_named(std::string_view name,
                           const std::vector<core::ExposureCategory>& categories) {
    const auto found = std::ranges::find(categories, name, &core::ExposureCategory::name);
    assert(found != categories.end());
    return static_cast<std::size_t>(found - categories.begin());
}

core::ExposureClass exposure_class_of(const EmbeddedRow& line, const CodeData& data,
                                      const std::vector<core::ExposureCategory>& categories,
                                      UnitSystem system) {
    const EmbeddedTable& printed = *data.find("exposure");
    const auto cements = split(note(line, "cements"), "; ");
    return {.name = std::string{line.name},
            .category = category_named(note(line, "category"), categories),
            .meaning = std::string{note(line, "meaning")},
            .limits = limits(printed, line, system),
            .plain_limits = {},
            .pozzolanic_limits = {},
            .chloride_percent = present(cell(printed, line, "chloride")),
            .bars_calcium_chloride = note(line, "calcium_chloride") == "barred",
            .reactivity_evidence = reactivity_evidence(line),
            .sulfate_cements = {cements.begin(), cements.end()},
            .air_percent = air_of(line.name, data, system),
            .caps = caps_of(line.name, data),
            .beside = beside_of(line),
            .salt = salt_of(line),
            .never_freezes = note(line, "frost") == "never",
            .other_editions = std::string{note(line, "other_editions")}};
}

std::vector<core::ExposureClass>
exposure_classes_of(const CodeData& data, const std::vector<core::ExposureCategory>& categories,
                    UnitSystem system) {
    const EmbeddedTable& printed = *data.find("exposure");
    std::vector<core::ExposureClass> classes;
    for (const EmbeddedRow& line : printed.rows) {
        if (line.group == "plain concrete") {
            classes.back().plain_limits = limits(printed, line, system);
        } else if (line.group == "with pozzolan or slag") {
            classes.back().pozzolanic_limits = limits(printed, line, system);
        } else if (line.group.empty()) {
            classes.push_back(exposure_class_of(line, data, categories, system));
        }
    }
    return classes;
}

/// A code without rules of its own holds its air to the table itself.
core::AirRules air_rules(const CodeData& data, UnitSystem system) {
    const EmbeddedTable* printed = data.find("air-rules");
    if (!printed) {
        constexpr double never = std::numeric_limits<double>::infinity();
        return {.tolerance_percent = 0,
                .tolerance_source = {},
                .reduction_percent = 0,
                .reduction_above_strength_mpa = never,
                .reduction_above_strength_twin_mpa = never,
                .reduction_in_other_editions = {}};
    }
    const EmbeddedTable& rules = *printed;
    return {.tolerance_percent = constant(rules, "tolerance", system),
            .tolerance_source = {std::string{note(row(rules, "tolerance"), "cited")},
                                 core::Confidence::read},
            .reduction_percent = constant(rules, "reduction", system),
            .reduction_above_strength_mpa = constant(rules, "reduction_above_strength", system),
            .reduction_above_strength_twin_mpa =
                constant(rules, "reduction_above_strength",
                         system == UnitSystem::us ? UnitSystem::si : UnitSystem::us),
            .reduction_in_other_editions =
                std::string{note(row(rules, "reduction_above_strength"), "other_editions")}};
}

std::optional<core::SeawaterCement> seawater_cement(const CodeData& data) {
    const EmbeddedTable* rules = data.find("seawater");
    if (!rules) {
        return std::nullopt;
    }
    const EmbeddedRow& c3a = row(*rules, "c3a");
    return core::SeawaterCement{.class_name = std::string{note(c3a, "class")},
                                .max_c3a_percent = cell(*rules, c3a, "most"),
                                .max_w_cm = cell(*rules, row(*rules, "w_cm"), "most"),
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

core::SizeRules size_rules(const CodeData& data) {
    const EmbeddedTable& rules = *data.find("aggregate-size");
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

core::CodeTables code_tables(const CodeData& data, UnitSystem system) {
    const EmbeddedTable& printed = *data.find("exposure");
    auto categories = categories_of(printed);
    auto classes = exposure_classes_of(data, categories, system);
    auto site = site_rules(data, categories);
    return {.name = std::string{printed.source.work},
            .categories = std::move(categories),
            .classes = std::move(classes),
            .site = std::move(site),
            .air = air_rules(data, system),
            .seawater = seawater_cement(data),
            .average_strength = average_strength_rules(system),
            .size = size_rules(data)};
}

core::CodeTables first_code(UnitSystem system) {
    return code_tables(codes_of(embedded_tables()).front(), system);
}

} // namespace boardmark::reference
