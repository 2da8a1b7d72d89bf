#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "air_at_placing.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "remembered_limit.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

/// Air against a class: the verdict and what led to it.
struct DemandedAir {
    const Demand& demand;
    double percent;
    Verdict verdict;
    bool may_reduce = false; ///< the code permits less for this strength
    bool holds_by_reduction = false;
    bool on_the_step = false; ///< the strength at which editions part
    bool strong = false;      ///< of a grade of which the code asks no air
    bool below_target = false;
    bool at_the_least = false; ///< so little above the least that loads fall short of it
};

DemandedAir judge_air(const Demand& demand, const CheckContext& context) {
    const AirRules& rules = context.code.air;
    // Of cubes alone no strength of cylinders is known, and no air is spared for it.
    const double strength_mpa = strength_by(Specimen::cylinder, context.requirements).value_or(0);
    DemandedAir found{.demand = demand,
                      .percent = context.proportions.selection.air_at_placing_percent,
                      .verdict = Verdict::not_checked};
    if (!demand.has_figure()) {
        return found;
    }
    const bool has_step = std::isfinite(rules.reduction_above_strength_mpa);
    found.on_the_step = has_step && (same(strength_mpa, rules.reduction_above_strength_mpa) ||
                                     same(strength_mpa, rules.reduction_above_strength_twin_mpa));
    found.may_reduce =
        has_step && !found.on_the_step && above(strength_mpa, rules.reduction_above_strength_mpa);
    found.verdict = held(demand, found.percent);
    if (found.may_reduce && found.verdict == Verdict::fails) {
        const Limit reduced{.low = demand.low - rules.reduction_percent, .high = demand.high};
        found.holds_by_reduction = within(found.percent, reduced) != Verdict::fails;
        found.verdict = found.holds_by_reduction ? Verdict::watch : found.verdict;
    }
    const auto cube_mpa = strength_by(Specimen::cube, context.requirements);
    found.strong = found.verdict == Verdict::fails && rules.none_from_cube_mpa && cube_mpa &&
                   !below(*cube_mpa, *rules.none_from_cube_mpa);
    found.verdict = found.strong ? Verdict::watch : found.verdict;
    found.below_target = designed_below(demand.target, found.verdict, context.proportions);
    found.verdict = found.below_target ? Verdict::watch : found.verdict;
    found.at_the_least = rules.states_least() && found.verdict != Verdict::fails &&
                         below(found.percent, demand.low + rules.scatter_percent);
    if (rules.above_source.confidence == Confidence::from_memory || is_left_over(context) ||
        found.at_the_least) {
        found.verdict = worse(found.verdict, Verdict::watch);
    }
    return found;
}

void tell_air(const DemandedAir& found, const CheckContext& context, Check& told) {
    const AirRules& rules = context.code.air;
    const Demand& demand = found.demand;
    const double size_mm = context.proportions.selection.nominal_max_size_mm;
    told.requirement = demand.by->name;
    told.source = *demand.source;
    if (!demand.has_figure()) {
        told.message = {"the code's air table has no {size} stone",
                        {quantity("size", {size_mm, Measure::aggregate_size})}};
        return;
    }
    // A tolerance on both sides is one of delivery; otherwise the class's figure is the least air.
    const bool both_sides = !rules.states_least();
    std::string text =
        both_sides ? "air {value}, {low} to {high}: {class} requires {target} with {size} stone, "
                     "delivered within {tolerance} points"
                   : "air {value}, at least {low} in {class} with {size} stone and at most {high}";
    if (found.may_reduce) {
        text += "; above {strength} the code permits {reduction} point less";
    } else if (found.on_the_step) {
        text += ". {editions}";
    }
    if (found.holds_by_reduction) {
        text += ", and it holds only with that";
    }
    told.message = {std::move(text),
                    {percent_of("value", found.percent), percent_of("low", demand.low),
                     percent_of("high", demand.high), word("class", demand.by->name),
                     word("editions", rules.reduction_in_other_editions),
                     percent_of("target", demand.target),
                     quantity("size", {size_mm, Measure::aggregate_size}),
                     quantity("tolerance", {rules.tolerance_percent, Measure::ratio})}};
    if (found.may_reduce) { // a code without such a strength has none that could be told
        told.message.arguments.push_back(
            quantity("strength", {rules.reduction_above_strength_mpa, Measure::strength}));
        told.message.arguments.push_back(
            quantity("reduction", {rules.reduction_percent, Measure::ratio}));
    }
    if (found.strong) {
        told.message.text += ". Cubes of {cubes} and more need none by the code: it asks air of "
                             "weaker concrete";
        told.message.arguments.push_back(
            quantity("cubes", {*rules.none_from_cube_mpa, Measure::strength}));
    }
    if (found.at_the_least) {
        told.message.text += "; loads scatter by {scatter} points: aim as much above the least";
        told.message.arguments.push_back(
            quantity("scatter", {rules.scatter_percent, Measure::ratio}));
    }
    append_loss(context.proportions.selection, told.message);
    append_design_below(found.below_target, told.message);
    append_left_over(context, told.message);
    append_memory(demand.from_memory() ? *demand.source : rules.above_source, told.message);
}

/// A class of a category that asks no air of any of its classes, though the category is of frost: a
/// file of one's own may lack the table.
void tell_no_table(const CheckContext& context, Findings& findings) {
    const ExposureClass* freezes = context.stated.first([&](const ExposureClass& one) {
        const ExposureCategory& category = context.code.categories[one.category];
        return category.step == "exposure_freezing" && !category.asks_air && !one.never_freezes;
    });
    if (!freezes) {
        return;
    }
    findings.add({.id = check_ids::air_exposure, .verdict = Verdict::not_checked},
                 [&](Check& told) {
                     told.requirement = freezes->name;
                     told.message = {"no air is known here that {code} asks against freezing: add "
                                     "its tables 'air' and 'air-rules' to the file of the code",
                                     {word("code", context.code.name)}};
                 });
}

} // namespace

void check_demanded_air(const CheckContext& context, Findings& findings) {
    const Demand* demand = context.demands.strictest(Demanded::air);
    if (!demand) {
        tell_no_table(context, findings);
        return;
    }
    const DemandedAir found = judge_air(*demand, context);
    const bool known = demand->has_figure();
    findings.add({.id = check_ids::air_exposure,
                  .verdict = found.verdict,
                  .value = known ? OptionalNumber{found.percent} : std::nullopt,
                  .limit = known ? demand->limit() : Limit{},
                  .measure = Measure::percent},
                 [&](Check& told) { tell_air(found, context, told); });
}

} // namespace boardmark::core
