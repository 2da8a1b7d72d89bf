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

double least_tests(const AverageStrengthRules& rules) {
    return rules.by_deviations ? rules.by_deviations->least_tests : rules.factors.front().tests;
}

const AssumedDeviation& assumed_deviation(double specified_mpa, const DeviationRules& rules) {
    const auto row = std::ranges::find_if(rules.assumed, [&](const AssumedDeviation& assumed) {
        return !above(specified_mpa, assumed.up_to_mpa);
    });
    return row == rules.assumed.end() ? rules.assumed.back() : *row;
}

/// By the code's own deviations; of the record where it counts.
CodeAverage by_deviations(double specified_mpa, const StrengthRecords* records,
                          const DeviationRules& rules) {
    const AssumedDeviation& assumed = assumed_deviation(specified_mpa, rules);
    const double deviation_mpa =
        records ? std::max(records->standard_deviation_mpa, rules.floor_mpa) : assumed.mpa;
    return {.strength_mpa = specified_mpa + rules.deviations * deviation_mpa,
            .source = records ? rules.source : assumed.source,
            .specified_mpa = specified_mpa,
            .way = OfDeviation{.deviations = rules.deviations,
                               .deviation_mpa = deviation_mpa,
                               .of_record = records != nullptr}};
}

CodeAverage from_no_record(double specified_mpa, const AverageStrengthRules& rules) {
    return rules.by_deviations ? by_deviations(specified_mpa, nullptr, *rules.by_deviations)
                               : without_record(specified_mpa, rules);
}

CodeAverage by_record(double specified_mpa, const StrengthRecords& records,
                      const AverageStrengthRules& rules) {
    return rules.by_deviations ? by_deviations(specified_mpa, &records, *rules.by_deviations)
                               : from_record(specified_mpa, records, rules);
}

CodeAverage average_of(const Requirements& requirements, const AverageStrengthRules& rules) {
    const double specified_mpa = requirements.strength_mpa;
    const auto& records = requirements.records;
    const auto why_not = set_aside(requirements, least_tests(rules), rules);
    const bool counts = records && !why_not;
    CodeAverage average =
        counts ? by_record(specified_mpa, *records, rules) : from_no_record(specified_mpa, rules);
    average.record_set_aside = why_not;
    average.lacks_strength = counts && !records->strength_mpa;
    average.lacks_age = counts && !records->age_d;
    return average;
}

} // namespace

std::optional<SetAside> set_aside(const Requirements& requirements, double least_tests,
                                  const AverageStrengthRules& rules) {
    if (!requirements.records) {
        return std::nullopt;
    }
    const StrengthRecords& records = *requirements.records;
    if (records.tests < least_tests) {
        return SetAside::too_few_tests;
    }
    if (records.age_d && above(*records.age_d, rules.oldest_record_d)) {
        return SetAside::too_old;
    }
    if (records.strength_mpa && above(std::abs(*records.strength_mpa - requirements.strength_mpa),
                                      rules.record_strength_distance_mpa)) {
        return SetAside::of_other_strength;
    }
    return std::nullopt;
}

Phrase why_set_aside(SetAside reason, const Requirements& requirements,
                     const AverageStrengthRules& rules) {
    const StrengthRecords& records = *requirements.records;
    switch (reason) {
    case SetAside::too_few_tests:
        return {"The strength record has {tests} tests; fewer than {least} count as no "
                "record.",
                {quantity("tests", {double(records.tests), Measure::count}),
                 quantity("least", {least_tests(rules), Measure::count})}};
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
    if (const auto* by = std::get_if<OfDeviation>(&way)) {
        return {by->of_record ? "specified {strength} and {factor} times the deviation {deviation} "
                                "of the record"
                              : "specified {strength} and {factor} times a deviation of "
                                "{deviation}, assumed without a record that counts",
                {specified, quantity("factor", {by->deviations, Measure::ratio}),
                 quantity("deviation", {by->deviation_mpa, Measure::strength})}};
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
    CodeAverage average = average_of(requirements, rules);
    average.borrowed = rules.borrowed && !requirements.code.empty();
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
    if (by_code.borrowed) {
        worksheet.caution([&] {
            return Phrase{
                "The average strength to aim at is that of ACI 301: the rule of {code} for "
                "it is not known here.",
                {word("code", requirements.code)}};
        });
    }
    return by_code.strength_mpa;
}

} // namespace boardmark::core
