#include "run_plan.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/wall/wall_cover.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "bars_beside.hpp"
#include "behind_niche.hpp"
#include "cast_part_checks.hpp"
#include "form_forces.hpp"
#include "profile.hpp"
#include "wall_checks.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::core {
namespace {

void append(const std::string& wall, const std::vector<Check>& found, std::vector<Check>& checks) {
    for (const Check& check : found) {
        checks.push_back(of_wall(wall, check));
    }
}

std::optional<VibrationPlan> vibration_of(const Wall& wall, const WallRun& run, double lift_m,
                                          const VibrationRules& rules) {
    const auto radius_mm = wall.placing.vibrator_head_mm
                               ? radius_of_action_mm(*wall.placing.vibrator_head_mm, rules)
                               : std::nullopt;
    if (!radius_mm) {
        return std::nullopt;
    }
    return vibration_plan({.length_m = run.length_m,
                           .thickness_mm = run.bottom_thickness_mm,
                           .lift_m = lift_m,
                           .radius_mm = *radius_mm},
                          rules);
}

/// The tip of a vibrator reaches the foot of its lift, and into the one below.
void hold_depth_of_vibrator(const Wall& wall, const VibrationRules& rules, LiftPlan& lifts) {
    const auto& depth_m = wall.placing.vibrator_depth_m;
    const double below_m = lifts.lifts > 1 ? rules.into_lift_below_mm.value / 1000 : 0;
    if (!depth_m || !below(*depth_m, lifts.lift_m + below_m)) {
        return;
    }
    for (Check& check : lifts.checks) {
        if (check.is(check_ids::lift_height)) {
            const bool short_of_it = below(*depth_m, lifts.lift_m);
            check.verdict = worse(check.verdict, short_of_it ? Verdict::fails : Verdict::watch);
            check.message.text += short_of_it
                                      ? "; vibrated {tip} deep ('vibrator.depth') it is not "
                                        "consolidated at its foot"
                                      : "; vibrated {tip} deep ('vibrator.depth') it does not join "
                                        "the lift below, which takes {needed}";
            check.message.arguments.push_back(quantity("tip", {1000 * *depth_m, Measure::length}));
            check.message.arguments.push_back(
                quantity("needed", {1000 * (lifts.lift_m + below_m), Measure::length}));
        }
    }
}

/// The vibrator goes down behind the niches too.
Check vibrator_of(const Wall& wall, const WallRun& run, const VibrationRules& rules) {
    const auto& head_mm = wall.placing.vibrator_head_mm;
    Check check = check_vibrator(*wall.reinforcement, run.thickness_mm, head_mm, rules);
    const auto niches = behind_niches(run);
    const auto least = std::ranges::min_element(niches, {}, &BehindNiche::left_mm);
    if (least != niches.end() && below(least->left_mm, run.thickness_mm)) {
        check = check_vibrator(*wall.reinforcement, least->left_mm, head_mm, rules);
        check.message.text = "behind '{niche}' " + check.message.text;
        check.message.arguments.push_back(word("niche", least->niche));
    }
    return check;
}

/// Least steel by the thickest section, cover and room by the thinnest.
void check_bars(const Wall& wall, const WallRun& run, const Tables& tables, RunPlan& plan,
                std::vector<Check>& checks) {
    const Reinforcement& bars = *wall.reinforcement;
    std::vector<Check> steel = check_wall_steel(
        {.thickness_mm = run.bottom_thickness_mm, .bars = bars, .thinnest_mm = run.thickness_mm},
        tables.joints->steel);
    Check cover = check_part_cover(bars, FaceExposure::weather, wall, tables);
    hold_layers_behind_niches(run, bars, cover,
                              *std::ranges::find_if(steel, [](const Check& check) {
                                  return check.is(check_ids::steel_layers);
                              }));
    for (Check& check : steel) {
        watch_rule_of_another_code(tables.code, check);
    }
    append(run.name, steel, checks);
    hold_cover_behind_niches(run, bars, Verdict::fails, cover);
    hold_cover_at_grooves(plan.joints, bars, cover);
    watch_rule_of_another_code(tables.code, cover);
    checks.push_back(of_wall(run.name, std::move(cover)));
    checks.push_back(of_wall(run.name, vibrator_of(wall, run, tables.placing->vibration)));
    const auto amount = [&](const std::optional<BarGrid>& grid) {
        return grid ? std::optional{steel_mm2_m(*grid, bars.layers)} : std::nullopt;
    };
    plan.vertical_mm2_m = amount(bars.vertical);
    plan.horizontal_mm2_m = amount(bars.horizontal);
}

/// Two openings through the wall or more, as many as panels of a solid wall would be (common
/// practice, no source).
bool has_many_openings(const WallRun& run, const ContractionJointRules& rules) {
    int through = 0;
    for (const Opening& opening : run.openings) {
        through += opening.depth_mm ? 0 : opening.count;
    }
    return through >= 2 && !below(through * rules.spacing_solid_m.value, run.length_m);
}

} // namespace

JointLayout joints_of(const WallRun& run, const JointWishes& wishes, const Tables& tables) {
    JointedWall jointed{
        .stretches = {}, .spacing_m = wishes.spacing_m, .groove_mm = wishes.groove_mm};
    for (const Stretch& stretch : profile_of(run).stretches) {
        jointed.stretches.push_back(
            {.length_m = stretch.to_m - stretch.from_m,
             .height_m = std::min(stretch.from_height_m, stretch.to_height_m),
             .thickness_mm = run.bottom_thickness_mm,
             .thinnest_mm = run.thickness_mm});
    }
    for (const Opening& opening : run.openings) {
        const bool through = !opening.depth_mm;
        jointed.openings_unplaced |= through && opening.at_m.empty();
        for (const double left_m : through ? opening.at_m : std::vector<double>{}) {
            jointed.openings_m.push_back(left_m);
        }
    }
    jointed.many_openings = has_many_openings(run, tables.joints->contraction);
    jointed.corners_assumed = run.corners > 0 && run.corners_at.empty();
    jointed.corner_at_start = jointed.corners_assumed;
    jointed.corner_at_end = jointed.corners_assumed && run.corners > 1;
    for (const Corner& corner : run.corners_at) {
        jointed.corner_at_start = jointed.corner_at_start || same(corner.station_m, 0);
        jointed.corner_at_end = jointed.corner_at_end || same(corner.station_m, run.length_m);
        jointed.corners_m.push_back(corner.station_m);
    }
    return joint_layout(jointed, tables.joints->contraction);
}

RunPlan run_plan(const Wall& wall, const WallRun& run, const FormedWall& formed, JointLayout joints,
                 const Tables& tables, std::vector<Check>& checks) {
    const Reinforcement bars = wall.reinforcement.value_or(Reinforcement{});
    RunPlan plan{.wall = run.name,
                 .joints = std::move(joints),
                 .least_steel = least_steel({.thickness_mm = run.bottom_thickness_mm, .bars = bars},
                                            tables.joints->steel),
                 .lifts = lift_plan(poured_wall(formed, wall), tables.placing->lifts)};
    plan.vibration = vibration_of(wall, run, plan.lifts.lift_m, tables.placing->vibration);
    hold_depth_of_vibrator(wall, tables.placing->vibration, plan.lifts);
    append(run.name, plan.joints.checks, checks);
    append(run.name, plan.lifts.checks, checks);
    if (wall.reinforcement) {
        check_bars(wall, run, tables, plan, checks);
    }
    return plan;
}

} // namespace boardmark::core
