// The grading of fine aggregates whose sieves are stated, against ASTM C33. Never fails: the
// standard itself lets others be agreed on.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/grading.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"

namespace boardmark::core {
namespace {

const SieveLimits* first_outside(const Grading& grading, const GradingRules& rules) {
    for (const SieveLimits& limits : rules.fine) {
        const double percent = passing_anywhere_percent(grading, limits.opening_mm);
        if (below(percent, limits.low_percent) || above(percent, limits.high_percent)) {
            return &limits;
        }
    }
    return nullptr;
}

/// Whether more stays between two sieves that follow each other than makes a steady grading.
bool has_a_peak(const Grading& grading, const GradingRules& rules) {
    for (std::size_t i = 1; i < rules.fine.size(); ++i) {
        const double between = passing_anywhere_percent(grading, rules.fine[i - 1].opening_mm) -
                               passing_anywhere_percent(grading, rules.fine[i].opening_mm);
        if (above(between, rules.most_between_percent.value)) {
            return true;
        }
    }
    return false;
}

Check outside(Check check, const FineGrading& fine, const SieveLimits& limits) {
    const double percent = passing_anywhere_percent(fine.grading, limits.opening_mm);
    check.verdict = Verdict::watch;
    check.value = percent;
    check.limit = Limit{.low = limits.low_percent, .high = limits.high_percent};
    check.message = {"{name}: {value} passes the {sieve} sieve, {low} to {high}; agree with the "
                     "supplier, and prove the face on the mock-up",
                     {word("name", fine.name), quantity("value", {percent, Measure::percent}),
                      word("sieve", limits.name),
                      quantity("low", {limits.low_percent, Measure::percent}),
                      quantity("high", {limits.high_percent, Measure::percent})}};
    return check;
}

Check check_fine(const FineGrading& fine, const GradingRules& rules) {
    Check check{.id = "sand.grading",
                .verdict = Verdict::holds,
                .measure = Measure::percent,
                .requirement = "grading",
                .source = rules.fine_source};
    if (const SieveLimits* limits = first_outside(fine.grading, rules)) {
        return outside(std::move(check), fine, *limits);
    }
    if (has_a_peak(fine.grading, rules)) {
        check.verdict = Verdict::watch;
        check.source = rules.most_between_percent.source;
        check.message = {"{name}: more than {most} lies between two sieves that follow each other; "
                         "such sand bleeds or is harsh",
                         {word("name", fine.name),
                          quantity("most", {rules.most_between_percent.value, Measure::percent})}};
        return check;
    }
    check.message = {"{name} lies within the limits of every sieve", {word("name", fine.name)}};
    return check;
}

} // namespace

Checks check_grading(const CheckContext& context) {
    Checks checks;
    for (const FineGrading& fine : fine_gradings(context.proportions)) {
        checks.push_back(check_fine(fine, context.tables.grading));
    }
    return checks;
}

} // namespace boardmark::core
