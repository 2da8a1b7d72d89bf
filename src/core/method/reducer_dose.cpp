#include "reducer_dose.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/material_figures.hpp"
#include "slump_gain.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// What brings a dose to its next value, and how that must be told.
struct Move {
    double percent; ///< the next dose
    std::string how;
    bool exhausted = false; ///< no dose brings the slump down to its target
};

std::optional<double> maximum_percent(const Material& reducer, double density_kg_m3) {
    const auto& maximum = reducer.admixture.maximum_dose;
    return maximum ? std::optional{dose_percent(*maximum, density_kg_m3)} : std::nullopt;
}

/// One small step, because nothing is known of the gain.
Move small_step(const FoundDose& found, double wanted_mm, const Tables& tables, std::string why) {
    const double step = tables.trial->adjustments.dose_step_percent.value / 100;
    const bool more = wanted_mm > 0;
    return {found.percent * (1 + (more ? step : -step)),
            std::move(why) + ", so one small step of {step} of the dose, " +
                (more ? "up" : "down")};
}

Move by_gain(const FoundDose& found, double wanted_mm, const Tables& tables,
             const SlumpGain& gain) {
    // The scale's own tolerance may carry a dose a little past the last point.
    const double tolerance = 1 + tables.trial->batching.admixture_percent.value / 100;
    const bool at_the_end = found.percent <= gain.last_percent() * tolerance;
    const auto now_mm =
        gain.gain_mm(at_the_end ? std::min(found.percent, gain.last_percent()) : found.percent);
    if (!now_mm) {
        return small_step(found, wanted_mm, tables, "dosed above the last point of its slump gain");
    }
    const double half_a_reading = tables.trial->adjustments.slump_reading_mm.value / 2;
    if (*now_mm + wanted_mm < -half_a_reading) {
        return {.percent = 0,
                .how = "by its slump gain no dose at all would still be above the target",
                .exhausted = true};
    }
    const auto percent = gain.dose_percent_for(*now_mm + wanted_mm);
    return {percent.value_or(gain.last_percent()),
            percent ? "by its slump gain"
                    : "by its slump gain, whose data end before the target: the last point"};
}

/// The dose stays where the slump is the target as slump is read.
Move move_of(const FoundDose& found, double wanted_mm, const Tables& tables) {
    const double half_a_reading = tables.trial->adjustments.slump_reading_mm.value / 2;
    if (std::abs(wanted_mm) < half_a_reading) {
        return {found.percent, "the slump is on target as near as slump is read: the dose stays"};
    }
    const SlumpGain gain{found.reducer, tables};
    return gain.is_known() ? by_gain(found, wanted_mm, tables, gain)
                           : small_step(found, wanted_mm, tables, "no slump gain is stated");
}

/// Words for the slump that the corrected water changes, where it changes one that can be read.
std::string by_water(const FoundDose& found, const Tables& tables) {
    const double half_a_reading = tables.trial->adjustments.slump_reading_mm.value / 2;
    return std::abs(found.by_water_mm) < half_a_reading ? ""
           : found.by_water_mm > 0                      ? ", the water corrected loosens it"
                                                        : ", the water corrected stiffens it";
}

Phrase advice_on(const Move& move, const FoundDose& found, double wanted_mm, bool at_maximum) {
    const Argument name = word("name", found.reducer.name);
    if (move.exhausted) {
        return {"No dose of {name} explains this slump: look for water that was not counted and "
                "measure the moistures again before another batch.",
                {name}};
    }
    if (at_maximum && wanted_mm > 0) {
        return {"{name} is at its highest dose, the target is not reached by it: more slump before "
                "the reducer (water with its cementitious material), another product, or rounder "
                "or larger stone.",
                {name}};
    }
    if (above(move.percent, found.percent)) {
        return {"Raise the dose of {name} in small steps and watch for segregation: paste or water "
                "that parts from the stone at the rim of the slump ends the trial.",
                {name}};
    }
    return {"Correct the flow with {name}, not with water: water added to a flowing mix costs "
            "strength and durability.",
            {name}};
}

} // namespace

std::optional<double> last_known_percent(const Material& admixture, double density_kg_m3) {
    std::optional<double> last;
    const auto hold = [&](const Dose& dose) {
        last = std::max(last.value_or(0), dose_percent(dose, density_kg_m3));
    };
    for (const WaterReductionPoint& point : admixture.admixture.water_reduction) {
        hold(point.dose);
    }
    for (const SlumpGainPoint& point : admixture.admixture.slump_gain) {
        hold(point.dose);
    }
    return last;
}

NextDose next_dose(FoundDose found, const Yield& yield, const Tables& tables) {
    const double density_kg_m3 = product_density(found.reducer, tables).value;
    const double wanted_mm = yield.target.slump_mm - yield.slump.mm - found.by_water_mm;
    Move move = move_of(found, wanted_mm, tables);
    const auto maximum = maximum_percent(found.reducer, density_kg_m3);
    const bool at_maximum = maximum && !below(move.percent, *maximum);
    if (at_maximum && above(move.percent, *maximum)) {
        move.percent = *maximum;
        move.how = "held at 'maximum_dose'";
    }
    const auto last = last_known_percent(found.reducer, density_kg_m3);
    if (!maximum && last && above(move.percent, *last)) {
        move.how += "; above the last dose of its data: look up its maximum, add 'maximum_dose'";
    }
    const double step_percent = tables.trial->adjustments.dose_step_percent.value;
    return {.percent = move.percent,
            .reason = {"{name}: slump {measured}, target {target}" + by_water(found, tables) +
                           "; " + move.how,
                       {word("name", found.reducer.name),
                        quantity("measured", {yield.slump.mm, Measure::slump}),
                        quantity("target", {yield.target.slump_mm, Measure::slump}),
                        percent_of("step", step_percent)}},
            .advice = advice_on(move, found, wanted_mm, at_maximum)};
}

} // namespace boardmark::core
