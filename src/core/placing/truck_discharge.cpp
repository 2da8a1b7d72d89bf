#include "truck_discharge.hpp"

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../wall/wall_checks.hpp"
#include "filling.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr auto smaller_loads = ": smaller loads, a faster plan, or agree a longer time with the "
                               "supplier";
constexpr auto state_the_haul = ": ask the supplier how long the haul is, and state "
                                "'requirements.placing.haul' in the mix file";

/// A load that is being unloaded into a part.
struct Unloading {
    double taken_m3; ///< of the load, by this part
    double hours;    ///< for that, where the part is slowest
    double whole_h;  ///< for the whole load at the same pace
    double limit_h;  ///< from batching to the end of discharge
    const TruckedPour& pour;
};

/// Like parts are filled one after the other.
std::vector<FilledLift> lifts_of_all(const UnloadedPart& part) {
    std::vector<FilledLift> lifts;
    for (int copy = 0; copy < part.count; ++copy) {
        lifts.insert(lifts.end(), part.lifts.begin(), part.lifts.end());
    }
    return lifts;
}

Unloading unloading_of(const UnloadedPart& part, const TruckedPour& pour, double limit_h) {
    const std::vector<FilledLift> lifts = lifts_of_all(part);
    const double volume_m3 = volume_of(lifts);
    const double load_m3 = std::min(pour.truck_m3, std::max(pour.order_m3, volume_m3));
    const double taken_m3 = std::min(load_m3, volume_m3);
    const double hours = slowest_h(lifts, taken_m3);
    return {taken_m3, hours, hours * load_m3 / taken_m3, limit_h, pour};
}

Argument time_of(const char* name, double hours) {
    return quantity(name, {hours, Measure::duration});
}

/// The times that a message speaks of; not every message does of all.
std::vector<Argument> times_of(const Unloading& one) {
    std::vector<Argument> times{quantity("taken", {one.taken_m3, Measure::volume}),
                                time_of("unloading", one.hours), time_of("limit", one.limit_h)};
    const auto before_h = one.pour.haul_h ? one.pour.haul_h : one.pour.round_trip_h;
    if (before_h) {
        times.push_back(time_of("before", *before_h));
        times.push_back(time_of("value", *before_h + one.hours));
    }
    return times;
}

void judge_by_haul(const Unloading& one, Check& check) {
    check.value = *one.pour.haul_h + one.hours;
    const bool late = above(*check.value, one.limit_h);
    check.verdict = late ? Verdict::fails : Verdict::holds;
    check.message.text = "{before} of haul and {unloading} to unload {taken}: {value} from "
                         "batching to the end of discharge, at most {limit}";
    check.message.text += late ? smaller_loads : "";
}

void judge_unloading(const Unloading& one, Check& check) {
    check.value = one.hours;
    check.verdict = Verdict::fails;
    check.message.text = "the form takes {taken} in {unloading}; from batching to the end of "
                         "discharge it is at most {limit}";
    check.message.text += smaller_loads;
}

/// A haul is shorter than the round trip: what holds with all of that holds with any haul.
void judge_by_round_trip(const Unloading& one, Check& check) {
    const double round_trip_h = *one.pour.round_trip_h;
    check.value = round_trip_h + one.hours;
    check.verdict = above(*check.value, one.limit_h) ? Verdict::watch : Verdict::holds;
    check.message.text = "even the whole round trip of {before} and {unloading} to unload {taken} "
                         "are within {limit}";
    if (check.verdict == Verdict::watch) {
        check.message.text =
            above(round_trip_h, one.hours)
                ? "a round trip of {before}, and {unloading} to unload {taken}: it is not known "
                  "whether discharge ends within {limit} of batching"
                : "the form takes {taken} in {unloading}, and a truck is said to be back after "
                  "{before}: one of the two is wrong";
        check.message.text += state_the_haul;
    }
}

/// What is left of a load that is more than the part takes is somebody's guess.
void watch_the_rest(const Unloading& one, Check& check) {
    if (!below(one.hours, one.whole_h)) {
        return;
    }
    check.message.text += "; the rest of the load goes elsewhere";
    const bool in_time = !above(*check.value + one.whole_h - one.hours, one.limit_h);
    if (check.verdict == Verdict::holds && !in_time) {
        check.verdict = Verdict::watch;
        check.message.text += " in the time that is left";
    }
}

/// The slump is judged for the time that the mix file states; a load that takes longer has lost
/// more of it.
void watch_time_to_place(const Unloading& one, Check& check) {
    const auto& stated_h = one.pour.time_to_place_h;
    if (!stated_h || !one.pour.haul_h || check.verdict == Verdict::fails ||
        !above(*one.pour.haul_h + one.hours, *stated_h)) {
        return;
    }
    check.verdict = Verdict::watch;
    check.message.text += ". The mix file takes {placed} ('requirements.time_to_place'), until "
                          "which alone its slump is judged";
    check.message.arguments.push_back(time_of("placed", *stated_h));
}

void judge(const Unloading& one, Check& check) {
    check.limit = Limit{.low = std::nullopt, .high = one.limit_h};
    check.message.arguments = times_of(one);
    if (one.pour.haul_h) {
        judge_by_haul(one, check);
    } else if (above(one.hours, one.limit_h)) {
        judge_unloading(one, check);
    } else if (one.pour.round_trip_h) {
        judge_by_round_trip(one, check);
    } else {
        check.limit = std::nullopt;
        check.message.text = "neither 'requirements.placing.haul' in the mix file nor "
                             "'placing.round_trip' is stated; to unload {taken} takes {unloading}";
        return;
    }
    watch_the_rest(one, check);
    watch_time_to_place(one, check);
}

} // namespace

Check truck_discharge(const UnloadedPart& part, const TruckedPour& pour, const LiftRules& rules) {
    Check check{
        .id = check_ids::truck_discharge,
        .verdict = Verdict::not_checked,
        .measure = Measure::duration,
        .requirement = "time from batching to the end of discharge",
        .source = rules.discharge_h.source,
        .message = {"'placing.output' is not stated: it is not known how fast it takes a load",
                    {}}};
    if (!part.lifts.empty()) {
        judge(unloading_of(part, pour, rules.discharge_h.value), check);
        watch_planned_pace(part.by_output, check);
    }
    return of_wall(part.name, std::move(check));
}

} // namespace boardmark::core
