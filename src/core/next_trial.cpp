#include <boardmark/core/next_trial.hpp>
#include <boardmark/core/proportion.hpp>

#include "material_figures.hpp"
#include "next_mix.hpp"
#include "phrases.hpp"
#include "reducer_dose.hpp"
#include "tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

const Ingredient* high_range_reducer(const Proportions& found) {
    const auto reducer = std::ranges::find_if(found.ingredients, [](const Ingredient& ingredient) {
        return ingredient.material && ingredient.kg_m3 > 0 &&
               ingredient.material->kind == Kind::high_range_water_reducer;
    });
    return reducer == found.ingredients.end() ? nullptr : &*reducer;
}

Step adjusted(std::string name, Quantity value, Phrase reason, const Source& source = {}) {
    return {.quantity = std::move(name),
            .value = value.value,
            .measure = value.measure,
            .provenance = Provenance::computed,
            .reason = std::move(reason),
            .source = source,
            .marks = with_confidence({}, source)};
}

/// A slump that was measured and the one it was to be.
struct SlumpGap {
    double measured_mm;
    double target_mm;

    double mm() const { return target_mm - measured_mm; }
};

double water_for(const SlumpGap& gap, const Tables& tables) {
    return gap.mm() * tables.trial.adjustments.water_kg_m3_per_mm;
}

Argument concentration(std::string name, double kg_m3) {
    return quantity(std::move(name), {kg_m3, Measure::concentration});
}

/// Water corrected for slump and air; a stiff trial or one with too much air asks for more.
Step water_by_slump_and_air(const Yield& yield, const Tables& tables) {
    const TrialAdjustments& rules = tables.trial.adjustments;
    const SlumpGap gap{yield.slump.mm, yield.target.slump_mm};
    const double for_slump = water_for(gap, tables);
    const double for_air =
        (yield.air_percent - yield.target.air_percent) * rules.water_kg_m3_per_air_point;
    const double found = yield.found.totals.water_kg_m3;
    return adjusted(
        "water", {found + for_slump + for_air, Measure::concentration},
        {"water found {found}, {for_slump} for slump {measured} to {target}, {for_air} "
         "for air {air} to {target_air}",
         {concentration("found", found), concentration("for_slump", for_slump),
          quantity("measured", {gap.measured_mm, Measure::slump}),
          quantity("target", {gap.target_mm, Measure::slump}), concentration("for_air", for_air),
          quantity("air", {yield.air_percent, Measure::percent}),
          quantity("target_air", {yield.target.air_percent, Measure::percent})}},
        rules.source);
}

/// The slump before the reducer, where it was both measured and asked for.
std::optional<SlumpGap> gap_before_reducer(const Trial& trial, const Proportions& designed) {
    const auto& measured_mm = trial.tests.slump_before_reducer_mm;
    const auto& target_mm = designed.selection.slump_before_reducer_mm;
    return measured_mm && target_mm ? std::optional{SlumpGap{*measured_mm, *target_mm}}
                                    : std::nullopt;
}

Step water_under_reducer(const std::optional<SlumpGap>& before, const Yield& yield,
                         const Tables& tables) {
    const double found = yield.found.totals.water_kg_m3;
    if (!before) {
        return adjusted("water", {found, Measure::concentration},
                        {"the water that the trial held: with a high-range reducer the water "
                         "stays, its dose is the lever",
                         {}});
    }
    const double for_slump = water_for(*before, tables);
    return adjusted("water", {found + for_slump, Measure::concentration},
                    {"water found {found}, {for_slump} for the slump before the reducer, "
                     "{measured} to {target}; the flow is the dose's matter",
                     {concentration("found", found), concentration("for_slump", for_slump),
                      quantity("measured", {before->measured_mm, Measure::slump}),
                      quantity("target", {before->target_mm, Measure::slump})}},
                    tables.trial.adjustments.source);
}

/// Words for an amount of air-entraining admixture that no rule can give.
std::optional<Phrase> advice_on_air(const Yield& yield) {
    const double difference = yield.air_percent - yield.target.air_percent;
    const bool agent = std::ranges::any_of(yield.found.ingredients, [](const Ingredient& part) {
        return part.material && part.material->kind == Kind::air_entraining_admixture;
    });
    constexpr double reading_percent = 0.1;
    if (!agent || std::abs(difference) < reading_percent) {
        return std::nullopt;
    }
    return Phrase{"Air {air} against {target}: " + std::string{difference > 0 ? "lower" : "raise"} +
                      " the air-entraining admixture a little and measure again; its dose in the "
                      "next trial is only that of this one.",
                  {quantity("air", {yield.air_percent, Measure::percent}),
                   quantity("target", {yield.target.air_percent, Measure::percent})}};
}

/// Steps of the method that only repeat what the adjustment fixed are left out.
void append_method_steps(std::vector<Step>& steps, const Worksheet& worksheet) {
    for (const Step& step : worksheet.steps) {
        if (step.provenance != Provenance::given) {
            steps.push_back(step);
        }
    }
}

} // namespace

NextTrial next_trial(const Trial& trial, const Yield& yield, const Proportions& designed,
                     const Tables& tables) {
    NextTrial next{};
    std::vector<Step> steps;
    Mix mix = mix_of(trial, yield, designed);
    const Ingredient* reducer = high_range_reducer(yield.found);
    if (reducer) {
        next.lever = Lever::dose;
        const auto before = gap_before_reducer(trial, designed);
        steps.push_back(water_under_reducer(before, yield, tables));
        const FoundDose found{*reducer->material,
                              100 * reducer->kg_m3 / yield.found.totals.binder_kg_m3,
                              yield.target.slump_mm - yield.slump.mm - (before ? before->mm() : 0)};
        const NextDose dose = next_dose(found, yield, tables);
        set_dose(mix, reducer->name, dose.percent);
        steps.push_back(adjusted("dose", {dose.percent, Measure::percent}, dose.reason));
        next.dose = {reducer->name, found.percent, dose.percent};
        next.advice.push_back(dose.advice);
    } else {
        next.lever = Lever::water;
        steps.push_back(water_by_slump_and_air(yield, tables));
    }
    if (auto advice = advice_on_air(yield)) {
        next.advice.push_back(std::move(*advice));
    }
    mix.selections.water_kg_m3 = *steps.front().value;
    next.proportions = proportion(mix, tables);
    append_method_steps(steps, next.proportions.worksheet);
    next.proportions.worksheet.steps = std::move(steps);
    next.batch = batch(next.proportions, {yield.intended_volume_m3, std::nullopt},
                       tables.water_density_kg_m3);
    next.checks = assess(mix.requirements, next.proportions, tables);
    return next;
}

} // namespace boardmark::core
