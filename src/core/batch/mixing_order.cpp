#include <boardmark/core/batch/mixing_order.hpp>

#include "../basis/phrases.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

/// Which water waits for the slump.
enum class Waiting { none, a_tenth, held_back };

struct Orders {
    const Proportions& proportions;
    const SiteWater* site;
    const Ingredient* reducer; ///< high-range; nullptr where there is none
    double tenth_kg;           ///< of the water, as the scale shows it
    Waiting waiting;
};

const Ingredient* reducer_of(const Proportions& proportions) {
    for (const Ingredient* admixture : of_role(proportions, Role::admixture)) {
        if (admixture->material->kind == Kind::high_range_water_reducer) {
            return admixture;
        }
    }
    return nullptr;
}

Waiting waiting_of(const SiteWater* site, const Ingredient* reducer, double tenth_kg) {
    if (site) {
        return site->held_back.kg > 0 ? Waiting::held_back : Waiting::none;
    }
    return reducer && tenth_kg > 0 ? Waiting::a_tenth : Waiting::none;
}

double tenth_of_water_kg(const Batch& batch, const std::optional<double>& resolution_kg) {
    const double kg = batch.items.front().kg / 10;
    return resolution_kg ? std::floor(kg / *resolution_kg) * *resolution_kg : kg;
}

/// Water that is weighed apart although the weights above have it in one.
Phrase tenth_step(const Orders& orders) {
    return {"Weigh {tenth} of the water separately and set it aside; weigh that much less at the "
            "mixer.",
            {quantity("tenth", {orders.tenth_kg, Measure::mass})}};
}

Phrase charging(const Orders& orders) {
    const std::string first = "Coarse aggregate with part of the water at the mixer goes in first, "
                              "then fine aggregate and cementitious material, then the rest of the "
                              "water at the mixer. ";
    switch (orders.waiting) {
    case Waiting::a_tenth:
        return {first + "Keep the water set aside out of the mixer. Mix.", {}};
    case Waiting::held_back:
        return {first + "Keep the water held back out of the mixer. Mix.", {}};
    case Waiting::none:
        break;
    }
    return {first + "Mix.", {}};
}

/// Stands before the charging: what is taken off the water must be known before that is weighed.
Phrase admixture_step(const Ingredient& admixture, const Orders& orders) {
    std::string told =
        admixture.by_trial
            ? "{name} is dosed by trial: find the dose on the trial batch and write it down. "
              "Subtract its liquid from the water at the mixer before you weigh that water. It "
              "goes in with that water, separately from other admixtures"
            : "{name} goes in with the water at the mixer, separately from other admixtures";
    if (orders.waiting != Waiting::none) {
        told += orders.waiting == Waiting::a_tenth ? ", never into the water set aside"
                                                   : ", never into the water held back";
    }
    if (!admixture.by_trial && admixture.liquid_kg_m3 > 0) {
        told += "; its liquid is already subtracted from the weight of the water";
    }
    return {told + ".", {word("name", admixture.name)}};
}

Phrase slump_step(const Orders& orders) {
    const Selection& selection = orders.proportions.selection;
    if (!orders.reducer) {
        return {"Measure the slump: the target is {slump}.",
                {quantity("slump", {selection.slump_mm, Measure::slump})}};
    }
    const Argument name = word("name", orders.reducer->name);
    return selection.slump_before_reducer_mm
               ? Phrase{"Measure the slump with water alone: the target before {name} is {before}.",
                        {quantity("before", {*selection.slump_before_reducer_mm, Measure::slump}),
                         name}}
               : Phrase{"Measure the slump before {name}.", {name}};
}

/// What may still go in before the reducer; nothing where no water waits and none may be added.
std::optional<Phrase> water_step(const Orders& orders) {
    const std::string mixed = "; mix, measure again and write down how much went in.";
    if (orders.waiting == Waiting::a_tenth) {
        return Phrase{"Add only as much of the water set aside as the concrete needs" + mixed, {}};
    }
    if (!orders.site) {
        return std::nullopt;
    }
    const bool none = orders.site->may_be_added.kg <= 0;
    const bool without_target =
        orders.reducer && !orders.proportions.selection.slump_before_reducer_mm;
    if (orders.waiting == Waiting::held_back && !none && without_target) {
        return Phrase{"Add only as much of the water held back as the concrete needs, and no more "
                      "than may be added on site" +
                          mixed + " Leave out what is not needed.",
                      {}};
    }
    if (orders.waiting == Waiting::held_back) {
        return none ? Phrase{"Do not add the water held back: these weights leave no room for it.",
                             {}}
                    : Phrase{"If the slump is below that, add the water held back now, but no more "
                             "than may be added on site" +
                                 mixed + " Leave out what is not needed.",
                             {}};
    }
    return none ? std::nullopt
                : std::optional{Phrase{"If the slump is below that, add water now, but no more "
                                       "than may be added on site" +
                                           mixed,
                                       {}}};
}

Phrase reducer_step(const Ingredient& reducer) {
    return {
        std::string{reducer.by_trial
                        ? "{name}, by trial: find its dose and write it down; its liquid is water "
                          "too, and is subtracted from the water at the mixer of the next batch. It"
                        : "{name}"} +
            " goes in last, then mixes as long as its data sheet says. From then on add no water: "
            "correct the flow with {name}.",
        {word("name", reducer.name)}};
}

} // namespace

std::vector<Phrase> mixing_order(const Proportions& proportions, const Batch& batch,
                                 const std::optional<double>& resolution_kg,
                                 const SiteWater* site) {
    const Ingredient* reducer = reducer_of(proportions);
    const double tenth_kg = tenth_of_water_kg(batch, resolution_kg);
    const Orders orders{proportions, site, reducer, tenth_kg, waiting_of(site, reducer, tenth_kg)};
    std::vector<Phrase> steps;
    if (orders.waiting == Waiting::a_tenth) {
        steps.push_back(tenth_step(orders));
    }
    if (proportions.temperature && proportions.temperature->ice_kg_m3 > 0) {
        const double ice_kg = proportions.temperature->ice_kg_m3 * batch.volume_m3;
        steps.push_back({"Weigh {ice} of the water as ice: weigh that much less water at the "
                         "mixer, and mix until the ice has melted.",
                         {quantity("ice", {ice_kg, Measure::mass})}});
    }
    for (const Ingredient* admixture : of_role(proportions, Role::admixture)) {
        if (admixture != reducer && admixture->material->kind != Kind::pigment) {
            steps.push_back(admixture_step(*admixture, orders));
        }
    }
    steps.push_back(charging(orders));
    steps.push_back(slump_step(orders));
    if (auto water = water_step(orders)) {
        steps.push_back(std::move(*water));
    }
    if (reducer) {
        steps.push_back(reducer_step(*reducer));
    }
    return steps;
}

} // namespace boardmark::core
