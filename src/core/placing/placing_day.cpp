#include <boardmark/core/placing/placing_day.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "filling.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

std::vector<LiftOfDay> lifts_one_after_the_other(const std::vector<UnloadedPart>& parts) {
    std::vector<LiftOfDay> day;
    double now_h = 0;
    for (const UnloadedPart& part : parts) {
        for (int copy = 1; copy <= part.count; ++copy) {
            int number = 0;
            for (const FilledLift& lift : part.lifts) {
                day.push_back({.part = part.name,
                               .copy = copy,
                               .copies = part.count,
                               .lift = ++number,
                               .lifts = static_cast<int>(part.lifts.size()),
                               .volume_m3 = lift.volume_m3,
                               .begins_h = now_h,
                               .ends_h = now_h + lift.hours});
                now_h += lift.hours;
            }
        }
    }
    return day;
}

std::vector<FilledLift> filled(const std::vector<LiftOfDay>& day) {
    std::vector<FilledLift> lifts;
    for (const LiftOfDay& lift : day) {
        lifts.push_back({lift.volume_m3, lift.ends_h - lift.begins_h});
    }
    return lifts;
}

/// The parts that take concrete between two volumes of the day, each once.
std::vector<std::string> parts_between(const std::vector<LiftOfDay>& day, double from_m3,
                                       double to_m3) {
    std::vector<std::string> parts;
    double low_m3 = 0;
    for (const LiftOfDay& lift : day) {
        const double high_m3 = low_m3 + lift.volume_m3;
        const bool takes = above(std::min(high_m3, to_m3), std::max(low_m3, from_m3));
        if (takes && std::ranges::count(parts, lift.part) == 0) {
            parts.push_back(lift.part);
        }
        low_m3 = high_m3;
    }
    return parts;
}

std::optional<double> time_before_h(const TruckedPour& pour) {
    return pour.haul_h ? pour.haul_h : pour.round_trip_h;
}

LoadOfDay load_of_day(int number, const std::vector<LiftOfDay>& day, const TruckedPour& pour,
                      const LiftRules& rules) {
    const auto lifts = filled(day);
    const double from_m3 = (number - 1) * pour.truck_m3;
    const double to_m3 = std::min(number * pour.truck_m3, pour.order_m3);
    LoadOfDay load{.number = number,
                   .volume_m3 = to_m3 - from_m3,
                   .parts = parts_between(day, from_m3, to_m3),
                   .begins_h = filled_after_h(lifts, from_m3),
                   .ends_h = filled_after_h(lifts, to_m3),
                   .batched_h = std::nullopt,
                   .latest_end_h = std::nullopt};
    if (const auto before_h = time_before_h(pour)) {
        load.batched_h = load.begins_h - *before_h;
        load.latest_end_h = *load.batched_h + rules.discharge_h.value;
    }
    return load;
}

std::vector<LoadOfDay> loads_of_day(const std::vector<LiftOfDay>& day, const TruckedPour& pour,
                                    const LiftRules& rules) {
    std::vector<LoadOfDay> loads;
    for (int number = 1; above(pour.order_m3, (number - 1) * pour.truck_m3); ++number) {
        loads.push_back(load_of_day(number, day, pour, rules));
    }
    return loads;
}

Check open_discharge(const char* why, const LiftRules& rules) {
    return {.id = check_ids::load_discharge,
            .verdict = Verdict::not_checked,
            .measure = Measure::duration,
            .requirement = "time from batching to the end of discharge",
            .source = rules.discharge_h.source,
            .message = {why, {}}};
}

/// The load that stands longest between batching and the end of its discharge.
Check discharge_check(const PlacingDay& day, const LiftRules& rules) {
    const auto& slowest = *std::ranges::max_element(
        day.loads, {}, [](const LoadOfDay& load) { return load.ends_h - load.begins_h; });
    if (!slowest.batched_h) {
        return open_discharge("neither 'requirements.placing.haul' in the mix file nor "
                              "'placing.round_trip' is stated: how old a load is when it comes is "
                              "not known",
                              rules);
    }
    Check check = open_discharge("", rules);
    const double limit_h = rules.discharge_h.value;
    check.value = slowest.ends_h - *slowest.batched_h;
    check.limit = Limit{.low = std::nullopt, .high = limit_h};
    const bool late = above(*check.value, limit_h);
    const bool stated = day.haul_by == HaulBy::stated;
    check.verdict = !late ? Verdict::holds : stated ? Verdict::fails : Verdict::watch;
    check.message = {"load {load} of the day is empty {value} after batching{counted}, at most "
                     "{limit}",
                     {quantity("load", {static_cast<double>(slowest.number), Measure::count}),
                      quantity("value", {*check.value, Measure::duration}),
                      word("counted", stated ? "" : ", the whole round trip counted as haul"),
                      quantity("limit", {limit_h, Measure::duration})}};
    const auto late_loads = std::ranges::count_if(
        day.loads, [](const LoadOfDay& load) { return above(load.ends_h, *load.latest_end_h); });
    if (late_loads > 1) {
        check.message.text += "; {late} loads are late";
        check.message.arguments.push_back(
            quantity("late", {static_cast<double>(late_loads), Measure::count}));
    }
    return check;
}

bool every_pace_is_known(const std::vector<UnloadedPart>& parts) {
    return std::ranges::none_of(parts, [](const UnloadedPart& part) { return part.lifts.empty(); });
}

} // namespace

PlacingDay placing_day(const std::vector<UnloadedPart>& parts,
                       const std::optional<TruckedPour>& trucked, const LiftRules& rules) {
    PlacingDay day{.discharge = open_discharge("'placing.output' is not stated: how fast a part "
                                               "takes its loads is not known",
                                               rules)};
    if (!every_pace_is_known(parts)) {
        return day;
    }
    day.by_output = std::ranges::all_of(parts, &UnloadedPart::by_output);
    day.lifts = lifts_one_after_the_other(parts);
    day.ends_h = day.lifts.empty() ? 0 : day.lifts.back().ends_h;
    if (!trucked) {
        day.discharge = open_discharge("'placing.truck' is not stated: how many loads come, and "
                                       "when, is not known",
                                       rules);
        return day;
    }
    day.haul_by = trucked->haul_h         ? HaulBy::stated
                  : trucked->round_trip_h ? HaulBy::round_trip
                                          : HaulBy::unknown;
    day.loads = loads_of_day(day.lifts, *trucked, rules);
    day.discharge = discharge_check(day, rules);
    watch_planned_pace(day.by_output, day.discharge);
    return day;
}

} // namespace boardmark::core
