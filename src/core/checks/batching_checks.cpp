#include <boardmark/core/batch.hpp>
#include <boardmark/core/unresolved.hpp>

#include "../phrases.hpp"
#include "../tolerance.hpp"
#include "trial_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

const TypicalFigure& batching_tolerance(Role role, const Tables& tables) {
    const BatchingTolerances& batching = tables.trial.batching;
    switch (role) {
    case Role::water:
        return batching.water_percent;
    case Role::binder:
        return batching.binder_percent;
    case Role::admixture:
        return batching.admixture_percent;
    default:
        return batching.aggregate_percent;
    }
}

/// What was weighed against what the mix asks to weigh. Water may be held back or added on purpose:
/// it is only watched.
Check batching_check(const BatchItem& asked, double weighed_kg, const Tables& tables) {
    const TypicalFigure& tolerance = batching_tolerance(asked.role, tables);
    const Limit limit{asked.kg * (1 - tolerance.value / 100),
                      asked.kg * (1 + tolerance.value / 100)};
    const bool off = above(weighed_kg, *limit.high) || below(weighed_kg, *limit.low);
    const bool is_water = asked.role == Role::water;
    std::string text = "{name} {value}, asked {asked} within {tolerance}";
    if (off) {
        text += is_water ? ": held back or added at the mixer? what counts is the w/cm found"
                         : ": this batch is not the mix of the file";
    }
    return {.id = "batching." + asked.name,
            .verdict = !off       ? Verdict::holds
                       : is_water ? Verdict::watch
                                  : Verdict::fails,
            .value = weighed_kg,
            .limit = limit,
            .measure = Measure::mass,
            .requirement = "batch of the mix file",
            .source = tolerance.source,
            .message = {std::move(text),
                        {word("name", asked.name), quantity("value", {weighed_kg, Measure::mass}),
                         quantity("asked", {asked.kg, Measure::mass}),
                         quantity("tolerance", {tolerance.value, Measure::percent})}}};
}

/// The mix as designed, its aggregates at the moistures of the trial.
Proportions at_moistures(Proportions designed, const Trial& trial) {
    for (Ingredient& ingredient : designed.ingredients) {
        const auto batched = std::ranges::find(
            trial.batched, ingredient.name,
            [](const BatchedMaterial& one) -> const std::string& { return one.material.name; });
        if (batched != trial.batched.end() && ingredient.material) {
            ingredient.material->aggregate.moisture_percent =
                batched->material.aggregate.moisture_percent;
        }
    }
    return designed;
}

} // namespace

std::vector<Check> check_batching(const Trial& trial, const Yield& yield,
                                  const Proportions& designed, const Tables& tables) {
    Batch asked;
    try {
        asked = batch(at_moistures(designed, trial), {yield.intended_volume_m3, {}},
                      tables.water_density_kg_m3);
    } catch (const Unresolved& too_wet) { // what the trial was stands all the same
        return {{.id = "batching",
                 .verdict = Verdict::not_checked,
                 .requirement = "batch of the mix file",
                 .message = too_wet.what}};
    }
    std::vector<Check> checks;
    for (const BatchItem& item : asked.items) {
        if (item.by_trial) {
            continue;
        }
        checks.push_back(batching_check(item, yield.weighed_kg.at(item.name), tables));
    }
    return checks;
}

} // namespace boardmark::core
