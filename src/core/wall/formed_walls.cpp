#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/course.hpp>

#include "../forms/pressure_rules.hpp"
#include "concrete_between.hpp"
#include "form_forces.hpp"
#include "pier.hpp"
#include "plan_area.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Where the head of concrete, at the heaviest that is still normal, reaches the least pressure
/// that any form is made for: higher up no rise makes it press harder.
double head_of_least_pressure_m(const AciFormPressure& aci) {
    return aci.floor_kpa.value / weight_kn_m3(aci.heavy_above_kg_m3);
}

std::optional<std::vector<double>> lines_of_lifts(const Wall& wall, double height_m) {
    const bool lie = wall.boards && wall.boards->direction == BoardDirection::horizontal;
    return lie && wall.layout.lifts == LiftLines::on_board_joints
               ? std::optional{board_joints_m(height_m, *wall.boards, wall.layout.courses_from)}
               : std::nullopt;
}

} // namespace

FormedWall formed_wall(const WallRun& run, const WallPlacing& placing, const Tables& tables) {
    return {.name = run.name,
            .height_m = greatest_height_m(run),
            .plan = {run.length_m, run.bottom_thickness_mm / 1000},
            .pier = shortest_pier(run),
            .smallest_plan_m2 = smallest_plan_m2(run, head_of_least_pressure_m(tables.forms->aci)),
            .smallest_part_m2 = smallest_part_m2(run),
            .volume_m3 =
                [run](double low_m, double high_m) {
                    return concrete_between_m3(run, {low_m, high_m});
                },
            .output_m3_h = run.output_m3_h ? run.output_m3_h : placing.output_m3_h};
}

FormedWall formed_wall(const Planter& planter, const WallPlacing& placing) {
    return {.name = planter.name,
            .height_m = planter.height_m,
            .plan = {std::max(planter.length_m, planter.width_m),
                     std::min(planter.length_m, planter.width_m)},
            .pier = {},
            .smallest_plan_m2 = smallest_plan_m2(planter),
            .smallest_part_m2 = {},
            .volume_m3 =
                [planter](double low_m, double high_m) {
                    return concrete_between_m3(planter, {low_m, high_m});
                },
            .output_m3_h = planter.output_m3_h ? planter.output_m3_h : placing.output_m3_h};
}

std::vector<FormedWall> formed_walls(const Wall& wall, const Tables& tables) {
    std::vector<FormedWall> formed;
    for (const WallRun& run : wall.runs) {
        formed.push_back(formed_wall(run, wall.placing, tables));
    }
    for (const Planter& planter : wall.planters) {
        formed.push_back(formed_wall(planter, wall.placing));
    }
    return formed;
}

std::vector<Phrase> uplift_cautions(const Wall& wall) {
    std::vector<Phrase> cautions;
    const bool lifted = std::ranges::any_of(wall.runs, [](const WallRun& run) {
        return run.thickness_mm != run.bottom_thickness_mm ||
               std::ranges::any_of(run.openings, [](const Opening& opening) {
                   return !opening.sill_m || *opening.sill_m > 0;
               });
    });
    if (lifted) {
        cautions.push_back({"Fresh concrete lifts a battered form and a box-out: they are held "
                            "down, which ties alone do not do.",
                            {}});
    }
    if (std::ranges::any_of(wall.planters, [](const Planter& one) { return one.floor_mm > 0; })) {
        cautions.push_back({"Where floor and walls of a planter are placed in one, the inner form "
                            "floats, or concrete wells up in the floor: the inner form is held "
                            "down.",
                            {}});
    }
    return cautions;
}

PouredWall poured_wall(const FormedWall& formed, const Wall& wall) {
    PouredWall poured = poured_wall(formed, wall.placing);
    poured.haul_h = requirements_of(wall.mix).placing.haul_h;
    poured.lines_m = lines_of_lifts(wall, formed.height_m);
    return poured;
}

PouredWall poured_wall(const FormedWall& formed, const WallPlacing& placing) {
    PouredWall poured{.height_m = formed.height_m,
                      .plan_area_m2 = formed.smallest_plan_m2,
                      .volume_m3 = formed.volume_m3,
                      .rise_m_h = placing.rise_m_h,
                      .output_m3_h = formed.output_m3_h,
                      .lift_m = placing.lift_m,
                      .setting_h = placing.setting_h};
    if (placing.round_trip_min) {
        poured.round_trip_h = *placing.round_trip_min / 60;
    }
    return poured;
}

} // namespace boardmark::core
