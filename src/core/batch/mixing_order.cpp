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
    return {"Of the water, {tenth} is weighed apart and waits: weigh the water at the mixer less "
            "by it.",
            {quantity("tenth", {orders.tenth_kg, Measure::mass})}};
}

Phrase charging(const Orders& orders) {
    const std::string first = "Coarse aggregate with part of the water at the mixer goes in first, "
                              "then fine aggregate and cementitious material, then the rest of the "
                              "water at the mixer. ";
    switch (orders.waiting) {
    case Waiting::a_tenth:
        return {first + "The water that waits stays apart. Mix.", {}};
    case Waiting::held_back:
        return {first + "The water held back stays apart. Mix.", {}};
    case Waiting::none:
        break;
    }
    return {first + "Mix.", {}};
}

/// Stands before the charging: what is taken off the water must be known before that is weighed.
Phrase admixture_step(const Ingredient& admixture, const Orders& orders) {
    std::string told =
        admixture.by_trial
            ? "{name} is dosed by trial: find the dose on the trial batch and write it down. Take "
              "its liquid off the water at the mixer before weighing that. It goes in with that "
              "water, apart from other admixtures"
            : "{name} goes in with the water at the mixer, apart from other admixtures";
    if (orders.waiting != Waiting::none) {
        told += orders.waiting == Waiting::a_tenth ? ", never into the water that waits"
                                                   : ", never into the water held back";
    }
    if (!admixture.by_trial && admixture.liquid_kg_m3 > 0) {
        told += "; its liquid is off the weight of the water already";
    }
    return {told + ".", {word("name", admixture.name)}};
}

Phrase slump_step(const Orders& orders) {
    const Selection& selection = orders.proportions.selection;
    if (!orders.reducer) {
        return {"Measure the slump: {slump} is asked.",
                {quantity("slump", {selection.slump_mm, Measure::slump})}};
    }
    const Argument name = word("name", orders.reducer->name);
    return selection.slump_before_reducer_mm
               ? Phrase{"Measure the slump of the water alone: {before} is asked before {name}.",
                        {quantity("before", {*selection.slump_before_reducer_mm, Measure::slump}),
                         name}}
               : Phrase{"Measure the slump before {name}.", {name}};
}

/// What may still go in before the reducer; nothing where no water waits and none may be added.
std::optional<Phrase> water_step(const Orders& orders) {
    const std::string mixed = "; mix, measure again and write down how much went in.";
    if (orders.waiting == Waiting::a_tenth) {
        return Phrase{"Of the water that waits only what the concrete needs goes in now" + mixed,
                      {}};
    }
    if (!orders.site) {
        return std::nullopt;
    }
    const bool none = orders.site->may_be_added.kg <= 0;
    const bool without_target =
        orders.reducer && !orders.proportions.selection.slump_before_reducer_mm;
    if (orders.waiting == Waiting::held_back && !none && without_target) {
        return Phrase{
            "Of the water held back only what the concrete needs goes in now, no more than "
            "may be added on site" +
                mixed + " What is not needed stays out.",
            {}};
    }
    if (orders.waiting == Waiting::held_back) {
        return none ? Phrase{"The water held back stays out: these weights leave no room for it.",
                             {}}
                    : Phrase{
                          "If that slump is not reached, the water held back goes in now, no more "
                          "than may be added on site" +
                              mixed + " What is not needed stays out.",
                          {}};
    }
    return none ? std::nullopt
                : std::optional{Phrase{"If that slump is not reached, water goes in now, no more "
                                       "than may be added on site" +
                                           mixed,
                                       {}}};
}

Phrase reducer_step(const Ingredient& reducer) {
    return {std::string{reducer.by_trial ? "{name}, by trial: find its dose, write it down; its "
                                           "liquid is water too, and comes off the water at the "
                                           "mixer of the next batch. It"
                                         : "{name}"} +
                " goes in last, then mixes as long as its data sheet says. From then on no water: "
                "the flow is corrected with {name}.",
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
        steps.push_back(
            {"Of the water, {ice} is weighed as ice: take as much off the water at the mixer, and "
             "mix until it has melted.",
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
