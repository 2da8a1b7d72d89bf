// All aggregates together. The band that a file states is held; what the trade publishes about the
// grading of all of it is advice: told where it is not followed, and never a failure.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/aggregate_together.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

void target_check(const AggregateBlend& blend, Findings& findings) {
    const bool inside = same(blend.most_off_percent, 0);
    findings.add({.id = check_ids::aggregate_target,
                  .verdict = inside ? Verdict::holds : Verdict::watch,
                  .value = std::abs(blend.most_off_percent),
                  .measure = Measure::percent},
                 [&](Check& told) {
                     told.requirement = "mixture.aggregate";
                     told.message = {
                         inside ? "all aggregates together lie within the stated band"
                                : "no blend of these aggregates lies within the stated band: at "
                                  "{sieve} the nearest one is {off} of the aggregate {side} it; "
                                  "another size between would help",
                         {quantity("sieve", {blend.most_off_mm, Measure::aggregate_size}),
                          percent_of("off", std::abs(blend.most_off_percent)),
                          word("side", blend.most_off_percent < 0 ? "below" : "above")}};
                 });
}

/// One part that is held back and lies outside what is advised.
struct OutsideAdvice {
    std::string where; ///< "the No. 8 sieve"
    double percent;
    std::optional<double> low;
    std::optional<double> high;
};

constexpr double no_8_mm = 2.36;
constexpr double no_30_mm = 0.6;
constexpr double no_200_mm = 0.075;

std::vector<OutsideAdvice> outside_advice(const AggregateTogether& together,
                                          const RetainedRules& rules) {
    std::vector<OutsideAdvice> outside;
    for (const SieveOfAll* sieve : sieves_outside(together)) {
        outside.push_back({"the " + sieve->limits.name + " sieve", sieve->retained_percent,
                           sieve->limits.low_percent, sieve->limits.high_percent});
    }
    const auto coarse_sand = retained_between_percent(together, no_8_mm, no_30_mm);
    if (coarse_sand && below(*coarse_sand, rules.least_coarse_sand_percent.value)) {
        outside.push_back({"No. 8, 16 and 30 together", *coarse_sand,
                           rules.least_coarse_sand_percent.value, std::nullopt});
    }
    const auto fine_sand = retained_between_percent(together, no_30_mm, no_200_mm);
    if (fine_sand && (below(*fine_sand, rules.least_fine_sand_percent.value) ||
                      above(*fine_sand, rules.most_fine_sand_percent.value))) {
        outside.push_back({"No. 30 to 200 together", *fine_sand,
                           rules.least_fine_sand_percent.value,
                           rules.most_fine_sand_percent.value});
    }
    return outside;
}

/// Whether what the stated sieves leave open decides on several sieves together.
bool sums_in_doubt(const AggregateTogether& together, const RetainedRules& rules) {
    const auto coarse_sand = may_retain_between(together, no_8_mm, no_30_mm);
    const auto fine_sand = may_retain_between(together, no_30_mm, no_200_mm);
    return (coarse_sand && below(coarse_sand->least, rules.least_coarse_sand_percent.value)) ||
           (fine_sand && (below(fine_sand->least, rules.least_fine_sand_percent.value) ||
                          above(fine_sand->most, rules.most_fine_sand_percent.value)));
}

/// Nothing outside by what is read between stated sieves is no promise: it goes along a line, and a
/// gap between two of them may hide a sieve that holds back too much or nothing.
void tell_doubt(const AggregateTogether& together, const RetainedRules& rules, Findings& findings) {
    auto doubtful = sieves_in_doubt(together);
    if (doubtful.empty() && sums_in_doubt(together, rules)) {
        for (const SieveOfAll& sieve : together.sieves) {
            if (below(sieve.may_pass.least, sieve.may_pass.most)) {
                doubtful.push_back(&sieve);
            }
        }
    }
    if (doubtful.empty()) {
        return;
    }
    findings.add({.id = check_ids::aggregate_retained, .verdict = Verdict::not_checked},
                 [&](Check& told) {
                     std::vector<std::string> names;
                     for (const SieveOfAll* sieve : doubtful) {
                         names.push_back(sieve->limits.name);
                     }
                     told.requirement = "advice";
                     told.source = rules.source;
                     told.message = {
                         "not every aggregate states what passes {sieves}; by the sieves beside "
                         "them more or less than advised could be held back: a sieve analysis has "
                         "it",
                         {word("sieves", joined(names))}};
                 });
}

void retained_check(const AggregateTogether& together, const RetainedRules& rules,
                    Findings& findings) {
    const auto outside = outside_advice(together, rules);
    if (outside.empty()) {
        tell_doubt(together, rules, findings);
        return;
    }
    const OutsideAdvice& first = outside.front();
    findings.add(
        {.id = check_ids::aggregate_retained,
         .verdict = Verdict::watch,
         .value = first.percent,
         .limit = Limit{.low = first.low, .high = first.high},
         .measure = Measure::percent},
        [&](Check& told) {
            told.requirement = "advice";
            told.source = rules.source;
            for (std::size_t i = 0; i < outside.size(); ++i) {
                const OutsideAdvice& one = outside[i];
                const auto named = [&](const char* what) { return what + std::to_string(i + 1); };
                std::string& text = told.message.text;
                text += i == 0 ? "held back: " : "; ";
                text.append("{").append(named("percent")).append("} on {");
                text.append(named("where")).append("}, advised ");
                text += one.high ? "" : "at least ";
                text.append("{").append(named("low")).append("}");
                told.message.arguments.push_back(percent_of(named("percent"), one.percent));
                told.message.arguments.push_back(word(named("where"), one.where));
                told.message.arguments.push_back(
                    quantity(named("low"), {one.low.value_or(0), Measure::percent}));
                if (one.high) {
                    text.append(" to {").append(named("high")).append("}");
                    told.message.arguments.push_back(
                        quantity(named("high"), {*one.high, Measure::percent}));
                }
            }
            told.message.text += "; advice as remembered, proven by the trial batch";
        });
}

const char* words_of(WorkabilityField field) {
    switch (field) {
    case WorkabilityField::gap_graded:
        return "gap-graded: it tends to segregate";
    case WorkabilityField::small_stone:
        return "of small stone";
    case WorkabilityField::sandy:
        return "sandy: it asks for water and shrinks";
    case WorkabilityField::rocky:
        return "rocky: it is hard to place and to finish";
    case WorkabilityField::well_graded:
        break;
    }
    return "well graded";
}

/// Well graded by what is read between stated sieves, and perhaps not.
void tell_chart_doubt(const AggregateTogether& together, const WorkabilityRules& rules,
                      Findings& findings) {
    const bool is_sure =
        std::ranges::all_of(together.chart_corners, [&](const WorkabilityPoint& corner) {
            return field_of(corner, rules) == WorkabilityField::well_graded;
        });
    if (is_sure) {
        return;
    }
    findings.add(
        {.id = check_ids::aggregate_workability, .verdict = Verdict::not_checked},
        [&](Check& told) {
            told.requirement = "advice";
            told.source = rules.line_start.source;
            told.message = {
                "not every aggregate states what passes {coarse} and {fine}; by the "
                "sieves beside them all aggregates together may be well graded or not: "
                "a sieve analysis has it",
                {quantity("coarse", {rules.coarse_sieve_mm.value, Measure::aggregate_size}),
                 quantity("fine", {rules.fine_sieve_mm.value, Measure::aggregate_size})}};
        });
}

void workability_check(const AggregateTogether& together, const WorkabilityRules& rules,
                       Findings& findings) {
    const auto field = field_of(together, rules);
    if (!field) {
        return;
    }
    if (*field == WorkabilityField::well_graded) {
        tell_chart_doubt(together, rules, findings);
        return;
    }
    const double least =
        std::max(rules.low.value, control_line(*together.coarseness_factor, rules));
    findings.add({.id = check_ids::aggregate_workability,
                  .verdict = Verdict::watch,
                  .value = together.workability_factor,
                  .limit = Limit{.low = least, .high = rules.high.value},
                  .measure = Measure::ratio},
                 [&](Check& told) {
                     told.requirement = "advice";
                     told.source = rules.line_start.source;
                     told.message = {
                         "coarseness factor {coarseness}, workability factor {workability} "
                         "({least} to {most} there): {what}; a chart for rounded or cubical stone, "
                         "its fields as remembered",
                         {quantity("coarseness", {*together.coarseness_factor, Measure::ratio}),
                          quantity("workability", {together.workability_factor, Measure::ratio}),
                          quantity("least", {least, Measure::ratio}),
                          quantity("most", {rules.high.value, Measure::ratio}),
                          word("what", words_of(*field))}};
                 });
}

} // namespace

void check_aggregate_together(const CheckContext& context, Findings& findings) {
    const auto& blend = context.proportions.blend;
    if (blend && blend->to == BlendTo::band) {
        target_check(*blend, findings);
    }
    const auto together = aggregate_together(context.proportions, context.tables.grading,
                                             context.tables.method.fineness_sieves_mm);
    if (together) {
        retained_check(*together, context.tables.grading->retained, findings);
        workability_check(*together, context.tables.grading->workability, findings);
    }
}

} // namespace boardmark::core
