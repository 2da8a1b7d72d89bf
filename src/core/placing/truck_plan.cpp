#include <boardmark/core/placing/placing_plan.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "filling.hpp"
#include "truck_discharge.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

int rounded_up(double count) {
    return static_cast<int>(std::ceil(count - relative_rounding));
}

/// A load after the other, each at the part's slowest.
TruckInterval interval_of(const UnloadedPart& part, const TruckedPour& pour) {
    const double taken_m3 = std::min(pour.truck_m3, volume_of(part.lifts));
    return {part.name, slowest_h(part.lifts, taken_m3) * pour.truck_m3 / taken_m3};
}

/// From one load of a truck to its next: no less than the way to the site, the unloading and the
/// way back.
double cycle_h(double round_trip_h, double unloading_h, const TruckedPour& pour) {
    return std::max(round_trip_h, 2 * pour.haul_h.value_or(0) + unloading_h);
}

/// What no part's pace is known for goes at the mean of the others.
double pour_h(const TruckedPour& pour) {
    double hours = 0;
    double placed_m3 = 0;
    for (const UnloadedPart& part : pour.parts) {
        hours += part.count * hours_of(part.lifts);
        placed_m3 += part.count * volume_of(part.lifts);
    }
    return hours * pour.order_m3 / placed_m3;
}

} // namespace

std::optional<TruckPlan> truck_plan(const TruckedPour& pour, const LiftRules& rules) {
    std::vector<TruckInterval> intervals;
    std::vector<Check> checks;
    for (const UnloadedPart& part : pour.parts) {
        checks.push_back(truck_discharge(part, pour, rules));
        if (!part.lifts.empty()) {
            intervals.push_back(interval_of(part, pour));
        }
    }
    if (intervals.empty()) {
        return std::nullopt;
    }
    const auto [shortest, longest] =
        std::ranges::minmax_element(intervals, {}, &TruckInterval::hours);
    TruckPlan plan{.loads = rounded_up(pour.order_m3 / pour.truck_m3),
                   .longest = *longest,
                   .shortest = *shortest,
                   .trucks = std::nullopt,
                   .pour_h = pour_h(pour),
                   .checks = std::move(checks)};
    if (pour.round_trip_h) {
        const double hours = cycle_h(*pour.round_trip_h, shortest->hours, pour);
        plan.trucks = std::min(plan.loads, std::max(1, rounded_up(hours / shortest->hours)));
    }
    return plan;
}

Phrase told(const TruckPlan& plan) {
    Phrase phrase{plan.loads == 1 ? "One load" : "{loads} loads, one every {shortest}",
                  {quantity("loads", {static_cast<double>(plan.loads), Measure::count}),
                   quantity("shortest", {plan.shortest.hours, Measure::duration})}};
    if (plan.loads > 1 && !same(plan.shortest.hours, plan.longest.hours)) {
        phrase.text += " ({quick}) to {longest} ({slow})";
        phrase.arguments.push_back(word("quick", plan.shortest.part));
        phrase.arguments.push_back(quantity("longest", {plan.longest.hours, Measure::duration}));
        phrase.arguments.push_back(word("slow", plan.longest.part));
    }
    if (plan.trucks) {
        phrase.text += *plan.trucks == 1 ? ", from one truck" : ", from {trucks} trucks";
        phrase.arguments.push_back(
            quantity("trucks", {static_cast<double>(*plan.trucks), Measure::count}));
    }
    return phrase;
}

} // namespace boardmark::core
