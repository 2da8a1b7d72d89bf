#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/remembered_limit.hpp"
#include "../checks/strength_record_checks.hpp"
#include "../method/cautions.hpp"
#include "cored_tests.hpp"
#include "record_evaluation.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

/// The tests that are not judged. Those of production stand in the order of all.
std::vector<StrengthTest> others(const std::vector<StrengthTest>& all,
                                 const std::vector<StrengthTest>& production) {
    std::vector<StrengthTest> left;
    auto next = production.begin();
    for (const StrengthTest& test : all) {
        const bool judged = next != production.end() && same(next->age_d, test.age_d) &&
                            next->specimens.front().batch == test.specimens.front().batch;
        if (judged) {
            ++next;
        } else {
            left.push_back(test);
        }
    }
    return left;
}

/// Production up to the test at the strength age that has so many of its kind before it.
ProductionTests up_to(const ProductionTests& production, std::size_t timely,
                      const StrengthRecord& record) {
    ProductionTests first;
    for (std::size_t i = 0; i < production.tests.size() && timely > 0; ++i) {
        first.tests.push_back(production.tests[i]);
        first.after_gap.push_back(production.after_gap[i]);
        timely -= same(production.tests[i].age_d, record.strength_age_d) ? 1 : 0;
    }
    return first;
}

void add_line_step(const StrengthLine& line, Worksheet& worksheet) {
    worksheet.steps.push_back(
        {.quantity = "strength_line",
         .value = line.r_squared,
         .measure = Measure::ratio,
         .provenance = Provenance::computed,
         .reason = {"r2 of ln(strength) over w/cm (Abrams' relation), least squares of {tests} "
                    "tests at {ratios} ratios from {low} to {high}",
                    {quantity("tests", {double(line.points.size()), Measure::count}),
                     quantity("ratios", {double(line.ratio_count), Measure::count}),
                     quantity("low", {line.lowest_w_cm, Measure::w_cm}),
                     quantity("high", {line.highest_w_cm, Measure::w_cm})}}});
}

void add_cautions(const StrengthRecord& record, const StrengthFindings& findings,
                  Worksheet& worksheet) {
    worksheet.cautions.push_back(
        {"A strength test says what the cylinder or cube holds, not what the wall holds; cores and "
         "the licensed engineer decide about concrete in place.",
         {}});
    if (findings.line) {
        worksheet.cautions.push_back(
            {"The line holds for the materials, the air and the curing of its batches, between its "
             "lowest and highest w/cm.",
             {}});
    }
    worksheet.cautions.push_back(general_caution());
    if (record.code == AcceptanceCode::en_206) {
        worksheet.cautions.push_back({"The rules of EN 206 are from memory here; check them "
                                      "against the edition and the national annex that apply.",
                                      {}});
    }
}

/// Under EN 206 the rule of initial production goes on holding for its tests when later ones have
/// made the production continuous.
std::vector<Check> initial_production_checks(const StrengthRecord& record,
                                             const ProductionTests& production,
                                             const StrengthTables& tables) {
    const auto continuous_from = static_cast<std::size_t>(tables.en.continuous_from);
    const bool was_initial = record.code == AcceptanceCode::en_206 &&
                             record.assessment == Assessment::conformity &&
                             in_time(production.tests, record).size() >= continuous_from;
    if (!was_initial) {
        return {};
    }
    const ProductionTests initial = up_to(production, continuous_from - 1, record);
    const Acceptance rule = acceptance_of(record, initial.tests, tables);
    for (const JudgedTest& judged : judge(initial, rule, record)) {
        if (judged.mean_verdict == Verdict::fails) {
            return {
                {.id = "strength.mean_initial",
                 .verdict = Verdict::fails,
                 .value = judged.running_mean_mpa,
                 .limit = Limit{rule.mean_least_mpa, std::nullopt},
                 .measure = Measure::strength,
                 .requirement = "initial production",
                 .source = rule.source,
                 .message = {"while production was initial the average up to {name} had {value}, "
                             "at least {limit}",
                             {word("name", judged.test.batch.name),
                              quantity("value", {*judged.running_mean_mpa, Measure::strength}),
                              quantity("limit", {*rule.mean_least_mpa, Measure::strength})}}}};
        }
    }
    return {};
}

} // namespace

StrengthFindings find_strength(const CompleteRecord& written, int today, const Tables& tables) {
    const StrengthRecord record =
        at_nominal_age(written, written->strength_age_d, tables.strength->age_tolerance_d.value);
    const std::vector<StrengthTest> all = tests_of(record);
    const ProductionTests production = production_of(record, all, today);
    const std::vector<StrengthTest> timely = in_time(production.tests, record);
    StrengthFindings findings{.acceptance =
                                  acceptance_of(record, production.tests, tables.strength),
                              .tests = {},
                              .untested = production.untested,
                              .other_tests = others(all, production.tests),
                              .statistics = {},
                              .projections = projections_of(record, all, tables.strength),
                              .points = line_points(all, record.strength_age_d),
                              .line = {},
                              .checks = {},
                              .worksheet = {}};
    findings.tests = judge(production, findings.acceptance, record);
    if (!timely.empty()) {
        findings.statistics = statistics_of(record, timely, today, tables, findings.worksheet);
    }
    findings.cores = cored_tests(record, tables.strength->cores);
    findings.way_on = way_on(record, findings, tables.strength);
    findings.line = fit_line(findings.points, tables.strength->confidence_percent.value / 100);
    if (findings.line) {
        add_line_step(*findings.line, findings.worksheet);
    }
    add_cautions(record, findings, findings.worksheet);
    for (auto& checks : {check_acceptance(record, findings, tables.strength),
                         check_cores(record, findings, tables.strength->cores),
                         check_ages(record, findings, today),
                         initial_production_checks(record, production, tables.strength),
                         check_specimens(record, findings, tables.strength),
                         check_record(record, findings, tables), check_line(record, findings)}) {
        std::ranges::copy(checks, std::back_inserter(findings.checks));
    }
    for (Check& check : findings.checks) {
        watch_what_is_from_memory(check);
    }
    return findings;
}

} // namespace boardmark::core
