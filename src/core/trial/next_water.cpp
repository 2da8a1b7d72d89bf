#include "next_water.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

/// A slump that was measured and the one it was to be.
struct SlumpGap {
    double measured_mm;
    double target_mm;

    double mm() const { return target_mm - measured_mm; }
};

double water_for(const SlumpGap& gap, const Tables& tables) {
    return gap.mm() * tables.trial->adjustments.water_kg_m3_per_mm;
}

Step water_step(double kg_m3, Phrase reason, const Source& source = {}) {
    return adjusted("water", {kg_m3, Measure::concentration}, std::move(reason), source);
}

/// The slump before the reducer, where it was both measured and asked for.
std::optional<SlumpGap> gap_before_reducer(const Trial& trial, const Proportions& designed) {
    const auto& measured_mm = trial.tests.slump_before_reducer_mm;
    const auto& target_mm = designed.selection.slump_before_reducer_mm;
    return measured_mm && target_mm ? std::optional{SlumpGap{*measured_mm, *target_mm}}
                                    : std::nullopt;
}

Step water_before_reducer(const SlumpGap& before, const Yield& yield, const Tables& tables) {
    const double found = yield.found.totals.water_kg_m3;
    const double for_slump = water_for(before, tables);
    const bool flows_enough = !below(yield.slump.mm, yield.target.slump_mm);
    if (for_slump > 0 && flows_enough) {
        return water_step(found, {"the water that the trial contained: it flows enough as it is, "
                                  "though the slump before the reducer was {measured} of {target}",
                                  {quantity("measured", {before.measured_mm, Measure::slump}),
                                   quantity("target", {before.target_mm, Measure::slump})}});
    }
    return water_step(found + for_slump,
                      {"water found {found}, {for_slump} for the slump before the reducer, "
                       "{measured} to {target}; the dose corrects the flow",
                       {concentration("found", found), concentration("for_slump", for_slump),
                        quantity("measured", {before.measured_mm, Measure::slump}),
                        quantity("target", {before.target_mm, Measure::slump})}},
                      tables.trial->adjustments.source);
}

} // namespace

Step adjusted(std::string name, Quantity value, Phrase reason, const Source& source) {
    return {.quantity = std::move(name),
            .value = value.value,
            .measure = value.measure,
            .provenance = Provenance::computed,
            .reason = std::move(reason),
            .source = source,
            .marks = with_confidence({}, source)};
}

Step water_by_slump_and_air(const Yield& yield, const Tables& tables) {
    const TrialAdjustments& rules = tables.trial->adjustments;
    const SlumpGap gap{yield.slump.mm, yield.target.slump_mm};
    const double for_slump = water_for(gap, tables);
    const double for_air =
        (yield.air_percent - yield.target.air_percent) * rules.water_kg_m3_per_air_point;
    const double found = yield.found.totals.water_kg_m3;
    return water_step(
        found + for_slump + for_air,
        {"water found {found}, {for_slump} for slump {measured} to {target}, {for_air} "
         "for air {air} to {target_air}",
         {concentration("found", found), concentration("for_slump", for_slump),
          quantity("measured", {gap.measured_mm, Measure::slump}),
          quantity("target", {gap.target_mm, Measure::slump}), concentration("for_air", for_air),
          percent_of("air", yield.air_percent),
          percent_of("target_air", yield.target.air_percent)}},
        rules.source);
}

Step water_under_reducer(const Trial& trial, const Yield& yield, const Proportions& designed,
                         const Tables& tables) {
    if (const auto before = gap_before_reducer(trial, designed)) {
        return water_before_reducer(*before, yield, tables);
    }
    const double found = yield.found.totals.water_kg_m3;
    const double design = designed.totals.water_kg_m3;
    const double tolerance = design * tables.trial->batching.water_percent.value / 100;
    if (!above(std::abs(found - design), tolerance)) {
        return water_step(found, {"the water that the trial contained: with a high-range reducer "
                                  "the water stays, its dose is the lever",
                                  {}});
    }
    return water_step(design, {std::string{"the mix file's water: the trial contained "} +
                                   (found > design ? "more" : "less") +
                                   ", {found}; with a high-range reducer the dose is the lever",
                               {concentration("found", found)}});
}

Step water_of_design(const Proportions& designed) {
    return water_step(
        designed.totals.water_kg_m3,
        {"the mix file's water: without its reducer this trial does not show how much is needed",
         {}});
}

} // namespace boardmark::core
