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

void check_fine(const Ingredient& sand, const GradingRules& rules, Findings& findings) {
    const Grading& grading = sand.material->aggregate.sieves;
    const SieveLimits* limits = first_outside(grading, rules);
    Finding found{.id = check_ids::sand_grading,
                  .verdict = limits || has_a_peak(grading, rules) ? Verdict::watch : Verdict::holds,
                  .measure = Measure::percent};
    if (limits) {
        found.value = passing_anywhere_percent(grading, limits->opening_mm);
        found.limit = Limit{.low = limits->low_percent, .high = limits->high_percent};
    }
    findings.add(found, [&](Check& told) {
        const Argument name = word("name", std::string{sand.name});
        told.requirement = "grading";
        told.source = rules.fine_source;
        if (found.verdict == Verdict::holds) {
            told.message = {"{name} lies within the limits of every sieve", {name}};
        } else if (limits) {
            told.message = {
                "{name}: {value} passes the {sieve} sieve, {low} to {high}; agree with the "
                "supplier, and prove the face on the mock-up",
                {name, quantity("value", {*found.value, Measure::percent}),
                 word("sieve", limits->name),
                 quantity("low", {limits->low_percent, Measure::percent}),
                 quantity("high", {limits->high_percent, Measure::percent})}};
        } else {
            told.source = rules.most_between_percent.source;
            told.message = {
                "{name}: more than {most} lies between two sieves that follow each "
                "other; such sand bleeds or is harsh",
                {name, quantity("most", {rules.most_between_percent.value, Measure::percent})}};
        }
    });
}

} // namespace

void check_grading(const CheckContext& context, Findings& findings) {
    for (const Ingredient* sand : of_role(context.proportions, Role::fine)) {
        if (!sand->material->aggregate.sieves.empty()) {
            check_fine(*sand, context.tables.grading, findings);
        }
    }
}

} // namespace boardmark::core
