#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/strength/line_evidence.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../code/required_strength.hpp"
#include "record_evaluation.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

std::vector<double> means_of(const std::vector<StrengthTest>& tests) {
    std::vector<double> means;
    for (const StrengthTest& test : tests) {
        means.push_back(test.mean_mpa);
    }
    return means;
}

double mean_of(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values) {
        sum += value;
    }
    return sum / double(values.size());
}

/// The tests that are not too old to be a record; the others are told.
std::vector<StrengthTest> recent(const std::vector<StrengthTest>& production, int today,
                                 const AverageStrengthRules& rules, Worksheet& worksheet) {
    std::vector<StrengthTest> counted;
    for (const StrengthTest& test : production) {
        if (!test.batch.cast || today - *test.batch.cast <= rules.oldest_record_d) {
            counted.push_back(test);
        }
    }
    const std::size_t left_out = production.size() - counted.size();
    if (left_out > 0) {
        worksheet.cautions.push_back(
            {"{count} tests are of concrete older than {oldest}; the required average does not "
             "count them.",
             {quantity("count", {double(left_out), Measure::count}),
              quantity("oldest", {rules.oldest_record_d, Measure::age})}});
    }
    return counted;
}

/// They count, for want of better ones; that they are no tests in the sense of the code is told.
void tell_few_specimens(const std::vector<StrengthTest>& counted, int least, Worksheet& worksheet) {
    const auto few = batches_of_few(counted, least);
    if (!few.empty()) {
        worksheet.cautions.push_back(
            {"{count} of the results are of fewer than {least} specimens, which make a test: a "
             "record of them proves no average.",
             {quantity("count", {double(few.size()), Measure::count}),
              quantity("least", {double(least), Measure::count})}});
    }
}

/// The average to proportion the next concrete of this class for.
void ask_average(const StrengthRecord& record, const std::vector<StrengthTest>& counted,
                 const AverageStrengthRules& rules, StrengthStatistics& statistics,
                 Worksheet& worksheet) {
    Requirements requirements{.strength_mpa = record.specified_mpa, .slump_mm = 0};
    statistics.counted = counted.size();
    if (!counted.empty()) {
        statistics.counted_mean_mpa = mean_of(means_of(counted));
    }
    if (counted.size() > 1) {
        statistics.counted_deviation_mpa = standard_deviation(means_of(counted));
        requirements.records =
            StrengthRecords{.tests = static_cast<int>(counted.size()),
                            .standard_deviation_mpa = *statistics.counted_deviation_mpa,
                            .strength_mpa = record.specified_mpa,
                            .age_d = std::nullopt};
    }
    const CodeAverage average = code_average(requirements, rules);
    statistics.required_average_mpa = average.strength_mpa;
    if (average.record_set_aside) {
        worksheet.cautions.push_back(why_set_aside(*average.record_set_aside, requirements, rules));
    } else if (requirements.records) {
        statistics.deviation_factor = deviation_factor(requirements.records->tests, rules);
    }
    worksheet.steps.push_back({.quantity = "required_average_strength",
                               .value = average.strength_mpa,
                               .measure = Measure::strength,
                               .provenance = Provenance::code,
                               .reason = average.reason(),
                               .source = average.source,
                               .marks = with_confidence({}, average.source)});
}

void add_deviation_step(const StrengthStatistics& statistics, Worksheet& worksheet) {
    worksheet.steps.push_back(
        {.quantity = "standard_deviation",
         .value = statistics.deviation_mpa,
         .measure = Measure::strength,
         .provenance = Provenance::computed,
         .reason = {"of {tests} tests about their mean {mean}, n - 1 in the divisor",
                    {quantity("tests", {double(statistics.tests), Measure::count}),
                     quantity("mean", {statistics.mean_mpa, Measure::strength})}}});
}

} // namespace

double standard_deviation(const std::vector<double>& values) {
    const double mean = mean_of(values);
    double squares = 0;
    for (const double value : values) {
        squares += (value - mean) * (value - mean);
    }
    return std::sqrt(squares / (double(values.size()) - 1));
}

std::optional<WithinTest> within_test(const std::vector<StrengthTest>& tests,
                                      const StrengthTables& tables) {
    double deviations = 0;
    double means = 0;
    std::size_t count = 0;
    for (const StrengthTest& test : tests) {
        const int specimens = static_cast<int>(test.specimens.size());
        const auto row =
            std::ranges::find(tables.range_factors, specimens, &RangeFactor::specimens);
        if (row != tables.range_factors.end()) {
            deviations += test.range_mpa / row->factor;
            means += test.mean_mpa;
            ++count;
        }
    }
    if (count == 0) {
        return std::nullopt;
    }
    const double percent = 100 * deviations / means;
    const auto rating = std::ranges::find_if(tables.within_test, [&](const ScatterRating& row) {
        return !above(percent, row.at_most_percent);
    });
    return WithinTest{.tests = count,
                      .deviation_mpa = deviations / double(count),
                      .percent = percent,
                      .rating = rating == tables.within_test.end() ? "poor" : rating->word,
                      .source = tables.within_test_source};
}

StrengthStatistics statistics_of(const StrengthRecord& record,
                                 const std::vector<StrengthTest>& production, int today,
                                 const Tables& tables, Worksheet& worksheet) {
    const std::vector<double> means = means_of(production);
    const auto [lowest, highest] = std::ranges::minmax(means);
    StrengthStatistics statistics{.tests = means.size(),
                                  .mean_mpa = mean_of(means),
                                  .lowest_mpa = lowest,
                                  .highest_mpa = highest,
                                  .deviation_mpa = {},
                                  .percent = {},
                                  .within_test = within_test(production, tables.strength),
                                  .counted = 0,
                                  .counted_mean_mpa = {},
                                  .counted_deviation_mpa = {},
                                  .deviation_factor = {},
                                  .required_average_mpa = {}};
    if (means.size() > 1) {
        statistics.deviation_mpa = standard_deviation(means);
        statistics.percent = 100 * *statistics.deviation_mpa / statistics.mean_mpa;
        add_deviation_step(statistics, worksheet);
    }
    if (record.code == AcceptanceCode::aci_318) {
        const AverageStrengthRules& rules = tables.code->average_strength;
        const auto counted = recent(production, today, rules, worksheet);
        tell_few_specimens(counted, least_specimens(record, tables.strength), worksheet);
        ask_average(record, counted, rules, statistics, worksheet);
    }
    return statistics;
}

} // namespace boardmark::core
