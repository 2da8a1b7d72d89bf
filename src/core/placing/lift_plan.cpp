#include <boardmark/core/placing/placing_plan.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "filling.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double minutes_in_hour = 60;

double volume_m3(const PouredWall& wall, double low_m, double high_m) {
    return wall.volume_m3 ? wall.volume_m3(low_m, high_m) : wall.plan_area_m2 * (high_m - low_m);
}

/// The least number of equal lifts not above the one that is stated, else the usual.
int lifts_of(const PouredWall& wall, const LiftRules& rules) {
    const double most_m = wall.lift_m.value_or(rules.most_mm.value / 1000);
    return std::max(1, static_cast<int>(std::ceil(wall.height_m / most_m - relative_rounding)));
}

double longest_wait_h(const PouredWall& wall, const LiftRules& rules) {
    return wall.setting_h ? *wall.setting_h * rules.part_of_setting_percent.value / 100
                          : rules.between_lifts_h.value;
}

Check height_check(double lift_mm, const PouredWall& wall, const LiftRules& rules) {
    const TypicalFigure& most = wall.exposed ? rules.most_architectural_mm : rules.most_mm;
    const bool high = above(lift_mm, most.value);
    const bool low = below(lift_mm, rules.least_mm.value);
    return {.id = check_ids::lift_height,
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
}

Check time_check(std::optional<double> between_h, const PouredWall& wall, const LiftRules& rules) {
    const double longest_h = longest_wait_h(wall, rules);
    const TypicalFigure& rule =
        wall.setting_h ? rules.part_of_setting_percent : rules.between_lifts_h;
    Check check{.id = check_ids::lift_time,
                .verdict = Verdict::not_checked,
                .measure = Measure::duration,
                .requirement = "lifts knit together",
                .source = rule.source,
                .message = {"neither a rate of rise nor the crew's output is stated", {}}};
    if (!between_h) {
        return check;
    }
    const bool late = above(*between_h, longest_h);
    check.value = *between_h;
    check.limit = Limit{.low = std::nullopt, .high = longest_h};
    // Without a stated setting time the bound is a rule of thumb: no reason to fail a plan, none
    // to trust it.
    check.verdict = !wall.setting_h ? Verdict::watch : late ? Verdict::fails : Verdict::holds;
    check.message = {wall.setting_h ? "{between} between lifts, at most {longest} of {setting} to "
                                      "setting"
                                    : "{between} between lifts; {longest} is a rule of thumb, for "
                                      "'placing.setting', the time to setting at the concrete's "
                                      "temperature, is not stated",
                     {quantity("between", {*between_h, Measure::duration}),
                      quantity("longest", {longest_h, Measure::duration})}};
    if (late) {
        check.message.text += ": a cold joint shows on the face. Pour shorter runs, place faster, "
                              "or retard";
    }
    if (wall.setting_h) {
        check.message.arguments.push_back(
            quantity("setting", {*wall.setting_h, Measure::duration}));
    }
    return check;
}

} // namespace

std::vector<FilledLift> filled_lifts(const PouredWall& wall, const LiftRules& rules) {
    std::vector<FilledLift> filled;
    const int lifts = lifts_of(wall, rules);
    const double lift_m = wall.height_m / lifts;
    for (int lift = 0; (wall.rise_m_h || wall.output_m3_h) && lift < lifts; ++lift) {
        const double takes_m3 = volume_m3(wall, lift * lift_m, (lift + 1) * lift_m);
        const double by_rise_h = wall.rise_m_h ? lift_m / *wall.rise_m_h : 0;
        const double by_output_h = wall.output_m3_h ? takes_m3 / *wall.output_m3_h : 0;
        filled.push_back({takes_m3, std::max(by_rise_h, by_output_h)});
    }
    return filled;
}

LiftPlan lift_plan(const PouredWall& wall, const LiftRules& rules) {
    const int lifts = lifts_of(wall, rules);
    LiftPlan plan{.lifts = lifts,
                  .lift_m = wall.height_m / lifts,
                  .rise_m_h = std::nullopt,
                  .between_lifts_min = std::nullopt,
                  .pour_h = std::nullopt,
                  .longest_wait_min = minutes_in_hour * longest_wait_h(wall, rules),
                  .checks = {height_check(1000 * wall.height_m / lifts, wall, rules)}};
    std::optional<double> between_h;
    if (const auto filled = filled_lifts(wall, rules); !filled.empty()) {
        between_h = std::ranges::max_element(filled, {}, &FilledLift::hours)->hours;
        plan.rise_m_h = plan.lift_m / *between_h;
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
