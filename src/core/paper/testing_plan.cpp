#include <boardmark/core/paper/testing_plan.hpp>
#include <boardmark/core/strength/expected_strength.hpp>

#include "../basis/conversions.hpp"
#include "../code/required_strength.hpp"
#include "acceptance_luck.hpp"
#include "acceptance_rules.hpp"
#include "clause_words.hpp"
#include "fresh_windows.hpp"
#include "sampling_plan.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Weak concretes whose passing is told, as parts of the specified strength. Chosen, no limit.
constexpr double weak_parts[] = {1.0, 0.96, 0.92};

/// Tests that identity is judged by, at most.
int judged_together(const PaperCase& papers, int tests) {
    return std::min(tests, papers.tables.strength->en.identity_most_tests);
}

SpecimenPlan specimens_of(const PaperCase& papers) {
    const AciAcceptance& rules = papers.tables.strength->aci;
    const int early = static_cast<int>(papers.rules("early_specimens").value);
    return {.specimen = papers.asked.specimen,
            .large_early = early,
            .large = rules.large_specimens,
            .small_early = early,
            .small = rules.small_specimens,
            .held = static_cast<int>(papers.rules("held_specimens").value),
            .early_age_d = papers.rules("early_age").value,
            .age_d = papers.asked.strength_age_d,
            .source = rules.specimen_source};
}

std::vector<PourTest> fresh_tests(const PaperCase& papers) {
    const Phrase with_strength{"with every strength sample, and of the first load", {}};
    std::vector<PourTest> tests{
        {.name = "slump",
         .when = papers.asked.board_marked ? Phrase{"every load: an even slump is an even face", {}}
                                           : with_strength,
         .asked = slump_window_of(papers.asked, papers.tables),
         .measure = Measure::slump}};
    if (papers.mix.selection.air_entrained) {
        tests.push_back(
            {.name = "air",
             .when = with_strength,
             .asked = air_window_of(papers.mix.selection, papers.mix_checks, papers.tables),
             .measure = Measure::percent});
    }
    PourTest temperature{
        .name = "temperature", .when = with_strength, .measure = Measure::temperature};
    if (papers.plan) {
        temperature.asked = temperature_window_of(*papers.plan);
    }
    tests.push_back(temperature);
    if (papers.mix.totals.fresh_density_kg_m3) {
        tests.push_back(
            {.name = "density",
             .when = with_strength,
             .asked = {.asked = papers.mix.totals.fresh_density_kg_m3},
             .measure = Measure::fresh_density,
             .note = {"gives the yield: less concrete than was paid, or too much air", {}}});
    }
    return tests;
}

LuckOfTests luck_of(const PaperCase& papers, std::string concrete, bool sound,
                    const StrengthSpread& spread, int tests) {
    const JobRule rule{.single_least_mpa = single_test_least_mpa(papers),
                       .average_least_mpa = papers.asked.strength_mpa};
    const bool identity = accepted_by(papers) == AcceptedBy::identity;
    const int judged = judged_together(papers, tests);
    return {.concrete = std::move(concrete),
            .mean_mpa = spread.mean_mpa,
            .sound = sound,
            .low_test = low_test_probability(spread, rule),
            .low_average = low_average_probability(spread, rule),
            .job_fails = identity ? identity_fails_probability(
                                        spread,
                                        {.single_least_mpa = rule.single_least_mpa,
                                         .mean_least_mpa = papers.asked.strength_mpa +
                                                           identity_margin_mpa(papers, judged)},
                                        judged)
                                  : job_fails_probability(spread, rule, tests)};
}

void add_luck(const PaperCase& papers, TestingPlan& plan) {
    const auto& records = papers.asked.records;
    const AverageStrengthRules& rules = papers.tables.code->average_strength;
    Check check{.id = check_ids::tests_scatter,
                .verdict = Verdict::holds,
                .measure = Measure::strength,
                .requirement = "scatter of the tests",
                .source = rules.with_records};
    if (accepted_by(papers) == AcceptedBy::not_known) {
        check.verdict = Verdict::not_checked;
        check.message = {
            "what luck does to the tests is not known: no rules of acceptance are known "
            "here for the code; state 'requirements.code'",
            {}};
        plan.checks.push_back(check);
        return;
    }
    const bool enough =
        records && !rules.factors.empty() && records->tests >= rules.factors.front().tests;
    if (!enough || records->standard_deviation_mpa <= 0) {
        check.verdict = Verdict::not_checked;
        check.message = {"what luck does to the tests is not known: a strength record of enough "
                         "tests shows how they scatter; add 'requirements.strength_records'",
                         {}};
        plan.checks.push_back(check);
        return;
    }
    const double factor = deviation_factor(records->tests, rules);
    plan.deviation_mpa = factor * records->standard_deviation_mpa;
    plan.few_tests_behind = factor > 1;
    check.value = plan.deviation_mpa;
    check.verdict = plan.few_tests_behind ? Verdict::watch : Verdict::holds;
    check.message = {plan.few_tests_behind
                         ? "tests scatter by {value}, the record's {deviation} times {factor} for "
                           "its {tests} tests: an estimate"
                         : "tests scatter by {value}, by the record of {tests} tests",
                     {quantity("value", {*plan.deviation_mpa, Measure::strength}),
                      as_strength("deviation", records->standard_deviation_mpa),
                      quantity("factor", {factor, Measure::ratio}),
                      as_count("tests", records->tests)}};
    plan.checks.push_back(check);
    const int tests =
        plan.sampling.tests.value_or(static_cast<int>(papers.rules("least_tests").value));
    const auto add = [&](std::string concrete, bool sound, double mean_mpa) {
        plan.luck.push_back(luck_of(papers, std::move(concrete), sound,
                                    {.mean_mpa = mean_mpa, .deviation_mpa = *plan.deviation_mpa},
                                    tests));
    };
    const auto expected = expected_strength(papers.asked, papers.mix, papers.tables);
    if (expected) {
        add("sound, as expected of this mix", true, expected->mpa);
    }
    add("sound, at the required average", true, papers.mix.selection.required_average_strength_mpa);
    for (const double part : weak_parts) {
        constexpr double percent = 100;
        const int of_specified = static_cast<int>(part * percent + 0.5);
        add("weak, mean at " + std::to_string(of_specified) + " % of the specified", false,
            part * papers.asked.strength_mpa);
    }
}

std::vector<Phrase> handling_of(const PaperCase& papers) {
    const PaperRules& rules = papers.rules;
    const bool strong = papers.asked.strength_mpa >= rules("strong_from").value * (1 - 1e-9);
    constexpr double minutes_in_day = 1440;
    constexpr double minutes_in_hour = 60;
    const auto as_minutes = [&](const char* name, const char* row) {
        return as_hours(name, minutes_in_day * rules(row).value / minutes_in_hour);
    };
    return {
        {"The load is drawn at random from the tickets, before it is seen; nobody at the plant is "
         "told",
         {}},
        {"A sample is of two or more parts from the middle of the load, all within {within} "
         "[{source}]",
         {as_minutes("within", "sample_within"),
          word("source", rules("sample_within").source.citation)}},
        {"Slump and air begin within {fresh} of it, specimens within {specimens} [{source}]",
         {as_minutes("fresh", "slump_air_within"), as_minutes("specimens", "cylinders_within"),
          word("source", rules("cylinders_within").source.citation)}},
        {"Specimens stand {until} at most on the site between {low} and {high}, out of the sun, "
         "without drying or moving, with a thermometer that keeps the extremes [{source}]",
         {as_hours("until", hours_of_day * rules("initial_curing").value),
          as_warmth("low", rules(strong ? "strong_low" : "initial_low").value),
          as_warmth("high", rules(strong ? "strong_high" : "initial_high").value),
          word("source", rules("initial_curing").source.citation)}},
        {"They are fetched {from} to {until} after they were made [{source}]",
         {as_hours("from", hours_of_day * rules("pick_up_from").value),
          as_hours("until", hours_of_day * rules("pick_up_until").value),
          word("source", rules("pick_up_from").source.citation)}},
        {"Specimens kept beside the wall tell when to strip and when protection may end; they "
         "reach "
         "{percent} of the standard-cured ones, or the protection was poor [{source}]",
         {as_percent("percent", rules("field_cured_percent").value),
          word("source", rules("field_cured_percent").source.citation)}},
    };
}

std::vector<Phrase> what_is_kept() {
    return {
        {"Every ticket: batch weights, water at the plant and on site, moistures, times of "
         "batching and of the end of discharge",
         {}},
        {"Of every sample: load, place in the wall and lift, slump, air, temperature of concrete "
         "and air, density, who sampled",
         {}},
        {"Of every specimen: number, size, curing and its temperatures, age, load, kind of "
         "break, and the result the day it is broken",
         {}},
        {"Reports to designer, contractor and supplier within the week; a low result the same "
         "day",
         {}},
        {"Held specimens until the designer has accepted the result", {}}};
}

std::vector<Phrase> notes_of(const PaperCase& papers, const SamplingPlan& plan) {
    std::vector<Phrase> notes;
    if (plan.days_assumed && plan.pour_days) {
        notes.push_back(
            {"Days of placing are not stated: each of {parts} parts is taken on a day of "
             "its own; state 'schedule.pour_days'",
             {as_count("parts", *plan.pour_days)}});
    }
    if (plan.waiver_possible) {
        notes.push_back(
            {"Below {least} of this concrete the code lets tests be left out where the "
             "building official accepts other evidence; for a wall that shows, test",
             {quantity("least", {papers.rules("waiver_below").value, Measure::volume})}});
    }
    if (accepted_by(papers) == AcceptedBy::not_known) {
        notes.push_back({"These are the rates of {source}: the code of the job has its own",
                         {word("source", plan.source.citation)}});
    }
    if (!papers.wall) {
        notes.push_back({"How many tests that makes, a wall file tells: it has volume, faces and "
                         "loads",
                         {}});
    } else if (!plan.batches) {
        notes.push_back({"How many loads come is not known: state 'placing.truck'", {}});
    }
    return notes;
}

} // namespace

TestingPlan testing_plan_of(const PaperCase& papers) {
    TestingPlan plan{.sampling = sampling_plan_of(papers),
                     .specimens = specimens_of(papers),
                     .fresh = fresh_tests(papers),
                     .luck = {},
                     .handling = handling_of(papers),
                     .kept = what_is_kept(),
                     .notes = {},
                     .checks = {}};
    plan.notes = notes_of(papers, plan.sampling);
    add_luck(papers, plan);
    return plan;
}

} // namespace boardmark::core
