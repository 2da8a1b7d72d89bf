#include <boardmark/core/basis/tables.hpp>

#include "run_plan.hpp"

namespace boardmark::core {
namespace {

/// The four walls of a planter as one run along their middle line.
WallRun unrolled(const Planter& planter) {
    const double corners_m = 4 * planter.thickness_mm / 1000;
    return {.name = planter.name,
            .length_m = 2 * (planter.length_m + planter.width_m) - corners_m,
            .heights = {{0, planter.height_m}},
            .thickness_mm = planter.thickness_mm,
            .bottom_thickness_mm = planter.thickness_mm,
            .output_m3_h = planter.output_m3_h};
}

} // namespace

JointLayout joints_of(const Planter& planter, const JointWishes& wishes, const Tables& tables) {
    const double side_m = planter.length_m;
    const double half_m = planter.length_m + planter.width_m;
    return joint_layout({.stretches = {{.length_m = 2 * half_m,
                                        .height_m = planter.height_m,
                                        .thickness_mm = planter.thickness_mm}},
                         .corner_at_start = true,
                         .corner_at_end = true,
                         .corners_m = {side_m, half_m, half_m + side_m},
                         .closed = true,
                         .spacing_m = wishes.spacing_m,
                         .groove_mm = wishes.groove_mm},
                        tables.joints->contraction);
}

RunPlan planter_plan(const Wall& wall, const Planter& planter, const Tables& tables,
                     std::vector<Check>& checks) {
    RunPlan plan = run_plan(wall, unrolled(planter), formed_wall(planter, wall.placing),
                            joints_of(planter, wall.joints, tables), tables, checks);
    plan.round_a_planter = true;
    return plan;
}

} // namespace boardmark::core
