#include "reducer_dose.hpp"

#include "material_figures.hpp"
#include "phrases.hpp"
#include "slump_gain.hpp"
#include "tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace boardmark::core {
namespace {

double highest_percent(const Material& reducer, double density_kg_m3) {
    const auto& maximum = reducer.admixture.maximum_dose;
    return maximum ? dose_percent(*maximum, density_kg_m3)
                   : std::numeric_limits<double>::infinity();
}

/// More slump that the dose is to bring; negative: less.
double wanted_mm(const FoundDose& found, const Yield& yield) {
    return yield.target.slump_mm - yield.slump.mm - found.by_water_mm;
}

std::vector<Argument> slumps(const FoundDose& found, const Yield& yield) {
    return {word("name", found.reducer.name),
            quantity("measured", {yield.slump.mm, Measure::slump}),
            quantity("target", {yield.target.slump_mm, Measure::slump})};
}

/// Words for the slump that the corrected water changes, where it does.
std::string by_water(const FoundDose& found) {
    return same(found.by_water_mm, 0) ? ""
           : found.by_water_mm > 0    ? ", the water corrected loosens it"
                                      : ", the water corrected stiffens it";
}

const Phrase watch_segregation{
    "Raise the dose in small steps and watch for segregation: paste or water that parts from the "
    "stone at the rim of the slump ends the trial.",
    {}};
const Phrase water_stays{
    "Correct the flow with the reducer, not with water: water added to a flowing mix costs "
    "strength and durability.",
    {}};

NextDose unchanged(const FoundDose& found, const Yield& yield) {
    return {found.percent,
            {"{name}: slump {measured}, target {target}" + by_water(found) +
                 ": as slump is read the dose stays",
             slumps(found, yield)},
            water_stays};
}

/// One small step, because nothing is known of the gain.
NextDose small_step(const FoundDose& found, const Yield& yield, const Tables& tables,
                    std::string why) {
    const double step_percent = tables.trial.adjustments.dose_step_percent.value;
    const bool more = wanted_mm(found, yield) > 0;
    Phrase reason{"{name}: " + std::move(why) + "; slump {measured}, target {target}" +
                      by_water(found) +
                      ": one small "
                      "step of {step} of the dose, " +
                      (more ? "up" : "down"),
                  slumps(found, yield)};
    reason.arguments.push_back(quantity("step", {step_percent, Measure::percent}));
    return {found.percent * (1 + (more ? 1 : -1) * step_percent / 100), std::move(reason),
            more ? watch_segregation : water_stays};
}

NextDose by_gain(const FoundDose& found, const Yield& yield, const Tables& tables,
                 const SlumpGain& gain) {
    const auto now_mm = gain.gain_mm(found.percent);
    if (!now_mm) {
        return small_step(found, yield, tables, "dosed above the last point of its slump gain");
    }
    const auto percent = gain.dose_percent_for(*now_mm + wanted_mm(found, yield));
    Phrase reason{"{name}: by its slump gain, from slump {measured} to {target}" + by_water(found),
                  slumps(found, yield)};
    if (!percent) {
        reason.text += "; its data end before that, the last point is used";
    }
    const double next = percent.value_or(gain.last_percent());
    return {next, std::move(reason), next > found.percent ? watch_segregation : water_stays};
}

} // namespace

NextDose next_dose(FoundDose found, const Yield& yield, const Tables& tables) {
    const double half_a_reading = tables.trial.adjustments.slump_reading_mm.value / 2;
    const double density_kg_m3 = product_density(found.reducer, tables).value;
    const SlumpGain gain{found.reducer, tables};
    NextDose next = std::abs(wanted_mm(found, yield)) < half_a_reading ? unchanged(found, yield)
                    : gain.is_known() ? by_gain(found, yield, tables, gain)
                                      : small_step(found, yield, tables, "no slump gain is stated");
    const double highest = highest_percent(found.reducer, density_kg_m3);
    if (above(next.percent, highest)) {
        next.percent = highest;
        next.reason.text += "; held at 'maximum_dose'";
    }
    return next;
}

} // namespace boardmark::core
