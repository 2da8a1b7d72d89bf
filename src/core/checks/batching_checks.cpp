#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/trial/batching_tolerance.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../batch/charged.hpp"
#include "../method/reducer_dose.hpp"
#include "../mix/material_figures.hpp"
#include "remembered_limit.hpp"
#include "trial_checks.hpp"

namespace boardmark::core {
namespace {

/// What was weighed of an item, and what the last digit written down leaves open.
struct WeighedItem {
    double kg;
    double half_a_step_kg;
};

/// Water may be held back or added on purpose: it is only watched. So is a small batch's excess of
/// cementitious material.
Verdict batching_verdict(const BatchItem& asked, const WeighedItem& weighed, const Limit& limit,
                         const Tables& tables) {
    const bool over = above(weighed.kg - weighed.half_a_step_kg, *limit.high);
    const bool under = below(weighed.kg + weighed.half_a_step_kg, *limit.low);
    if (!over && !under) {
        return Verdict::holds;
    }
    const double small_batch_kg =
        asked.kg * (1 + tables.trial->batching.small_batch_over_percent.value / 100);
    const bool small_batch_excess =
        asked.role == Role::binder && over && !above(weighed.kg, small_batch_kg);
    return asked.role == Role::water || small_batch_excess ? Verdict::watch : Verdict::fails;
}

std::string remark_on(const BatchItem& asked, Verdict verdict) {
    return verdict == Verdict::holds   ? ""
           : verdict == Verdict::fails ? ": this batch is not the mix of the file"
           : asked.role == Role::water
               ? ": held back or added at the mixer? what counts is the w/cm found"
               : ": a small batch may be over by {small_batch}";
}

/// What was weighed against what the mix asks to weigh.
Check batching_check(const BatchItem& asked, const WeighedItem& weighed, const Tables& tables) {
    const TypicalFigure& tolerance = batching_tolerance(asked.role, tables.trial->batching);
    const Limit limit{asked.kg * (1 - tolerance.value / 100),
                      asked.kg * (1 + tolerance.value / 100)};
    const Verdict verdict = batching_verdict(asked, weighed, limit, tables);
    const double small_batch = tables.trial->batching.small_batch_over_percent.value;
    Check check{
        .id = "batching." + asked.name,
        .verdict = verdict,
        .value = weighed.kg,
        .limit = limit,
        .measure = Measure::mass,
        .requirement = "batch of the mix file",
        .source = tolerance.source,
        .message = {"{name} {value}, target {asked} within {tolerance}" + remark_on(asked, verdict),
                    {word("name", asked.name), quantity("value", {weighed.kg, Measure::mass}),
                     quantity("asked", {asked.kg, Measure::mass}),
                     percent_of("tolerance", tolerance.value),
                     percent_of("small_batch", small_batch)}}};
    watch_what_is_from_memory(check);
    return check;
}

/// A dose against the highest that the data sheet permits, else against the last that it knows.
std::optional<Check> dose_check(const Ingredient& admixture, double binder_kg_m3,
                                const Tables& tables) {
    const double density_kg_m3 = product_density(*admixture.material, tables).value;
    const auto& maximum = admixture.material->admixture.maximum_dose;
    const auto most = maximum ? std::optional{dose_percent(*maximum, density_kg_m3)}
                              : last_known_percent(*admixture.material, density_kg_m3);
    const double found = 100 * admixture.kg_m3 / binder_kg_m3;
    // The scale's tolerance may carry a dose that was to be the highest a little past it.
    const double tolerance = 1 + tables.trial->batching.admixture_percent.value / 100;
    const bool is_over = most && above(found, *most * tolerance);
    if (!most || admixture.by_trial || (!maximum && !is_over)) {
        return std::nullopt;
    }
    const auto dose = [&](std::string what, double percent) {
        return quantity(std::move(what), {ml_100kg(percent, density_kg_m3), Measure::dose});
    };
    return Check{
        .id = check_ids::dose_maximum,
        .verdict = !is_over  ? Verdict::holds
                   : maximum ? Verdict::fails
                             : Verdict::watch,
        .value = ml_100kg(found, density_kg_m3),
        .limit = Limit{std::nullopt, ml_100kg(*most, density_kg_m3)},
        .measure = Measure::dose,
        .requirement = "materials." + std::string{admixture.name} + ".maximum_dose",
        .source = {"product data of the mix file", Confidence::read},
        .message = {maximum ? "{name} dosed at {value}, at most {limit}"
                            : "{name} dosed at {value}, above {limit}, the last dose of "
                              "its data: look up its maximum, add 'maximum_dose'",
                    {word("name", admixture.name), dose("value", found), dose("limit", *most)}}};
}

double relative_step(const Charged& amount) {
    const Reading& reading = amount.kg ? *amount.kg : *amount.m3;
    return reading.value > 0 ? reading.step / reading.value : 0;
}

WeighedItem weighed_item(const std::string& name, const Trial& trial, const Yield& yield) {
    const double kg = yield.weighed_kg.at(name);
    const BatchedMaterial* batched = find_batched(trial, name);
    return {kg, kg * relative_step(batched ? batched->amount : trial.water) / 2};
}

/// The mix as designed, its aggregates at the moistures of the trial.
Proportions at_moistures(Proportions designed, const Trial& trial) {
    for (Ingredient& ingredient : designed.ingredients) {
        const BatchedMaterial* batched = find_batched(trial, ingredient.name);
        if (batched && ingredient.material) {
            ingredient.edit_material().aggregate.moisture_percent =
                batched->material.aggregate.moisture_percent;
        }
    }
    return designed;
}

} // namespace

std::vector<Check> check_doses(const Proportions& proportions, const Tables& tables) {
    std::vector<Check> checks;
    for (const Ingredient* admixture : of_role(proportions, Role::admixture)) {
        if (auto check = dose_check(*admixture, proportions.totals.binder_kg_m3, tables)) {
            checks.push_back(std::move(*check));
        }
    }
    return checks;
}

std::vector<Check> check_batching(const Trial& trial, const Yield& yield,
                                  const Proportions& designed, const Tables& tables) {
    const auto asked = batch(at_moistures(designed, trial), {yield.intended_volume_m3, {}},
                             tables.water_density_kg_m3);
    if (!asked) { // too wet: what the trial was stands all the same
        return {{.id = check_ids::batching,
                 .verdict = Verdict::not_checked,
                 .requirement = "batch of the mix file",
                 .message = asked.why().what}};
    }
    std::vector<Check> checks = check_doses(yield.found, tables);
    for (const BatchItem& item : asked->items) {
        if (item.by_trial) {
            continue;
        }
        checks.push_back(batching_check(item, weighed_item(item.name, trial, yield), tables));
    }
    return checks;
}

} // namespace boardmark::core
