#include <boardmark/core/placing_plan.hpp>

#include "phrases.hpp"
#include "tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::core {
namespace {

int rounded_up(double count) {
    return static_cast<int>(std::ceil(count - relative_rounding));
}

Check slow_unloading(Check check, double unloading_h, double limit_h) {
    check.value = unloading_h;
    check.limit = Limit{.low = std::nullopt, .high = limit_h};
    check.verdict = Verdict::fails;
    check.message = {
        "the form takes a load in {value}; from batching to the end of discharge it is "
        "at most {limit}: smaller loads, or agree a longer time with the supplier",
        {quantity("value", {unloading_h, Measure::duration}),
         quantity("limit", {limit_h, Measure::duration})}};
    return check;
}

/// With a stated haul the end of discharge is known; a round trip alone only bounds it, and so does
/// the time that the form takes for a load.
Check discharge_check(const TruckedPour& pour, double unloading_h, const LiftRules& rules) {
    const double limit_h = rules.discharge_h.value;
    Check check{.id = "truck.discharge",
                .verdict = Verdict::not_checked,
                .measure = Measure::duration,
                .requirement = "time from batching to the end of discharge",
                .source = rules.discharge_h.source,
                .message = {"neither the haul nor the round trip of a truck is stated", {}}};
    if (!pour.haul_h && above(unloading_h, limit_h)) {
        return slow_unloading(std::move(check), unloading_h, limit_h);
    }
    if (!pour.haul_h && !pour.round_trip_h) {
        return check;
    }
    const double value_h = pour.haul_h ? *pour.haul_h + unloading_h : *pour.round_trip_h;
    const bool late = above(value_h, limit_h);
    check.value = value_h;
    check.limit = Limit{.low = std::nullopt, .high = limit_h};
    check.verdict = !late ? Verdict::holds : pour.haul_h ? Verdict::fails : Verdict::watch;
    check.message = {
        pour.haul_h
            ? "{value} from batching to the end of discharge, at most {limit}"
            : (late ? "the round trip of {value} is longer than the {limit} from batching to the "
                      "end of discharge: ask the supplier how long the haul is"
                    : "even the whole round trip of {value} is within {limit}"),
        {quantity("value", {value_h, Measure::duration}),
         quantity("limit", {limit_h, Measure::duration})}};
    return check;
}

} // namespace

TruckPlan truck_plan(const TruckedPour& pour, const LiftRules& rules) {
    const double interval_h = pour.truck_m3 / pour.output_m3_h;
    const double unloading_h = std::min(pour.truck_m3, pour.volume_m3) / pour.output_m3_h;
    TruckPlan plan{.loads = rounded_up(pour.volume_m3 / pour.truck_m3),
                   .interval_h = interval_h,
                   .trucks = std::nullopt,
                   .pour_h = pour.volume_m3 / pour.output_m3_h,
                   .checks = {discharge_check(pour, unloading_h, rules)}};
    if (pour.round_trip_h) {
        plan.trucks =
            std::min(plan.loads, std::max(1, rounded_up(*pour.round_trip_h / interval_h)));
    }
    return plan;
}

} // namespace boardmark::core
