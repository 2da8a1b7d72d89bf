#include <boardmark/core/strength/line_evidence.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../strength/cored_tests.hpp"
#include "strength_record_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

std::vector<std::string> of_few(const StrengthFindings& findings, int least) {
    std::vector<std::string> names;
    for (const JudgedTest& judged : findings.tests) {
        if (is_of_few(judged.test, least)) {
            names.push_back(judged.test.batch.name);
        }
    }
    return names;
}

/// Cylinders so short that their strength would have to be lowered count in full here.
Check short_check(const SpecimenSize& specimen, const CoreRules& cores) {
    const LengthCorrection correction =
        length_correction(specimen.height_mm / specimen.width_mm, cores);
    return {.id = check_ids::strength_specimens,
            .verdict = Verdict::watch,
            .measure = Measure::length,
            .requirement = "size of the specimens",
            .source = correction.source,
            .message = {"cylinders {diameter} x {height} are shorter than twice their diameter and "
                        "show more strength than the concrete has, which is {factor} of it: no "
                        "test is corrected here",
                        {quantity("diameter", {specimen.width_mm, Measure::length}),
                         quantity("height", {specimen.height_mm, Measure::length}),
                         percent_of("factor", 100 * correction.factor)}}};
}

Check count_check(const StrengthRecord& record, const StrengthFindings& findings,
                  const StrengthTables& tables) {
    const int least = least_specimens(record, tables);
    const auto few = of_few(findings, least);
    if (is_short(record.specimen, tables.cores)) {
        return short_check(record.specimen, tables.cores);
    }
    return {.id = check_ids::strength_specimens,
            .verdict = few.empty() ? Verdict::holds : Verdict::watch,
            .measure = Measure::count,
            .requirement = "specimens of a test",
            .source = tables.aci.specimen_source,
            .message = {
                few.empty() ? "every test is the mean of at least {least} cylinders"
                            : "{names}: fewer than the {least} cylinders of this size that "
                              "make a test",
                {quantity("least", {double(least), Measure::count}), word("names", named(few))}}};
}

/// EN 206 judges by two specimens; any other size needs its own relation, which nobody guesses
/// here.
Check size_check(const SpecimenSize& specimen, const EnConformity& rules) {
    const bool cube = specimen.shape == SpecimenShape::cube;
    const bool reference = cube ? same(specimen.width_mm, rules.cube_edge_mm)
                                : same(specimen.width_mm, rules.cylinder_diameter_mm) &&
                                      same(specimen.height_mm, rules.cylinder_height_mm);
    return {.id = check_ids::strength_specimens,
            .verdict = reference ? Verdict::holds : Verdict::watch,
            .measure = Measure::length,
            .requirement = "size of the specimens",
            .source = rules.source,
            .message = {reference
                            ? "specimens of the size that the strength class is defined by"
                            : "a class is defined by cylinders {diameter} x {height} or cubes "
                              "{edge}; another size needs its own proven relation",
                        {quantity("diameter", {rules.cylinder_diameter_mm, Measure::length}),
                         quantity("height", {rules.cylinder_height_mm, Measure::length}),
                         quantity("edge", {rules.cube_edge_mm, Measure::length})}}};
}

const TypicalFigure& most_range(const StrengthTest& test, const RangeRules& rules) {
    return test.specimens.size() == 2 ? rules.of_two : rules.of_three;
}

RangeRules range_rules(const StrengthRecord& record, const StrengthTables& tables) {
    if (record.code != AcceptanceCode::aci_318) {
        const TypicalFigure most{tables.en.range_percent, tables.en.source};
        return {most, most};
    }
    return is_large(record.specimen, tables.aci) ? tables.large_range : tables.small_range;
}

std::vector<std::string> of_wide_range(const StrengthFindings& findings, const RangeRules& rules) {
    std::vector<std::string> wide;
    for (const JudgedTest& judged : findings.tests) {
        const StrengthTest& test = judged.test;
        if (above(100 * test.range_mpa / test.mean_mpa, most_range(test, rules).value)) {
            wide.push_back(test.batch.name);
        }
    }
    return wide;
}

/// Specimens of one test that differ too much are no test until someone finds out why.
Check range_check(const StrengthFindings& findings, const RangeRules& rules) {
    const auto wide = of_wide_range(findings, rules);
    const bool compared = std::ranges::any_of(
        findings.tests, [](const JudgedTest& judged) { return judged.test.specimens.size() > 1; });
    Check check{.id = check_ids::strength_range,
                .verdict = Verdict::not_checked,
                .measure = Measure::percent,
                .requirement = "range within a test",
                .source = rules.of_two.source,
                .message = {"no test has two specimens that could differ", {}}};
    if (compared) {
        check.verdict = wide.empty() ? Verdict::holds : Verdict::watch;
        check.message = {
            wide.empty() ? "within every test two specimens differ by at most {two} of their mean, "
                           "more of them by at most {three}"
                         : "{names}: the specimens differ by more than {two} of their mean, or "
                           "three and more of them by more than {three}; look for the reason "
                           "before the test counts",
            {percent_of("two", rules.of_two.value), percent_of("three", rules.of_three.value),
             word("names", named(wide))}};
    }
    return check;
}

std::vector<Check> within_test_check(const StrengthFindings& findings,
                                     const StrengthTables& tables) {
    if (!findings.statistics || !findings.statistics->within_test) {
        return {};
    }
    const WithinTest& within = *findings.statistics->within_test;
    const double most = tables.within_test.back().at_most_percent;
    const bool poor = above(within.percent, most);
    return {
        {.id = check_ids::strength_within_test,
         .verdict = poor ? Verdict::watch : Verdict::holds,
         .value = within.percent,
         .limit = Limit{.low = std::nullopt, .high = most},
         .measure = Measure::percent,
         .requirement = "scatter between specimens",
         .source = within.source,
         .message = {std::string{"within-test coefficient of variation {value}, rated {rating}"} +
                         (poor ? ": check making, curing, capping and the machine before you blame "
                                 "the concrete"
                               : ""),
                     {percent_of("value", within.percent), word("rating", within.rating)}}}};
}

} // namespace

DoubtfulTests doubtful_tests(const StrengthRecord& record, const StrengthFindings& findings,
                             const StrengthTables& tables) {
    return {of_few(findings, least_specimens(record, tables)),
            of_wide_range(findings, range_rules(record, tables))};
}

bool is_short(const SpecimenSize& specimen, const CoreRules& cores) {
    return specimen.shape == SpecimenShape::cylinder &&
           !above(specimen.height_mm / specimen.width_mm, cores.factors.back().ratio);
}

std::vector<Check> check_specimens(const StrengthRecord& record, const StrengthFindings& findings,
                                   const StrengthTables& tables) {
    std::vector<Check> checks;
    if (findings.tests.empty()) {
        return checks;
    }
    if (record.code == AcceptanceCode::aci_318) {
        checks.push_back(count_check(record, findings, tables));
    } else {
        checks.push_back(size_check(record.specimen, tables.en));
    }
    checks.push_back(range_check(findings, range_rules(record, tables)));
    for (Check& check : within_test_check(findings, tables)) {
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace boardmark::core
