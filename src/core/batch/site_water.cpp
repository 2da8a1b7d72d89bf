#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/site_water.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/exposure_limits.hpp"
#include "../checks/trial_checks.hpp"
#include "../mix/high_range_reducer.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

struct Governing {
    double w_cm;
    WaterLimit limit;
};

/// The lowest of the ratios that the checks of w/cm hold the mix against.
Governing governing(const Selection& selection) {
    const auto& by_exposure = selection.w_cm_by_exposure;
    const auto& by_strength = selection.w_cm_by_strength;
    if (by_exposure && (!by_strength || !above(*by_exposure, *by_strength))) {
        // Without a proven ratio for the strength, none above the mix's own is known to reach it.
        return by_strength || !below(selection.w_cm, *by_exposure)
                   ? Governing{*by_exposure, WaterLimit::exposure}
                   : Governing{selection.w_cm, WaterLimit::mix};
    }
    return by_strength ? Governing{*by_strength, WaterLimit::strength}
                       : Governing{selection.w_cm, WaterLimit::mix};
}

/// A category without a class may ask a lower ratio than those that are stated: above the mix's own
/// nothing is promised.
Governing governing(const Selection& selection, const HoldBack& asked) {
    const Governing stated = governing(selection);
    return asked.unstated_exposure.empty() || !above(stated.w_cm, selection.w_cm)
               ? stated
               : Governing{selection.w_cm, WaterLimit::unstated};
}

Outcome<double> held_back_kg(double water_kg, const HoldBack& asked) {
    const double kg = asked.kg ? *asked.kg : water_kg * *asked.percent / 100;
    if (kg > 0 && !below(kg, water_kg)) {
        return Unresolved{
            {"{held} of water is to be held back, but only {water} is batched: no water would be "
             "left to mix with",
             {quantity("held", {kg, Measure::mass}), quantity("water", {water_kg, Measure::mass})}},
            {{"hold back less; a tenth is usual", {}}}};
    }
    const double weighed_kg =
        asked.resolution_kg ? std::round(kg / *asked.resolution_kg) * *asked.resolution_kg : kg;
    return std::min(weighed_kg, water_kg);
}

/// Water that fits below one limit.
struct Room {
    double kg;
    WaterLimit limit;
};

/// What the further limits look at.
struct Site {
    const Proportions& proportions;
    const Batch& batch;
    const HoldBack& asked;
    double held_kg;
    double water_density_kg_m3;
    double water_kg_m3_per_mm; ///< of slump
};

/// The water that thins the concrete down to its least cementitious material.
double room_of_binder_kg(const Site& site, double least_kg_m3) {
    const double volume_now_m3 = site.batch.yield_m3.value_or(site.batch.volume_m3) -
                                 site.held_kg / site.water_density_kg_m3;
    return (site.batch.binder_kg / least_kg_m3 - volume_now_m3) * site.water_density_kg_m3;
}

/// With all of the mix's own water the slump is the stated one.
double room_of_slump_kg(const Site& site, double gain_mm) {
    return site.held_kg +
           gain_mm * site.water_kg_m3_per_mm * site.batch.yield_m3.value_or(site.batch.volume_m3);
}

/// The narrowest of the room by w/cm, by the reducer, by the least cementitious material and by the
/// slump.
Room narrowest(Room room, const Site& site) {
    if (!high_range_reducers(site.proportions).empty() && above(room.kg, site.held_kg)) {
        room = {site.held_kg, WaterLimit::reducer};
    }
    if (site.asked.minimum_binder_kg_m3) {
        const double kg = room_of_binder_kg(site, *site.asked.minimum_binder_kg_m3);
        room = below(kg, room.kg) ? Room{kg, WaterLimit::binder} : room;
    }
    if (site.asked.most_slump_gain_mm) {
        const double kg = room_of_slump_kg(site, *site.asked.most_slump_gain_mm);
        room = below(kg, room.kg) ? Room{kg, WaterLimit::slump} : room;
    }
    return room;
}

std::vector<Phrase> advice_of(const SiteWater& water, const HoldBack& asked,
                              const Proportions& proportions) {
    std::vector<Phrase> advice;
    if (water.may_be_added.kg == 0) {
        advice.push_back({"No water may be added on site.", {}});
    } else if (water.limited_by == WaterLimit::unstated) {
        advice.push_back({"No class of exposure category {categories} is stated "
                          "('requirements.exposure'): it may ask a lower w/cm than the others.",
                          {word("categories", joined(asked.unstated_exposure))}});
    }
    if (water.may_be_added.kg > 0) {
        const auto reducers = high_range_reducers(proportions);
        const std::string when =
            reducers.empty()
                ? "Add it only before discharge, only until the target slump is reached, mix "
                : "Add it only before discharge and before {name} goes in, mix ";
        advice.push_back(
            {when +
                 "again, measure again and write down how much went in. More water than the mix's "
                 "own lightens the face, unevenly from batch to batch, and lowers the strength.",
             reducers.empty() ? std::vector<Argument>{}
                              : std::vector{word("name", reducers.front()->name)}});
    }
    if (water.may_be_added.kg > 0 && below(water.may_be_added.kg, water.held_back.kg)) {
        advice.push_back({"Not all of the water held back may be added: these weights leave room "
                          "for {may}.",
                          {quantity("may", {water.may_be_added.kg, Measure::mass})}});
    }
    const auto reducers = high_range_reducers(proportions);
    if (!reducers.empty()) {
        advice.push_back({"The mix holds a high-range reducer: once {name} is in, adjust the flow "
                          "with {name}, not with water.",
                          {word("name", reducers.front()->name)}});
    }
    return advice;
}

} // namespace

double most_slump_gain_mm(const Requirements& requirements, const Tables& tables) {
    const double most_mm = requirements.slump_window
                               ? requirements.slump_window->high_mm
                               : requirements.slump_mm +
                                     slump_tolerance(requirements.slump_mm, tables).within_mm.value;
    return std::max(most_mm - requirements.slump_mm, 0.0);
}

Outcome<SiteWater> site_water(const Proportions& proportions, const Batch& batch,
                              const HoldBack& asked, const Tables& tables) {
    const double water_kg = batch.items.front().kg;
    const auto held_back = held_back_kg(water_kg, asked);
    if (!held_back) {
        return held_back.why();
    }
    const double held_kg = *held_back;
    const Governing limit = governing(proportions.selection, asked);
    const double at_mixing_kg = batch.mixing_water_kg() - held_kg;
    const double room_kg = limit.w_cm * batch.binder_kg - at_mixing_kg;
    const Room room = narrowest({room_kg, limit.limit},
                                {proportions, batch, asked, held_kg, tables.water_density_kg_m3,
                                 tables.trial->adjustments.water_kg_m3_per_mm});
    // What conversion leaves of nothing is nothing.
    const double may_kg = room.kg > relative_rounding * batch.binder_kg ? room.kg : 0;
    const auto amount = [&](double kg) {
        return WaterAmount{.kg = kg, .litres = 1000 * kg / tables.water_density_kg_m3};
    };
    SiteWater result{.at_mixer = amount(water_kg - held_kg),
                     .held_back = amount(held_kg),
                     .w_cm_limit = limit.w_cm,
                     .limited_by = room.limit,
                     .may_be_added = amount(may_kg),
                     .may_be_added_kg_m3 = may_kg / batch.yield_m3.value_or(batch.volume_m3),
                     .w_cm_then = (at_mixing_kg + may_kg) / batch.binder_kg,
                     .slump_gain_mm = std::nullopt,
                     .advice = {}};
    if (high_range_reducers(proportions).empty()) {
        result.slump_gain_mm =
            result.may_be_added_kg_m3 / tables.trial->adjustments.water_kg_m3_per_mm;
    }
    result.advice = advice_of(result, asked, proportions);
    return result;
}

} // namespace boardmark::core
