#include <boardmark/core/mixing_order.hpp>

#include "phrases.hpp"

namespace boardmark::core {
namespace {

/// Which water waits for the slump.
enum class Waiting { none, a_tenth, held_back };

struct Orders {
    const Proportions& proportions;
    const SiteWater* site;
    const Ingredient* reducer; ///< high-range; nullptr where there is none
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

Waiting waiting_of(const SiteWater* site, const Ingredient* reducer) {
    if (site) {
        return site->held_back.kg > 0 ? Waiting::held_back : Waiting::none;
    }
    return reducer ? Waiting::a_tenth : Waiting::none;
}

Phrase charging(const Orders& orders) {
    const std::string first = "Coarse aggregate with part of the water goes in first, then fine "
                              "aggregate and cementitious material, then the rest of the water";
    switch (orders.waiting) {
    case Waiting::a_tenth:
        return {first + " but a tenth of it, which waits. Mix.", {}};
    case Waiting::held_back:
        return {first + " at the mixer. The water held back stays apart. Mix.", {}};
    case Waiting::none:
        break;
    }
    return {first + ". Mix.", {}};
}

Phrase admixture_step(const Ingredient& admixture) {
    const Argument name = word("name", admixture.name);
    return admixture.by_trial
               ? Phrase{"{name} is dosed by trial: find the dose on the trial batch, take its "
                        "liquid out of the water, write both down. It goes in with the water, "
                        "apart from other admixtures.",
                        {name}}
               : Phrase{"{name} goes in with the water, apart from other admixtures.", {name}};
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
        return Phrase{"Of the tenth that waits only what the concrete needs goes in now" + mixed,
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
    return {std::string{reducer.by_trial ? "{name}, by trial: find its dose, write it down. It"
                                         : "{name}"} +
                " goes in last, then mixes as long as its data sheet says. From then on no water: "
                "the flow is corrected with {name}.",
            {word("name", reducer.name)}};
}

} // namespace

std::vector<Phrase> mixing_order(const Proportions& proportions, double volume_m3,
                                 const SiteWater* site) {
    const Ingredient* reducer = reducer_of(proportions);
    const Orders orders{proportions, site, reducer, waiting_of(site, reducer)};
    std::vector<Phrase> steps;
    if (proportions.temperature && proportions.temperature->ice_kg_m3 > 0) {
        steps.push_back(
            {"Of the water, {ice} is weighed as ice: take as much off the water at the mixer, and "
             "mix until it has melted.",
             {quantity("ice", {proportions.temperature->ice_kg_m3 * volume_m3, Measure::mass})}});
    }
    steps.push_back(charging(orders));
    for (const Ingredient* admixture : of_role(proportions, Role::admixture)) {
        if (admixture != reducer && admixture->material->kind != Kind::pigment) {
            steps.push_back(admixture_step(*admixture));
        }
    }
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
