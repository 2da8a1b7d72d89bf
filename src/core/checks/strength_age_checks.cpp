#include "../basis/phrases.hpp"
#include "strength_record_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Tests of production that came late. One that is below the least of a single test even so is no
/// better at its proper age.
std::vector<Check> late_tests(const StrengthRecord& record, const StrengthFindings& findings) {
    std::vector<Check> checks;
    for (const JudgedTest& judged : findings.tests) {
        if (!judged.late) {
            continue;
        }
        const StrengthTest& test = judged.test;
        const bool short_of_it = judged.verdict == Verdict::fails;
        checks.push_back(
            {.id = check_ids::strength_age,
             .verdict = short_of_it ? Verdict::fails : Verdict::watch,
             .value = test.mean_mpa,
             .limit = Limit{findings.acceptance.single_least_mpa, std::nullopt},
             .measure = Measure::strength,
             .requirement = "age of the strength",
             .source = {},
             .message = {
                 "{name} was tested at {age}, not at {asked}: {value} is at most what it had then, "
                 "so no average with it can hold" +
                     std::string{short_of_it ? "; it is below {limit} even so" : ""},
                 {word("name", test.batch.name), quantity("age", {test.age_d, Measure::age}),
                  quantity("asked", {record.strength_age_d, Measure::age}),
                  quantity("value", {test.mean_mpa, Measure::strength}),
                  quantity("limit", {findings.acceptance.single_least_mpa, Measure::strength})}}});
    }
    return checks;
}

bool is_late(const StrengthFindings& findings, const std::string& batch) {
    return std::ranges::any_of(findings.tests, [&](const JudgedTest& judged) {
        return judged.late && judged.test.batch.name == batch;
    });
}

/// Batches of production whose strength age has passed without a test.
std::vector<Check> due_tests(const StrengthRecord& record, const StrengthFindings& findings,
                             int today) {
    std::vector<std::string> due;
    for (const CastBatch& batch : record.batches) {
        const bool past = batch.cast && *batch.cast + record.strength_age_d < today;
        if (past && std::ranges::find(findings.untested, batch.name) != findings.untested.end() &&
            !is_late(findings, batch.name)) {
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
             .message = {"{names}: past {age} and without a test of that age; an average across "
                         "what is missing cannot hold",
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
