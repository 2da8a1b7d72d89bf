#include "required_strength.hpp"

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

CodeAverage without_record(double specified_mpa, const AverageStrengthRules& rules) {
    if (below(specified_mpa, rules.no_record_low_step_mpa)) {
        return {.strength_mpa = specified_mpa + rules.no_record_low_margin_mpa,
                .source = rules.without_records,
                .specified_mpa = specified_mpa,
                .way = NoRecord{.factor = 1, .margin_mpa = rules.no_record_low_margin_mpa}};
    }
    if (!above(specified_mpa, rules.step_mpa)) {
        return {.strength_mpa = specified_mpa + rules.no_record_middle_margin_mpa,
                .source = rules.without_records,
                .specified_mpa = specified_mpa,
                .way = NoRecord{.factor = 1, .margin_mpa = rules.no_record_middle_margin_mpa}};
    }
    return {.strength_mpa =
                rules.no_record_high_factor * specified_mpa + rules.no_record_high_margin_mpa,
            .source = rules.without_records_above_step,
            .specified_mpa = specified_mpa,
            .way = NoRecord{.factor = rules.no_record_high_factor,
                            .margin_mpa = rules.no_record_high_margin_mpa}};
}

CodeAverage from_record(double specified_mpa, const StrengthRecords& records,
                        const AverageStrengthRules& rules) {
    const double factor = deviation_factor(records.tests, rules);
    const double deviation_mpa = factor * records.standard_deviation_mpa;
    const double average_of_three_mpa =
        specified_mpa + rules.average_of_three_factor * deviation_mpa;
    const double least_single_mpa = above(specified_mpa, rules.step_mpa)
                                        ? rules.single_test_fraction * specified_mpa
                                        : specified_mpa - rules.single_test_allowance_mpa;
    const double single_test_mpa = least_single_mpa + rules.single_test_factor * deviation_mpa;
    return {.strength_mpa = std::max(average_of_three_mpa, single_test_mpa),
            .source = rules.with_records,
            .specified_mpa = specified_mpa,
            .way = OfRecord{.average_of_three_mpa = average_of_three_mpa,
                            .single_test_mpa = single_test_mpa,
                            .deviation_mpa = records.standard_deviation_mpa,
                            .factor = factor,
                            .tests = records.tests}};
}

std::optional<SetAside> set_aside(double specified_mpa, const StrengthRecords& records,
                                  const AverageStrengthRules& rules) {
    if (records.tests < rules.factors.front().tests) {
        return SetAside::too_few_tests;
    }
    if (records.age_d && above(*records.age_d, rules.oldest_record_d)) {
        return SetAside::too_old;
    }
    if (records.strength_mpa && above(std::abs(*records.strength_mpa - specified_mpa),
                                      rules.record_strength_distance_mpa)) {
        return SetAside::of_other_strength;
    }
    return std::nullopt;
}

} // namespace

Phrase why_set_aside(SetAside reason, const Requirements& requirements,
                     const AverageStrengthRules& rules) {
    const StrengthRecords& records = *requirements.records;
    switch (reason) {
    case SetAside::too_few_tests:
        return {"The strength record has {tests} tests; fewer than {least} count as no "
                "record.",
                {quantity("tests", {double(records.tests), Measure::count}),
                 quantity("least", {rules.factors.front().tests, Measure::count})}};
    case SetAside::too_old:
        return {"The strength record is {age} old; one older than {oldest} does not count.",
                {quantity("age", {*records.age_d, Measure::age}),
                 quantity("oldest", {rules.oldest_record_d, Measure::age})}};
    case SetAside::of_other_strength:
        break;
    }
    return {"The strength record is of {recorded} concrete; one that differs from the "
            "specified {strength} by more than {distance} does not count.",
            {quantity("recorded", {*records.strength_mpa, Measure::strength}),
             quantity("strength", {requirements.strength_mpa, Measure::strength}),
             quantity("distance", {rules.record_strength_distance_mpa, Measure::strength})}};
}

std::vector<std::string> CodeAverage::record_lacks() const {
    std::vector<std::string> keys;
    if (lacks_strength) {
        keys.emplace_back("strength");
    }
    if (lacks_age) {
        keys.emplace_back("age");
    }
    return keys;
}

Phrase CodeAverage::reason() const {
    const Argument specified = quantity("strength", {specified_mpa, Measure::strength});
    if (const auto* record = std::get_if<OfRecord>(&way)) {
        return {"the larger of {three} (averages of three) and {single} (single tests): "
                "specified {strength}, standard deviation {deviation} times {factor} "
                "for {tests} tests",
                {quantity("three", {record->average_of_three_mpa, Measure::strength}),
                 quantity("single", {record->single_test_mpa, Measure::strength}), specified,
                 quantity("deviation", {record->deviation_mpa, Measure::strength}),
                 quantity("factor", {record->factor, Measure::ratio}),
                 quantity("tests", {double(record->tests), Measure::count})}};
    }
    const auto& [factor, margin_mpa] = std::get<NoRecord>(way);
    const Argument margin = quantity("margin", {margin_mpa, Measure::strength});
    if (factor == 1) {
        return {"specified {strength} plus {margin}: no test record", {specified, margin}};
    }
    return {"{factor} times the specified {strength} plus {margin}: no test record",
            {quantity("factor", {factor, Measure::ratio}), specified, margin}};
}

double deviation_factor(int tests, const AverageStrengthRules& rules) {
    const auto above_it = std::ranges::find_if(
        rules.factors, [&](const DeviationFactor& row) { return row.tests >= tests; });
    if (above_it == rules.factors.end()) {
        return rules.factors.back().factor;
    }
    if (above_it == rules.factors.begin() || above_it->tests == tests) {
        return above_it->factor;
    }
    const DeviationFactor& fewer = *(above_it - 1);
    const double fraction = (tests - fewer.tests) / (above_it->tests - fewer.tests);
    return fewer.factor + fraction * (above_it->factor - fewer.factor);
}

CodeAverage code_average(const Requirements& requirements, const AverageStrengthRules& rules) {
    const double specified_mpa = requirements.strength_mpa;
    if (!requirements.records) {
        return without_record(specified_mpa, rules);
    }
    const StrengthRecords& records = *requirements.records;
    if (const auto why = set_aside(specified_mpa, records, rules)) {
        CodeAverage average = without_record(specified_mpa, rules);
        average.record_set_aside = why;
        return average;
    }
    CodeAverage average = from_record(specified_mpa, records, rules);
    average.lacks_strength = !records.strength_mpa;
    average.lacks_age = !records.age_d;
    return average;
}

double required_average_strength(const Requirements& requirements,
                                 const AverageStrengthRules& rules, Worksheet& worksheet) {
    const CodeAverage by_code = code_average(requirements, rules);
    if (requirements.average) {
        worksheet.record([&] {
            return Step{.quantity = "required_average_strength",
                        .value = requirements.average->strength_mpa,
                        .measure = Measure::strength,
                        .provenance = Provenance::given,
                        .reason = {requirements.average->basis.empty()
                                       ? "stated in place of the code's {code}"
                                       : "stated in place of the code's {code}: {basis}",
                                   {quantity("code", {by_code.strength_mpa, Measure::strength}),
                                    word("basis", requirements.average->basis)}},
                        .marks = {Mark::given}};
        });
        return requirements.average->strength_mpa;
    }
    if (by_code.record_set_aside) {
        worksheet.caution(
            [&] { return why_set_aside(*by_code.record_set_aside, requirements, rules); });
    }
    worksheet.record([&] {
        return Step{.quantity = "required_average_strength",
                    .value = by_code.strength_mpa,
                    .measure = Measure::strength,
                    .provenance = Provenance::code,
                    .reason = by_code.reason(),
                    .source = by_code.source,
                    .marks = with_confidence({}, by_code.source)};
    });
    return by_code.strength_mpa;
}

} // namespace boardmark::core
