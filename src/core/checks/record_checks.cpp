#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "compare.hpp"
#include "own_line_checks.hpp"
#include "strength_record_checks.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

/// What the tests that count average against what the next concrete needs. Fewer than make a
/// record, and a record with gaps, prove it at best on watch.
Phrase told_average(const StrengthStatistics& statistics, const StrengthFindings& findings,
                    bool reached) {
    Phrase phrase{"",
                  {strength("value", *statistics.counted_mean_mpa),
                   strength("limit", *statistics.required_average_mpa),
                   quantity("tests", {double(statistics.counted), Measure::count}),
                   word("names", named(findings.untested))}};
    phrase.text = statistics.deviation_factor
                      ? "the tests average {value}; with this scatter the concrete needs {limit}"
                      : "{tests} tests average {value}; they are too few for a record, and without "
                        "one the concrete needs {limit}";
    phrase.text += reached                       ? ""
                   : statistics.deviation_factor ? ": raise the average, or lower the scatter"
                                                 : ": raise the average, or test more";
    phrase.text += findings.untested.empty() ? "" : "; {names} not counted, without a test in time";
    return phrase;
}

/// A record that meets the rules with luck only: its mean is below what its own scatter asks.
std::vector<Check> average_check(const StrengthRecord& record, const StrengthFindings& findings,
                                 const Tables& tables) {
    const auto& statistics = findings.statistics;
    if (!statistics || !statistics->required_average_mpa) {
        return {};
    }
    const AverageStrengthRules& rules = tables.code->average_strength;
    Check check{.id = check_ids::strength_record_average,
                .verdict = Verdict::not_checked,
                .measure = Measure::strength,
                .requirement = "required average strength",
                .source = rules.with_records,
                .message = {"every test is of concrete older than {oldest}: none tells of the next",
                            {quantity("oldest", {rules.oldest_record_d, Measure::age})}}};
    if (!statistics->counted_mean_mpa) {
        return {check};
    }
    const double limit_mpa = *statistics->required_average_mpa;
    const bool reached = !below(*statistics->counted_mean_mpa, limit_mpa);
    const bool proven = statistics->deviation_factor && findings.untested.empty();
    check.verdict = reached && proven ? Verdict::holds : Verdict::watch;
    check.value = statistics->counted_mean_mpa;
    check.limit = Limit{.low = limit_mpa, .high = std::nullopt};
    check.source = statistics->deviation_factor ? rules.with_records : rules.without_records;
    check.message = told_average(*statistics, findings, reached);
    watch_doubtful(doubtful_tests(record, findings, tables.strength), check);
    return {check};
}

Check too_few_pairs(const StrengthRecord& record, const Projection& projection,
                    const StrengthTables& tables) {
    return {.id = check_ids::strength_projection,
            .verdict = Verdict::not_checked,
            .measure = Measure::strength,
            .requirement = "early tests",
            .source = tables.least_pairs.source,
            .message = {"{pairs} batches were tested at both {early} and {age}; {least} are needed "
                        "to project from",
                        {quantity("pairs", {double(projection.pairs), Measure::count}),
                         quantity("early", {projection.early_age_d, Measure::age}),
                         quantity("age", {record.strength_age_d, Measure::age}),
                         quantity("least", {tables.least_pairs.value, Measure::count})}}};
}

Check projection_check(const StrengthRecord& record, const Projection& projection,
                       const ProjectedTest& pending, double single_least_mpa) {
    Check check{.id = check_ids::strength_projection,
                .verdict = Verdict::not_checked,
                .measure = Measure::strength,
                .requirement = "early tests",
                .source = {},
                .message = {}};
    const std::vector<Argument> figures{word("name", pending.batch),
                                        strength("early_strength", pending.early_mpa),
                                        quantity("early", {projection.early_age_d, Measure::age}),
                                        quantity("age", {record.strength_age_d, Measure::age}),
                                        strength("lowest", projection.lowest_early_mpa),
                                        strength("highest", projection.highest_early_mpa),
                                        strength("expected", pending.expected_mpa),
                                        strength("from", pending.low_mpa),
                                        strength("to", pending.high_mpa),
                                        strength("single", single_least_mpa)};
    if (pending.outside) {
        check.message = {"{name}: {early_strength} at {early} lies outside what the record holds, "
                         "{lowest} to {highest}: nothing is projected",
                         figures};
        return check;
    }
    const bool may_fall_short = below(pending.low_mpa, single_least_mpa);
    const bool below_specified = below(pending.expected_mpa, record.specified_mpa);
    check.verdict = may_fall_short || below_specified ? Verdict::watch : Verdict::holds;
    check.value = pending.expected_mpa;
    check.limit = Limit{.low = single_least_mpa, .high = std::nullopt};
    check.message = {std::string{"{name}: {early_strength} at {early} suggests {expected} at "
                                 "{age}, between {from} and {to}"} +
                         (may_fall_short    ? "; a single test must not be below {single}"
                          : below_specified ? "; that is below the specified strength"
                                            : ""),
                     figures};
    return check;
}

std::vector<Check> projection_checks(const StrengthRecord& record, const StrengthFindings& findings,
                                     const StrengthTables& tables) {
    std::vector<Check> checks;
    for (const Projection& projection : findings.projections) {
        if (projection.pending.empty()) {
            continue;
        }
        if (!projection.sufficient) {
            checks.push_back(too_few_pairs(record, projection, tables));
            continue;
        }
        for (const ProjectedTest& pending : projection.pending) {
            checks.push_back(projection_check(record, projection, pending,
                                              findings.acceptance.single_least_mpa));
        }
    }
    return checks;
}

std::string percent_text(double logarithm) {
    const double percent = 100 * std::expm1(std::abs(logarithm));
    return std::to_string(std::lround(percent)) + " %";
}

Check outlier_check(const StrengthLine& line) {
    std::vector<std::string> outliers;
    for (std::size_t i = 0; i < line.points.size(); ++i) {
        const Residual& residual = line.residuals[i];
        if (residual.studentized && std::abs(*residual.studentized) > line.outlier_t) {
            outliers.push_back(line.points[i].name + " (" + percent_text(residual.logarithm) +
                               (residual.logarithm < 0 ? " below" : " above") + ")");
        }
    }
    return {
        .id = check_ids::strength_line_outliers,
        .verdict = outliers.empty() ? Verdict::holds : Verdict::watch,
        .measure = Measure::ratio,
        .requirement = "strength against w/cm",
        .source = {},
        .message = {outliers.empty()
                        ? "no test stands out from the line"
                        : "{names} from the line, farther than chance explains among {tests} "
                          "tests. They are in the line; find the reason before you leave one out",
                    {word("names", named(outliers)),
                     quantity("tests", {double(line.points.size()), Measure::count})}}};
}

} // namespace

std::vector<Check> check_record(const StrengthRecord& record, const StrengthFindings& findings,
                                const Tables& tables) {
    std::vector<Check> checks = average_check(record, findings, tables);
    for (Check& check : projection_checks(record, findings, tables.strength)) {
        checks.push_back(std::move(check));
    }
    return checks;
}

std::vector<Check> check_line(const StrengthRecord& record, const StrengthFindings& findings) {
    if (findings.points.empty()) {
        return {};
    }
    const Check check{
        .id = check_ids::strength_line,
        .verdict = Verdict::not_checked,
        .measure = Measure::ratio,
        .requirement = "strength against w/cm",
        .source = {},
        .message = {"tests at {age} have {ratios} different w/cm; a line needs {least}",
                    {quantity("age", {record.strength_age_d, Measure::age}),
                     quantity("ratios", {double(count_ratios(findings.points)), Measure::count}),
                     quantity("least", {double(least_ratios), Measure::count})}}};
    if (!findings.line) {
        return {check};
    }
    std::vector<Check> checks;
    Findings told{checks};
    check_fall(*findings.line, told);
    checks.push_back(outlier_check(*findings.line));
    return checks;
}

} // namespace boardmark::core
