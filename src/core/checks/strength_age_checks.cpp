#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "strength_record_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool has_a_test(const StrengthFindings& findings, const std::string& batch) {
    return std::ranges::any_of(
        findings.tests, [&](const JudgedTest& judged) { return judged.test.batch.name == batch; });
}

/// Tests of production that came late: no acceptance rule holds them, and the running means pass
/// them over. One that is below the least of a single test even so is no better at its proper age.
std::vector<Check> late_tests(const StrengthRecord& record, const StrengthFindings& findings) {
    std::vector<Check> checks;
    for (const StrengthTest& test : findings.other_tests) {
        const bool late = test.batch.purpose == BatchPurpose::production &&
                          above(test.age_d, record.strength_age_d) &&
                          !has_a_test(findings, test.batch.name);
        if (!late) {
            continue;
        }
        const bool short_of_it = below(test.mean_mpa, findings.acceptance.single_least_mpa);
        checks.push_back(
            {.id = check_ids::strength_age,
             .verdict = short_of_it ? Verdict::fails : Verdict::watch,
             .value = test.mean_mpa,
             .limit = Limit{findings.acceptance.single_least_mpa, std::nullopt},
             .measure = Measure::strength,
             .requirement = "age of the strength",
             .source = {},
             .message = {
                 "{name} was tested at {age}, not at {asked}: {value} counts in no average of "
                 "consecutive tests" +
                     std::string{short_of_it ? ", and is below {limit} even so" : ""},
                 {word("name", test.batch.name), quantity("age", {test.age_d, Measure::age}),
                  quantity("asked", {record.strength_age_d, Measure::age}),
                  quantity("value", {test.mean_mpa, Measure::strength}),
                  quantity("limit", {findings.acceptance.single_least_mpa, Measure::strength})}}});
    }
    return checks;
}

bool was_tested_late(const StrengthRecord& record, const StrengthFindings& findings,
                     const std::string& batch) {
    return std::ranges::any_of(findings.other_tests, [&](const StrengthTest& test) {
        return test.batch.name == batch && above(test.age_d, record.strength_age_d);
    });
}

/// Batches of production whose strength age has passed without a test.
std::vector<Check> due_tests(const StrengthRecord& record, const StrengthFindings& findings,
                             int today) {
    std::vector<std::string> due;
    for (const CastBatch& batch : record.batches) {
        const bool past = batch.cast && *batch.cast + record.strength_age_d < today;
        if (batch.purpose == BatchPurpose::production && past &&
            !has_a_test(findings, batch.name) && !was_tested_late(record, findings, batch.name)) {
            due.push_back(batch.name);
        }
    }
    if (due.empty()) {
        return {};
    }
    return {{.id = check_ids::strength_due,
             .verdict = Verdict::watch,
             .measure = Measure::strength,
             .requirement = "every batch is tested",
             .source = {},
             .message = {"{names}: past {age} and without a test of that age; the averages pass "
                         "over what is missing",
                         {word("names", named(due)),
                          quantity("age", {record.strength_age_d, Measure::age})}}}};
}

} // namespace

std::vector<Check> check_ages(const StrengthRecord& record, const StrengthFindings& findings,
                              int today) {
    std::vector<Check> checks = late_tests(record, findings);
    for (Check& check : due_tests(record, findings, today)) {
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace boardmark::core
