#include "../basis/phrases.hpp"
#include "compare.hpp"
#include "remembered_limit.hpp"
#include "strength_record_checks.hpp"

#include <algorithm>
#include <functional>
#include <limits>
#include <string_view>

namespace boardmark::core {
namespace {

constexpr std::size_t most_told = 5;

/// A test or a mean that is below its limit.
struct Shortfall {
    std::string name;
    double value_mpa;
    double short_mpa;
};

/// "B-17 has 4380 psi, 120 psi below 4500 psi; ..." The worst comes first and bears the value.
Phrase told(std::string text, std::vector<Shortfall> faults, double limit_mpa) {
    std::ranges::stable_sort(faults, std::greater{}, &Shortfall::short_mpa);
    Phrase phrase{std::move(text), {strength("limit", limit_mpa)}};
    for (std::size_t i = 0; i < std::min(faults.size(), most_told); ++i) {
        const std::string number = i == 0 ? "" : std::to_string(i + 1);
        phrase.text += i == 0 ? "{name} has {value}, {short} below {limit}"
                              : "; {name" + number + "} has {value" + number + "}, {short" +
                                    number + "} below it";
        phrase.arguments.push_back(word("name" + number, faults[i].name));
        phrase.arguments.push_back(strength("value" + number, faults[i].value_mpa));
        phrase.arguments.push_back(strength("short" + number, faults[i].short_mpa));
        phrase.arguments.push_back(strength("short" + number + "_limit", 0));
        phrase.arguments.push_back(strength("value" + number + "_limit", limit_mpa));
    }
    if (faults.size() > most_told) {
        phrase.text += "; {more} more are below it";
        phrase.arguments.push_back(
            quantity("more", {double(faults.size() - most_told), Measure::count}));
    }
    return phrase;
}

std::string of_rule(const Acceptance& acceptance) {
    return acceptance.rule.empty() ? "" : acceptance.rule + ": ";
}

/// Late tests have a check of their own.
std::vector<const JudgedTest*> tested_in_time(const StrengthFindings& findings) {
    std::vector<const JudgedTest*> tests;
    for (const JudgedTest& judged : findings.tests) {
        if (!judged.late) {
            tests.push_back(&judged);
        }
    }
    return tests;
}

Check single_test_check(const StrengthRecord& record, const StrengthFindings& findings) {
    const Acceptance& acceptance = findings.acceptance;
    Check check{.id = check_ids::strength_single_test,
                .verdict = Verdict::not_checked,
                .measure = Measure::strength,
                .requirement = "single test",
                .source = acceptance.source,
                .message = {"no test of production at {age} yet",
                            {quantity("age", {record.strength_age_d, Measure::age})}}};
    const std::vector<const JudgedTest*> tests = tested_in_time(findings);
    if (tests.empty()) {
        return check;
    }
    const JudgedTest& lowest = **std::ranges::min_element(
        tests, {}, [](const JudgedTest* judged) { return judged->test.mean_mpa; });
    const double limit_mpa = acceptance.single_least_mpa;
    check.value = lowest.test.mean_mpa;
    check.limit = Limit{.low = limit_mpa, .high = std::nullopt};
    check.verdict = lowest.verdict;
    if (lowest.verdict != Verdict::fails && !findings.untested.empty()) {
        check.verdict = Verdict::not_checked;
        check.message = {"{names}: no test at {age}; of what was tested the lowest is {name} with "
                         "{value}, at least {limit}",
                         {word("names", named(findings.untested)),
                          quantity("age", {record.strength_age_d, Measure::age}),
                          word("name", lowest.test.batch.name),
                          strength("value", lowest.test.mean_mpa), strength("limit", limit_mpa)}};
        return check;
    }
    if (lowest.verdict == Verdict::holds) {
        check.message = {"no test is below {limit}; the lowest of {tests} is {name} with {value}",
                         {strength("limit", limit_mpa), strength("value", lowest.test.mean_mpa),
                          word("name", lowest.test.batch.name),
                          quantity("tests", {double(tests.size()), Measure::count})}};
        return check;
    }
    std::vector<Shortfall> faults;
    for (const JudgedTest* judged : tests) {
        if (judged->verdict != Verdict::holds) {
            faults.push_back({judged->test.batch.name, judged->test.mean_mpa, judged->short_mpa});
        }
    }
    check.message = told("", std::move(faults), limit_mpa);
    return check;
}

/// The tests of a running mean that ends at a place.
std::string span_of(const StrengthFindings& findings, std::size_t end) {
    const auto count = static_cast<std::size_t>(findings.acceptance.averaged);
    const std::size_t begin = end + 1 - count;
    const auto& tests = findings.tests;
    if (count > most_told) {
        return tests[begin].test.batch.name + " to " + tests[end].test.batch.name;
    }
    std::vector<std::string> names;
    for (std::size_t i = begin; i <= end; ++i) {
        names.push_back(tests[i].test.batch.name);
    }
    return named(names);
}

/// An average that another order of the batches of one day would give.
struct Reordered {
    double mean_mpa;
    std::vector<std::string> names; ///< of its tests
};

/// The lowest average of the tests of some days and parts of days, whose order is not stated: at
/// one place of the record, of each day the weakest of its tests that may stand there. Nothing
/// where a test is not dated: then the record's own order is stated.
std::optional<Reordered> weakest_in_any_order(const std::vector<JudgedTest>& tests,
                                              std::size_t begin, std::size_t end) {
    Reordered found{0, {}};
    for (std::size_t from = begin; from < end;) {
        const auto day = tests[from].test.batch.cast;
        if (!day) {
            return std::nullopt;
        }
        const auto is_of_day = [&](std::size_t i) { return tests[i].test.batch.cast == day; };
        std::size_t first = from;
        while (first > 0 && is_of_day(first - 1)) {
            --first;
        }
        std::vector<const StrengthTest*> of_day;
        for (std::size_t i = first; i < tests.size() && is_of_day(i); ++i) {
            of_day.push_back(&tests[i].test);
        }
        const std::size_t here = std::min(first + of_day.size(), end) - from;
        std::ranges::stable_sort(of_day, {}, &StrengthTest::mean_mpa);
        for (std::size_t i = 0; i < here; ++i) {
            found.mean_mpa += of_day[i]->mean_mpa / double(end - begin);
            found.names.push_back(of_day[i]->batch.name);
        }
        from += here;
    }
    return found;
}

/// The lowest of all averages in any order within the days.
std::optional<Reordered> weakest_in_any_order(const StrengthFindings& findings) {
    const auto count = static_cast<std::size_t>(findings.acceptance.averaged);
    std::optional<Reordered> weakest;
    for (std::size_t end = count; end <= findings.tests.size(); ++end) {
        auto found = weakest_in_any_order(findings.tests, end - count, end);
        if (found && (!weakest || found->mean_mpa < weakest->mean_mpa)) {
            weakest = std::move(found);
        }
    }
    return weakest;
}

/// An average that holds only in the order in which the record names the batches of a day.
void watch_order_of_day(const StrengthRecord& record, const StrengthFindings& findings,
                        Check& check) {
    const double limit_mpa = *findings.acceptance.mean_least_mpa;
    const auto weakest = weakest_in_any_order(findings);
    if (!weakest || at_least({weakest->mean_mpa, limit_mpa,
                              strength_precision_mpa(record.system)}) == Verdict::holds) {
        return;
    }
    check.verdict = Verdict::watch;
    check.message.text +=
        "; the order of the batches within a day is not stated, and in another one "
        "{others} follow each other and average {other}, below {limit}: find the "
        "hours of casting";
    check.message.arguments.push_back(word("others", named(weakest->names)));
    check.message.arguments.push_back(strength("other", weakest->mean_mpa));
}

/// None of the averages of what was tested is too low, and some batch has no test in time.
Phrase why_averages_are_open(const StrengthRecord& record, const StrengthFindings& findings) {
    return {of_rule(findings.acceptance) +
                "{names}: no test at {age}, so the averages of {averaged} consecutive tests that "
                "it belongs to are not known; of what was tested none is below {limit}",
            {word("names", named(findings.untested)),
             quantity("age", {record.strength_age_d, Measure::age}),
             quantity("averaged", {double(findings.acceptance.averaged), Measure::count}),
             strength("limit", *findings.acceptance.mean_least_mpa)}};
}

/// The deviation by which the means are held is no longer that of the production.
Phrase why_limit_is_open(const Acceptance& acceptance) {
    return {of_rule(acceptance) +
                "{averaged} later tests have a standard deviation of {later}, more than goes with "
                "the {first} of the first ones: the deviation is to be found anew, and the least "
                "average with it (the bound is from memory)",
            {quantity("averaged", {double(acceptance.averaged), Measure::count}),
             strength("later", *acceptance.outgrown_by_mpa),
             strength("first", acceptance.deviation_mpa)}};
}

Check mean_check(const StrengthRecord& record, const StrengthFindings& findings) {
    const Acceptance& acceptance = findings.acceptance;
    Check check{.id = acceptance.mean_id,
                .verdict = Verdict::not_checked,
                .measure = Measure::strength,
                .requirement = acceptance.rule.empty() ? "average of three" : acceptance.rule,
                .source = acceptance.source,
                .message = {}};
    const auto lowest = std::ranges::min_element(findings.tests, {}, [](const JudgedTest& judged) {
        return judged.running_mean_mpa.value_or(std::numeric_limits<double>::infinity());
    });
    if (lowest == findings.tests.end() || !lowest->running_mean_mpa) {
        check.message =
            acceptance.averaged > 0
                ? Phrase{of_rule(acceptance) + "{tests} tests; averages of {averaged} are judged",
                         {quantity("tests", {double(findings.tests.size()), Measure::count}),
                          quantity("averaged", {double(acceptance.averaged), Measure::count})}}
                : Phrase{of_rule(acceptance) +
                             "the rule averages 2 to 6 tests of one volume; this file has {tests}",
                         {quantity("tests", {double(findings.tests.size()), Measure::count})}};
        return check;
    }
    const bool fails = std::ranges::any_of(findings.tests, [](const JudgedTest& judged) {
        return judged.mean_verdict == Verdict::fails;
    });
    if (!fails && !findings.untested.empty()) {
        check.message = why_averages_are_open(record, findings);
        return check;
    }
    if (!fails && acceptance.outgrown_by_mpa) {
        check.message = why_limit_is_open(acceptance);
        return check;
    }
    const double limit_mpa = *acceptance.mean_least_mpa;
    check.value = lowest->running_mean_mpa;
    check.limit = Limit{.low = limit_mpa, .high = std::nullopt};
    check.verdict = lowest->mean_verdict;
    const auto place = [&](const JudgedTest& judged) {
        return static_cast<std::size_t>(&judged - findings.tests.data());
    };
    if (check.verdict == Verdict::holds) {
        check.message = {of_rule(acceptance) +
                             "no average of {averaged} consecutive tests is below {limit}; the "
                             "lowest, of {names}, is {value}",
                         {strength("limit", limit_mpa), strength("value", *check.value),
                          word("names", span_of(findings, place(*lowest))),
                          quantity("averaged", {double(acceptance.averaged), Measure::count})}};
        watch_order_of_day(record, findings, check);
        return check;
    }
    std::vector<Shortfall> faults;
    for (const JudgedTest& judged : findings.tests) {
        const Verdict verdict = judged.mean_verdict;
        if (verdict == Verdict::fails || verdict == Verdict::watch) {
            faults.push_back({"the average of " + span_of(findings, place(judged)),
                              *judged.running_mean_mpa, judged.mean_short_mpa});
        }
    }
    check.message = told(of_rule(acceptance), std::move(faults), limit_mpa);
    return check;
}

} // namespace

std::string named(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < std::min(names.size(), most_told); ++i) {
        text += (i == 0 ? "" : ", ") + names[i];
    }
    return names.size() > most_told
               ? text + " and " + std::to_string(names.size() - most_told) + " more"
               : text;
}

void watch_doubtful(const DoubtfulTests& doubtful, Check& check) {
    if (check.verdict != Verdict::holds) {
        return;
    }
    const auto add = [&](const std::vector<std::string>& names, std::string_view name,
                         std::string_view text) {
        if (!names.empty()) {
            check.verdict = Verdict::watch;
            check.message.text += text;
            check.message.arguments.push_back(word(std::string{name}, named(names)));
        }
    };
    add(doubtful.few, "few", "; {few}: fewer specimens than make a test");
    add(doubtful.wide, "wide",
        "; {wide}: the specimens differ by more than they may, look for the reason before the test "
        "counts");
}

std::vector<Check> check_acceptance(const StrengthRecord& record, const StrengthFindings& findings,
                                    const StrengthTables& tables) {
    std::vector<Check> checks{mean_check(record, findings), single_test_check(record, findings)};
    const bool by_short_ones =
        record.code == AcceptanceCode::aci_318 && is_short(record.specimen, tables.cores);
    const DoubtfulTests doubtful = doubtful_tests(record, findings, tables);
    for (Check& check : checks) {
        watch_doubtful(doubtful, check);
        if (by_short_ones && check.verdict == Verdict::holds) {
            check.verdict = Verdict::watch;
            check.message.text += "; by cylinders too short to show the strength as it is";
        }
        if (check.value && check.source.confidence == Confidence::from_memory) {
            check.verdict = worse(check.verdict, Verdict::watch);
            append_memory(check.source, check.message);
        }
    }
    return checks;
}

} // namespace boardmark::core
