#include <boardmark/core/placing/placing_plan.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/remembered_limit.hpp"
#include "filling.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double minutes_in_hour = 60;

double volume_m3(const PouredWall& wall, double low_m, double high_m) {
    return wall.volume_m3 ? wall.volume_m3(low_m, high_m) : wall.plan_area_m2 * (high_m - low_m);
}

double most_of(const PouredWall& wall, const LiftRules& rules) {
    return wall.lift_m.value_or(rules.most_mm.value / 1000);
}

/// The least number of equal lifts not above the one that is stated, else the usual.
int least_lifts(const PouredWall& wall, const LiftRules& rules) {
    return std::max(
        1, static_cast<int>(std::ceil(wall.height_m / most_of(wall, rules) - relative_rounding)));
}

/// The line nearest to a height, above another.
std::optional<double> nearest_line_m(const PouredWall& wall, double height_m, double above_m) {
    std::optional<double> nearest;
    for (const double line_m : *wall.lines_m) {
        if (above(line_m, above_m) && below(line_m, wall.height_m) &&
            (!nearest || std::abs(line_m - height_m) < std::abs(*nearest - height_m))) {
            nearest = line_m;
        }
    }
    return nearest;
}

/// So many lifts, each ending on the line nearest to where equal ones would end.
std::vector<double> tops_on_lines(const PouredWall& wall, int lifts) {
    std::vector<double> tops_m;
    for (int lift = 1; lift < lifts; ++lift) {
        const double before_m = tops_m.empty() ? 0 : tops_m.back();
        if (const auto line_m = nearest_line_m(wall, wall.height_m * lift / lifts, before_m)) {
            tops_m.push_back(*line_m);
        }
    }
    tops_m.push_back(wall.height_m);
    return tops_m;
}

/// The height of each lift; equal ones are the height's equal parts to the last digit.
std::vector<double> heights_of(const PouredWall& wall, const std::vector<double>& tops_m) {
    if (!wall.lines_m) {
        return std::vector(tops_m.size(), wall.height_m / static_cast<double>(tops_m.size()));
    }
    std::vector<double> heights_m{tops_m.front()};
    for (std::size_t next = 1; next < tops_m.size(); ++next) {
        heights_m.push_back(tops_m[next] - tops_m[next - 1]);
    }
    return heights_m;
}

double highest_lift_m(const PouredWall& wall, const std::vector<double>& tops_m) {
    return std::ranges::max(heights_of(wall, tops_m));
}

/// Where lifts end.
std::vector<double> tops_of(const PouredWall& wall, const LiftRules& rules) {
    int lifts = least_lifts(wall, rules);
    if (!wall.lines_m) {
        std::vector<double> tops_m;
        for (int lift = 1; lift <= lifts; ++lift) {
            tops_m.push_back(lift * (wall.height_m / lifts));
        }
        return tops_m;
    }
    const int most_lifts = static_cast<int>(wall.lines_m->size()) + 1;
    auto tops_m = tops_on_lines(wall, std::min(lifts, most_lifts));
    while (above(highest_lift_m(wall, tops_m), most_of(wall, rules)) && lifts < most_lifts) {
        tops_m = tops_on_lines(wall, ++lifts);
    }
    return tops_m;
}

/// From batching where setting is stated; else between two lifts, a rule of thumb.
double longest_age_h(const PouredWall& wall, const LiftRules& rules) {
    return wall.setting_h ? *wall.setting_h * rules.part_of_setting_percent.value / 100
                          : rules.between_lifts_h.value;
}

/// How old the concrete is on arrival. A truck has to drive back as well: no haul takes more than
/// half the round trip.
std::optional<double> haul_of(const PouredWall& wall) {
    return wall.haul_h         ? wall.haul_h
           : wall.round_trip_h ? std::optional{*wall.round_trip_h / 2}
                               : std::nullopt;
}

double longest_wait_h(const PouredWall& wall, const LiftRules& rules) {
    const double before_h = wall.setting_h ? haul_of(wall).value_or(0) : 0;
    return std::max(0.0, longest_age_h(wall, rules) - before_h);
}

Check height_check(const std::vector<double>& heights_m, const PouredWall& wall,
                   const LiftRules& rules) {
    const double highest_mm = 1000 * std::ranges::max(heights_m);
    const double lowest_mm = 1000 * std::ranges::min(heights_m);
    const TypicalFigure& most = wall.exposed ? rules.most_architectural_mm : rules.most_mm;
    const bool high = above(highest_mm, most.value);
    const bool low = !high && below(lowest_mm, rules.least_mm.value);
    const double lift_mm = low ? lowest_mm : highest_mm;
    Check check{
        .id = check_ids::lift_height,
        .verdict = high  ? Verdict::fails
                   : low ? Verdict::watch
                         : Verdict::holds,
        .value = lift_mm,
        .limit = Limit{rules.least_mm.value, most.value},
        .measure = Measure::length,
        .requirement = "consolidation by internal vibration",
        .source = most.source,
        .message = {high  ? "lifts of {value}, at most {most}: a vibrator does not reach deeper"
                    : low ? "lifts of {value}: below {least} they show as many lines; fewer "
                            "and higher ones are usual"
                          : "lifts of {value}, {least} to {most}",
                    {quantity("value", {lift_mm, Measure::length}),
                     quantity("least", {rules.least_mm.value, Measure::length}),
                     quantity("most", {most.value, Measure::length})}}};
    watch_what_is_from_memory(check);
    return check;
}

constexpr auto cold_joint = ": a cold joint shows on the face. Pour shorter runs, place faster, or "
                            "retard";
constexpr auto ask_for_haul = ": ask the supplier how long the haul is, and state "
                              "'requirements.placing.haul' in the mix file";

/// Without a stated setting time the bound is a rule of thumb: no reason to fail a plan, none to
/// trust it.
void judge_by_thumb(double between_h, double longest_h, Check& check) {
    check.value = between_h;
    check.verdict = Verdict::watch;
    check.message.text =
        "{between} between lifts; {longest} is a rule of thumb, because 'placing.setting', "
        "the time to setting at the concrete's temperature, is not stated";
    check.message.text += above(between_h, longest_h) ? cold_joint : "";
}

/// Setting counts from batching: a lift has the haul behind it when it is placed.
void judge_by_setting(double between_h, double longest_h, const PouredWall& wall, Check& check) {
    const auto before_h = haul_of(wall);
    check.value = between_h + before_h.value_or(0);
    const bool late = above(*check.value, longest_h);
    const bool late_anyhow = above(between_h + wall.haul_h.value_or(0), longest_h);
    check.verdict = late_anyhow         ? Verdict::fails
                    : late || !before_h ? Verdict::watch
                                        : Verdict::holds;
    check.message.text = wall.haul_h ? "{before} of haul and {between} between lifts: {value} from "
                                       "batching, at most {longest} of {setting} to setting"
                         : before_h  ? "half a round trip, {before}, and {between} between lifts: "
                                       "{value} from batching, at most {longest} of {setting} to "
                                       "setting"
                                     : "{between} between lifts and the haul, which is not stated: "
                                       "at most {longest} of {setting} to setting";
    if (late_anyhow) {
        check.message.text += cold_joint;
    } else if (check.verdict == Verdict::watch) {
        check.message.text += ask_for_haul;
    }
    check.message.arguments.push_back(quantity("setting", {*wall.setting_h, Measure::duration}));
    check.message.arguments.push_back(quantity("value", {*check.value, Measure::duration}));
    check.message.arguments.push_back(
        quantity("before", {before_h.value_or(0), Measure::duration}));
}

Check time_check(std::optional<double> between_h, const PouredWall& wall, const LiftRules& rules) {
    const double longest_h = longest_age_h(wall, rules);
    const TypicalFigure& rule =
        wall.setting_h ? rules.part_of_setting_percent : rules.between_lifts_h;
    Check check{.id = check_ids::lift_time,
                .verdict = Verdict::not_checked,
                .measure = Measure::duration,
                .requirement = "lifts join without a cold joint",
                .source = rule.source,
                .message = {"neither a rate of rise nor the crew's output is stated", {}}};
    if (!between_h) {
        return check;
    }
    check.limit = Limit{.low = std::nullopt, .high = longest_h};
    check.message = {"",
                     {quantity("between", {*between_h, Measure::duration}),
                      no_more_than("longest", {longest_h, Measure::duration})}};
    if (wall.setting_h) {
        judge_by_setting(*between_h, longest_h, wall, check);
    } else {
        judge_by_thumb(*between_h, longest_h, check);
    }
    watch_planned_pace(wall.output_m3_h.has_value(), check);
    return check;
}

double slowest_rise_m_h(const std::vector<double>& heights_m,
                        const std::vector<FilledLift>& filled) {
    double slowest_m_h = heights_m.front() / filled.front().hours;
    for (std::size_t lift = 1; lift < filled.size(); ++lift) {
        slowest_m_h = std::min(slowest_m_h, heights_m[lift] / filled[lift].hours);
    }
    return slowest_m_h;
}

} // namespace

std::vector<FilledLift> filled_lifts(const PouredWall& wall, const LiftRules& rules) {
    std::vector<FilledLift> filled;
    const auto tops_m = tops_of(wall, rules);
    const auto heights_m = heights_of(wall, tops_m);
    double low_m = 0;
    for (std::size_t lift = 0; (wall.rise_m_h || wall.output_m3_h) && lift < tops_m.size();
         ++lift) {
        const double takes_m3 = volume_m3(wall, low_m, tops_m[lift]);
        const double by_rise_h = wall.rise_m_h ? heights_m[lift] / *wall.rise_m_h : 0;
        const double by_output_h = wall.output_m3_h ? takes_m3 / *wall.output_m3_h : 0;
        filled.push_back({takes_m3, std::max(by_rise_h, by_output_h)});
        low_m = tops_m[lift];
    }
    return filled;
}

LiftPlan lift_plan(const PouredWall& wall, const LiftRules& rules) {
    const auto tops_m = tops_of(wall, rules);
    const auto heights_m = heights_of(wall, tops_m);
    const int lifts = static_cast<int>(tops_m.size());
    LiftPlan plan{.lifts = lifts,
                  .lift_m = std::ranges::max(heights_m),
                  .tops_m = tops_m,
                  .rise_m_h = std::nullopt,
                  .between_lifts_min = std::nullopt,
                  .pour_h = std::nullopt,
                  .longest_wait_min = minutes_in_hour * longest_wait_h(wall, rules),
                  .checks = {height_check(heights_m, wall, rules)}};
    std::optional<double> between_h;
    if (const auto filled = filled_lifts(wall, rules); !filled.empty()) {
        between_h = std::ranges::max_element(filled, {}, &FilledLift::hours)->hours;
        plan.rise_m_h = slowest_rise_m_h(heights_m, filled);
        plan.pour_h = hours_of(filled);
    }
    if (lifts == 1) {
        return plan;
    }
    if (between_h) {
        plan.between_lifts_min = minutes_in_hour * *between_h;
    }
    plan.checks.push_back(time_check(between_h, wall, rules));
    return plan;
}

} // namespace boardmark::core
