#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/trial/next_trial.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/trial_checks.hpp"
#include "../method/reducer_dose.hpp"
#include "../mix/door/complete_again.hpp"
#include "../mix/high_range_reducer.hpp"
#include "../mix/material_figures.hpp"
#include "next_mix.hpp"
#include "next_water.hpp"
#include "trial_advice.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

/// The first high-range reducer that the batch held.
const Ingredient* reducer_found(const Proportions& found) {
    for (const Ingredient* reducer : high_range_reducers(found)) {
        if (reducer->kg_m3 > 0) {
            return reducer;
        }
    }
    return nullptr;
}

/// How the other amounts follow from the corrected ones.
void record_what_follows(const Trial& trial, const Mix& mix, NextTrial& next) {
    const Selection& selection = next.proportions.selection;
    next.adjustments.push_back(
        adjusted("binder", {selection.binder_kg_m3, Measure::concentration},
                 {selection.w_cm_governed_by == Governor::minimum_binder
                      ? "the stated minimum"
                      : "water {water} over the design's w/cm {w_cm}",
                  {concentration("water", selection.water_kg_m3),
                   quantity("w_cm", {*mix.selections.w_cm, Measure::w_cm})}}));
    double coarse_kg_m3 = 0;
    for (const Ingredient* coarse : of_role(next.proportions, Role::coarse)) {
        coarse_kg_m3 += coarse->kg_m3;
    }
    next.adjustments.push_back(
        adjusted("coarse_aggregate", {coarse_kg_m3, Measure::concentration},
                 {trial.coarse == CoarseBasis::as_trial
                      ? "saturated surface-dry, the amount that this trial contained per volume"
                      : "saturated surface-dry, as the mix file selects it",
                  {}}));
    double fine_kg_m3 = 0;
    for (const Ingredient* fine : of_role(next.proportions, Role::fine)) {
        fine_kg_m3 += fine->kg_m3;
    }
    next.adjustments.push_back(
        adjusted("fine_aggregate", {fine_kg_m3, Measure::concentration},
                 {"saturated surface-dry, in what is left of the volume at the target air {air}",
                  {percent_of("air", selection.air_percent)}}));
}

/// The doses go back to the cementitious material that the mix asks for.
void advise_on_binder(double dosed_kg_m3, const Yield& yield, NextTrial& next) {
    const double found_kg_m3 = yield.found.totals.binder_kg_m3;
    if (dosed_kg_m3 == found_kg_m3) {
        return;
    }
    next.advice.push_back(
        {std::string{"The trial contained "} + (found_kg_m3 > dosed_kg_m3 ? "more" : "less") +
             " cementitious material than the mix asks for, {found} and not {asked}: the doses of "
             "the next trial are the admixtures of this one over what the mix asks for.",
         {quantity("found", {found_kg_m3 * yield.volume_m3, Measure::mass}),
          quantity("asked", {dosed_kg_m3 * yield.volume_m3, Measure::mass})}});
}

/// The chart of wet density was read for the water of the design; nothing scales a reading.
void advise_on_density_reading(const Mix& mix, const Proportions& designed, NextTrial& next) {
    const auto& read_kg_m3 = mix.selections.fresh_density_kg_m3;
    const double water_kg_m3 = next.proportions.selection.water_kg_m3;
    if (!read_kg_m3 || same(water_kg_m3, designed.selection.water_kg_m3)) {
        return;
    }
    next.advice.push_back(
        {"The fresh density, {density}, was read from its chart at {read_at} of free water, and "
         "the next trial has {water}: read it there ('selections.fresh_density'). Until then the "
         "aggregates of the next trial, and its yield, are of a reading for another concrete.",
         {concentration("density", *read_kg_m3),
          concentration("read_at", designed.selection.water_kg_m3),
          concentration("water", water_kg_m3)}});
}

/// The dose of the reducer for the slump that the corrected water leaves open; the mix takes it on.
void adjust_dose(const Ingredient& reducer, double dosed_binder_kg_m3, const Yield& yield,
                 const Tables& tables, Mix& mix, NextTrial& next) {
    const double more_water_kg_m3 =
        *next.adjustments.front().value - yield.found.totals.water_kg_m3;
    const FoundDose found{.reducer = *reducer.material,
                          .percent = 100 * reducer.kg_m3 / dosed_binder_kg_m3,
                          .by_water_mm =
                              more_water_kg_m3 / tables.trial->adjustments.water_kg_m3_per_mm};
    const NextDose dose = next_dose(found, yield, tables);
    set_dose(mix, std::string{reducer.name}, dose.percent);
    const double density_kg_m3 = product_density(*reducer.material, tables).value;
    next.dose = {std::string{reducer.name}, ml_100kg(found.percent, density_kg_m3),
                 ml_100kg(dose.percent, density_kg_m3)};
    next.adjustments.push_back(
        adjusted("dose", {next.dose->next_ml_100kg, Measure::dose}, dose.reason));
    next.advice.push_back(dose.advice);
}

} // namespace

Outcome<NextTrial> next_trial(const CompleteTrial& complete_trial, const Yield& yield,
                              const Proportions& designed, const Tables& tables) {
    const Trial& trial = *complete_trial;
    NextTrial next{};
    const double dosed_kg_m3 = dosed_binder_kg_m3(yield, designed, tables);
    Mix mix = mix_of(trial, yield, designed, dosed_kg_m3);
    next.advice = advice_on_tests(trial, yield, designed, tables);
    advise_on_binder(dosed_kg_m3, yield, next);
    if (const Ingredient* reducer = reducer_found(yield.found)) {
        next.lever = Lever::dose;
        next.adjustments.push_back(water_under_reducer(trial, yield, designed, tables));
        adjust_dose(*reducer, dosed_kg_m3, yield, tables, mix, next);
    } else if (!high_range_reducers(designed).empty()) { // asked for, but left out
        next.lever = Lever::dose;
        next.adjustments.push_back(water_of_design(designed));
    } else {
        next.lever = Lever::water;
        next.adjustments.push_back(water_by_slump_and_air(yield, tables));
    }
    mix.selections.water_kg_m3 = *next.adjustments.front().value;
    const auto adjusted_mix = complete_again(mix, tables);
    if (!adjusted_mix) {
        return adjusted_mix.why();
    }
    auto proportions = proportion(*adjusted_mix, tables);
    if (!proportions) {
        return std::move(proportions).why();
    }
    next.proportions = *std::move(proportions);
    record_what_follows(trial, mix, next);
    advise_on_density_reading(mix, designed, next);
    auto weighed =
        batch(next.proportions, {yield.intended_volume_m3, {}}, tables.water_density_kg_m3);
    if (!weighed) {
        return std::move(weighed).why();
    }
    next.batch = *std::move(weighed);
    next.checks = assess(*adjusted_mix, next.proportions, tables);
    std::ranges::move(check_doses(next.proportions, tables), std::back_inserter(next.checks));
    return next;
}

} // namespace boardmark::core
