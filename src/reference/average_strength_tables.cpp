#include "average_strength_tables.hpp"

#include "lookup.hpp"

#include <optional>
#include <string_view>

namespace boardmark::reference {
namespace {

/// The code's own rule by deviations. Nothing where the code has none here.
std::optional<core::DeviationRules> deviation_rules(const CodeData& data) {
    const EmbeddedTable* printed = data.find("average-strength");
    if (!printed) {
        return std::nullopt;
    }
    const auto value = [&](std::string_view name) {
        return cell(*printed, row(*printed, name), "value");
    };
    core::DeviationRules rules{.deviations = value("deviations"),
                               .least_tests = value("least_tests"),
                               .floor_mpa = value("floor"),
                               .source = source_of(row(*printed, "deviations").source),
                               .assumed = {}};
    for (const EmbeddedRow& line : printed->rows) {
        if (line.name == "assumed") {
            rules.assumed.push_back({cell(*printed, line, "up_to"), cell(*printed, line, "value"),
                                     source_of(line.source)});
        }
    }
    return rules;
}

} // namespace

core::AverageStrengthRules average_strength_rules(const CodeData& data, core::UnitSystem system) {
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
    result.by_deviations = deviation_rules(data);
    result.borrowed = !result.by_deviations && code_note(data, "average_strength").empty();
    return result;
}

} // namespace boardmark::reference
