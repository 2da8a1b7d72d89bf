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
                         const Proportions& designed, const Tables& tables) {
    const double found = yield.found.totals.water_kg_m3;
    const double most = designed.totals.water_kg_m3;
    if (!before) {
        const bool too_much = above(found, most);
        return adjusted("water", {too_much ? most : found, Measure::concentration},
                        {too_much ? "the mix file's water: the trial held more, {found}; with a "
                                    "high-range reducer the dose is the lever"
                                  : "the water that the trial held: with a high-range reducer the "
                                    "water stays, its dose is the lever",
                         {concentration("found", found)}});
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
std::optional<Phrase> advice_on_air(const Yield& yield, const Tables& tables) {
    const double difference = yield.air_percent - yield.target.air_percent;
    const bool agent = std::ranges::any_of(yield.found.ingredients, [](const Ingredient& part) {
        return part.material && part.material->kind == Kind::air_entraining_admixture;
    });
    const double worth_a_change = tables.code.air.tolerance_percent / 2;
    if (!agent || !above(std::abs(difference), worth_a_change)) {
        return std::nullopt;
    }
    return Phrase{"Air {air} against {target}: " + std::string{difference > 0 ? "lower" : "raise"} +
                      " the air-entraining admixture a little and measure again; its dose in the "
                      "next trial is only that of this one.",
                  {quantity("air", {yield.air_percent, Measure::percent}),
                   quantity("target", {yield.target.air_percent, Measure::percent})}};
}

/// How the other amounts follow from the corrected ones.
void record_what_follows(const Trial& trial, const Mix& mix, NextTrial& next) {
    const Selection& selection = next.proportions.selection;
    next.adjustments.push_back(
        adjusted("binder", {selection.binder_kg_m3, Measure::concentration},
                 {selection.w_cm_governed_by == Governor::minimum_binder
                      ? "the stated minimum"
                      : "water {water} over the mix file's w/cm {w_cm}",
                  {concentration("water", selection.water_kg_m3),
                   quantity("w_cm", {*mix.selections.w_cm, Measure::w_cm})}}));
    double coarse_kg_m3 = 0;
    for (const Ingredient* coarse : of_role(next.proportions, Role::coarse)) {
        coarse_kg_m3 += coarse->kg_m3;
    }
    next.adjustments.push_back(adjusted("coarse_aggregate", {coarse_kg_m3, Measure::concentration},
                                        {trial.coarse == CoarseBasis::as_trial
                                             ? "saturated surface-dry, the amount that this "
                                               "trial held per volume"
                                             : "saturated surface-dry, as the mix file selects it",
                                         {}}));
    double fine_kg_m3 = 0;
    for (const Ingredient* fine : of_role(next.proportions, Role::fine)) {
        fine_kg_m3 += fine->kg_m3;
    }
    next.adjustments.push_back(
        adjusted("fine_aggregate", {fine_kg_m3, Measure::concentration},
                 {"saturated surface-dry, in what is left of the volume at the target air {air}",
                  {quantity("air", {selection.air_percent, Measure::percent})}}));
}

/// A dose in percent of mass as volume of the product.
double ml_100kg(double percent, double density_kg_m3) {
    constexpr double ml_in_m3 = 1e6;
    return percent / density_kg_m3 * ml_in_m3; // percent of 100 kg is kg
}

/// The dose of the reducer for the slump that the corrected water leaves open; the mix takes it on.
void adjust_dose(const Ingredient& reducer, const Yield& yield, const Tables& tables, Mix& mix,
                 NextTrial& next) {
    const double more_water_kg_m3 =
        *next.adjustments.front().value - yield.found.totals.water_kg_m3;
    const FoundDose found{.reducer = *reducer.material,
                          .percent = 100 * reducer.kg_m3 / yield.found.totals.binder_kg_m3,
                          .by_water_mm =
                              more_water_kg_m3 / tables.trial.adjustments.water_kg_m3_per_mm};
    const NextDose dose = next_dose(found, yield, tables);
    set_dose(mix, reducer.name, dose.percent);
    const double density_kg_m3 = product_density(*reducer.material, tables).value;
    next.dose = {reducer.name, ml_100kg(found.percent, density_kg_m3),
                 ml_100kg(dose.percent, density_kg_m3)};
    next.adjustments.push_back(
        adjusted("dose", {next.dose->next_ml_100kg, Measure::dose}, dose.reason));
    next.advice.push_back(dose.advice);
}

} // namespace

NextTrial next_trial(const Trial& trial, const Yield& yield, const Proportions& designed,
                     const Tables& tables) {
    NextTrial next{};
    Mix mix = mix_of(trial, yield, designed);
    if (const Ingredient* reducer = high_range_reducer(yield.found)) {
        next.lever = Lever::dose;
        next.adjustments.push_back(
            water_under_reducer(gap_before_reducer(trial, designed), yield, designed, tables));
        adjust_dose(*reducer, yield, tables, mix, next);
    } else {
        next.lever = Lever::water;
        next.adjustments.push_back(water_by_slump_and_air(yield, tables));
    }
    if (auto advice = advice_on_air(yield, tables)) {
        next.advice.push_back(std::move(*advice));
    }
    mix.selections.water_kg_m3 = *next.adjustments.front().value;
    next.proportions = proportion(mix, tables);
    record_what_follows(trial, mix, next);
    next.batch =
        batch(next.proportions, {yield.intended_volume_m3, {}}, tables.water_density_kg_m3);
    next.checks = assess(mix.requirements, next.proportions, tables);
    return next;
}

} // namespace boardmark::core
