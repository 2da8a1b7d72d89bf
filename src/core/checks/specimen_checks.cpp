#include <boardmark/core/strength/strength_tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "strength_record_checks.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

std::vector<std::string> with_fewer_than(int least, const StrengthFindings& findings) {
    std::vector<std::string> names;
    for (const JudgedTest& judged : findings.tests) {
        if (static_cast<int>(judged.test.specimens.size()) < least) {
            names.push_back(judged.test.batch.name);
        }
    }
    return names;
}

Check count_check(const StrengthRecord& record, const StrengthFindings& findings,
                  const AciAcceptance& rules) {
    const bool large = !below(record.specimen.width_mm, rules.large_diameter_mm);
    const int least = large ? rules.large_specimens : rules.small_specimens;
    const auto few = with_fewer_than(least, findings);
    return {.id = check_ids::strength_specimens,
            .verdict = few.empty() ? Verdict::holds : Verdict::watch,
            .measure = Measure::count,
            .requirement = "specimens of a test",
            .source = rules.specimen_source,
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

/// Specimens of one test that differ too much are no test until someone finds out why.
Check range_check(const StrengthFindings& findings, const TypicalFigure& most) {
    std::vector<std::string> wide;
    for (const JudgedTest& judged : findings.tests) {
        if (above(100 * judged.test.range_mpa / judged.test.mean_mpa, most.value)) {
            wide.push_back(judged.test.batch.name);
        }
    }
    return {.id = check_ids::strength_range,
            .verdict = wide.empty() ? Verdict::holds : Verdict::watch,
            .measure = Measure::percent,
            .requirement = "range within a test",
            .source = most.source,
            .message = {wide.empty()
                            ? "within every test the specimens differ by at most {most} of "
                              "the mean"
                            : "{names}: the specimens differ by more than {most} of their "
                              "mean; look for the reason before the test counts",
                        {percent_of("most", most.value), word("names", named(wide))}}};
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

std::vector<Check> check_specimens(const StrengthRecord& record, const StrengthFindings& findings,
                                   const StrengthTables& tables) {
    std::vector<Check> checks;
    if (findings.tests.empty()) {
        return checks;
    }
    if (record.code == AcceptanceCode::aci_318) {
        checks.push_back(count_check(record, findings, tables.aci));
        checks.push_back(range_check(findings, tables.aci_range_percent));
    } else {
        checks.push_back(size_check(record.specimen, tables.en));
        checks.push_back(range_check(findings, {tables.en.range_percent, tables.en.source}));
    }
    for (Check& check : within_test_check(findings, tables)) {
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace boardmark::core
