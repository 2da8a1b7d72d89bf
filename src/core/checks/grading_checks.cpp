// The grading of each aggregate whose sieves are stated, against ASTM C33: fine ones, and coarse
// ones of a stated size number. Never fails: the standard itself lets others be agreed on.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/grading.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "exposure_limits.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

const SieveLimits* first_outside(const Grading& grading, const std::vector<SieveLimits>& sieves) {
    for (const SieveLimits& limits : sieves) {
        const double percent = passing_sieve_percent(grading, limits.opening_mm);
        if (below(percent, limits.low_percent) || above(percent, limits.high_percent)) {
            return &limits;
        }
    }
    return nullptr;
}

/// Sieves of the limits that are not stated and whose stated neighbours leave open whether what
/// passes lies within.
std::vector<std::string> open_sieves(const Grading& grading,
                                     const std::vector<SieveLimits>& sieves) {
    std::vector<std::string> open;
    for (const SieveLimits& limits : sieves) {
        const PercentRange may_pass = may_pass_percent(grading, limits.opening_mm);
        if (below(may_pass.least, limits.low_percent) ||
            above(may_pass.most, limits.high_percent)) {
            open.push_back(limits.name);
        }
    }
    return open;
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
    const SieveLimits* limits = first_outside(grading, rules.fine);
    Finding found{.id = check_ids::sand_grading,
                  .verdict = limits || has_a_peak(grading, rules) ? Verdict::watch : Verdict::holds,
                  .measure = Measure::percent};
    if (limits) {
        found.value = passing_sieve_percent(grading, limits->opening_mm);
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
                {name, percent_of("value", *found.value), word("sieve", limits->name),
                 percent_of("low", limits->low_percent), percent_of("high", limits->high_percent)}};
        } else {
            told.source = rules.most_between_percent.source;
            told.message = {"{name}: more than {most} lies between two sieves that follow each "
                            "other; such sand bleeds or is harsh",
                            {name, percent_of("most", rules.most_between_percent.value)}};
        }
    });
}

/// What is told of a stone of a size number.
void tell_stone(const Ingredient& stone, const SizeNumber* size, const SieveLimits* limits,
                const std::vector<std::string>& open, const Finding& found, Check& told) {
    const AggregateFigures& figures = stone.material->aggregate;
    told.requirement = "grading";
    told.message.arguments = {word("name", std::string{stone.name}),
                              word("number", figures.size_number)};
    if (!size) {
        told.message.text = "{name}: no limits of a size number {number} are known here";
        return;
    }
    told.source = size->source;
    if (figures.sieves.empty()) {
        told.message.text = "{name}: its 'sieves' are needed to check it against size number "
                            "{number}; the aggregate test report has them";
    } else if (limits) {
        told.message.text = "{name}: {value} passes the {sieve} sieve, {low} to {high} in size "
                            "number {number}; agree with the supplier on the grading that comes";
        told.message.arguments.push_back(percent_of("value", *found.value));
        told.message.arguments.push_back(word("sieve", limits->name));
        told.message.arguments.push_back(percent_of("low", limits->low_percent));
        told.message.arguments.push_back(percent_of("high", limits->high_percent));
    } else if (!open.empty()) {
        told.message.text = "{name} does not state what passes {sieves}, which size number "
                            "{number} bounds: the aggregate test report has it";
        told.message.arguments.push_back(word("sieves", joined(open)));
    } else {
        told.message.text = found.verdict == Verdict::holds
                                ? "{name} lies within the limits of size number {number}"
                                : "{name} lies within the limits of size number {number} as they "
                                  "are remembered: look them up";
    }
}

void check_coarse(const Ingredient& stone, const GradingRules& rules, Findings& findings) {
    const AggregateFigures& figures = stone.material->aggregate;
    const auto size = std::ranges::find(rules.coarse, figures.size_number, &SizeNumber::number);
    const bool known = size != rules.coarse.end();
    Finding found{.id = check_ids::stone_grading,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::percent};
    const SieveLimits* limits = nullptr;
    std::vector<std::string> open;
    if (known && !figures.sieves.empty()) {
        limits = first_outside(figures.sieves, size->sieves);
        const bool sure = size->source.confidence == Confidence::read;
        open = limits ? open : open_sieves(figures.sieves, size->sieves);
        found.verdict = !open.empty()     ? Verdict::not_checked
                        : !limits && sure ? Verdict::holds
                                          : Verdict::watch;
    }
    if (limits) {
        found.value = passing_sieve_percent(figures.sieves, limits->opening_mm);
        found.limit = Limit{.low = limits->low_percent, .high = limits->high_percent};
    }
    findings.add(found, [&](Check& told) {
        tell_stone(stone, known ? &*size : nullptr, limits, open, found, told);
    });
}

} // namespace

void check_grading(const CheckContext& context, Findings& findings) {
    for (const Ingredient* stone : of_role(context.proportions, Role::coarse)) {
        if (!stone->material->aggregate.size_number.empty()) {
            check_coarse(*stone, context.tables.grading, findings);
        }
    }
    for (const Ingredient* sand : of_role(context.proportions, Role::fine)) {
        if (!sand->material->aggregate.sieves.empty()) {
            check_fine(*sand, context.tables.grading, findings);
        }
    }
}

} // namespace boardmark::core
