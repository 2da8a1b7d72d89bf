#include <boardmark/core/proportion.hpp>
#include <boardmark/core/wall_plan.hpp>

#include "../phrases.hpp"
#include "run_plan.hpp"
#include "wall_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

std::vector<FormedWall> formed_walls(const Wall& wall) {
    std::vector<FormedWall> formed;
    for (const WallRun& run : wall.runs) {
        formed.push_back({run.name, greatest_height_m(run),
                          run.length_m * (run.thickness_mm + run.bottom_thickness_mm) / 2000});
    }
    for (const Planter& planter : wall.planters) {
        const double thickness_m = planter.thickness_mm / 1000;
        const double middle_m = 2 * (planter.length_m + planter.width_m) - 4 * thickness_m;
        formed.push_back({planter.name, planter.height_m, middle_m * thickness_m});
    }
    return formed;
}

double thinnest_mm(const Wall& wall) {
    double thickness_mm = wall.runs.front().thickness_mm;
    for (const WallRun& run : wall.runs) {
        thickness_mm = std::min(thickness_mm, run.thickness_mm);
    }
    for (const Planter& planter : wall.planters) {
        thickness_mm = std::min(thickness_mm, planter.thickness_mm);
    }
    return thickness_mm;
}

std::optional<Evaporation> evaporation_of(const WallPlacing& placing, const Tables& tables) {
    if (!placing.concrete_c || !placing.air_c || !placing.humidity_percent || !placing.wind_km_h) {
        return std::nullopt;
    }
    return evaporation(
        {*placing.concrete_c, *placing.air_c, *placing.humidity_percent, *placing.wind_km_h},
        tables.weather);
}

/// Trucks for the highest run, at the crew's output or as fast as the concrete may rise.
std::optional<TruckPlan> trucks_of(const Wall& wall, const WallPlan& plan, const Tables& tables) {
    const WallPlacing& placing = wall.placing;
    const auto formed = formed_walls(wall);
    const double area_m2 =
        std::ranges::max_element(formed, {}, &FormedWall::height_m)->plan_area_m2;
    std::optional<double> output_m3_h = placing.output_m3_h;
    if (!output_m3_h && placing.rise_m_h) {
        output_m3_h = *placing.rise_m_h * area_m2;
    }
    if (!placing.truck_m3 || !output_m3_h) {
        return std::nullopt;
    }
    TruckedPour pour{.volume_m3 = plan.quantities.order.order_m3,
                     .output_m3_h = *output_m3_h,
                     .truck_m3 = *placing.truck_m3};
    if (placing.round_trip_min) {
        pour.round_trip_h = *placing.round_trip_min / 60;
    }
    return truck_plan(pour, tables.placing.lifts);
}

Check evaporation_check(const Evaporation& found, const Proportions& proportions,
                        const Tables& tables) {
    const bool silica_fume =
        std::ranges::any_of(of_role(proportions, Role::binder), [](const Ingredient* one) {
            return one->material->kind == Kind::silica_fume;
        });
    const TypicalFigure& limit = evaporation_precaution(silica_fume, tables.weather);
    const bool protect = found.high_kg_m2_h >= limit.value;
    return {
        .id = "placing.evaporation",
        .verdict = protect ? Verdict::watch : Verdict::holds,
        .value = found.kg_m2_h,
        .limit = Limit{.low = std::nullopt, .high = limit.value},
        .measure = Measure::evaporation,
        .requirement = "drying",
        .source = limit.source,
        .message = {protect ? "{value} may evaporate, give or take {uncertainty}; from {limit} "
                              "protect the top edge, and the faces once stripped"
                            : "{value} may evaporate, give or take {uncertainty}; from {limit} "
                              "precautions are due",
                    {quantity("value", {found.kg_m2_h, Measure::evaporation}),
                     quantity("limit", {limit.value, Measure::evaporation}),
                     quantity("uncertainty", {tables.weather.evaporation.uncertainty_percent.value,
                                              Measure::percent})}}};
}

void add_cautions(WallPlan& plan) {
    plan.cautions.push_back(form_caution());
    plan.cautions.push_back({"Loads of ties are held against working loads, never breaking loads; "
                             "ask the tie's paper which of the two it states.",
                             {}});
    plan.cautions.push_back({"Least steel is the code's for cracks and shrinkage, not for earth "
                             "pressure: a licensed engineer designs the wall.",
                             {}});
    for (const Phrase& caution : plan.proportions.worksheet.cautions) {
        plan.cautions.push_back(caution);
    }
    for (const Worksheet* sheet :
         {&plan.quantities.worksheet, &plan.coursing.worksheet, &plan.boards.worksheet}) {
        plan.cautions.insert(plan.cautions.end(), sheet->cautions.begin(), sheet->cautions.end());
    }
}

} // namespace

std::optional<double> hardest_tie_kn(const FormForces& forces) {
    std::optional<double> hardest;
    for (const TieRowLoad& row : forces.tie_rows) {
        hardest = std::max(hardest.value_or(0), row.load_kn);
    }
    return hardest;
}

WallPlan plan_wall(const Wall& wall, const Tables& tables) {
    WallPlan plan{.proportions = proportions_of(wall.mix, tables),
                  .mix_checks = {},
                  .quantities = wall_quantities(wall, tables.practice),
                  .coursing = coursing(wall, tables.practice),
                  .boards = {},
                  .forces = {},
                  .runs = {},
                  .after = {},
                  .checks = {},
                  .cautions = {}};
    plan.mix_checks = assess(requirements_of(wall.mix), plan.proportions, tables);
    for (const FormedWall& formed : formed_walls(wall)) {
        plan.forces.push_back(form_forces(wall, formed, plan.proportions, tables, plan.checks));
    }
    JointStations stations;
    for (const WallRun& run : wall.runs) {
        plan.runs.push_back(run_plan(wall, run, tables, plan.checks));
        stations[run.name] = plan.runs.back().joints.positions_m;
    }
    plan.boards = board_order(wall, stations);
    plan.checks.push_back(check_placing_temperature(wall, thinnest_mm(wall), tables.weather));
    plan.evaporation = evaporation_of(wall.placing, tables);
    if (plan.evaporation) {
        plan.checks.push_back(evaporation_check(*plan.evaporation, plan.proportions, tables));
    }
    plan.after = after_placing(wall, plan.proportions, tables, plan.checks);
    plan.trucks = trucks_of(wall, plan, tables);
    if (plan.trucks) {
        plan.checks.insert(plan.checks.end(), plan.trucks->checks.begin(),
                           plan.trucks->checks.end());
    }
    const bool full_head = std::ranges::any_of(plan.forces, [](const FormForces& forces) {
        return forces.pressures.front().governed_by == PressureGovernor::liquid_head;
    });
    plan.added_cost =
        added_cost({.wall = wall,
                    .quantities = plan.quantities,
                    .boards = plan.boards,
                    .full_head = full_head,
                    .plain_strip_h = plan.after.strip.earliest_h(),
                    .reducer_per_m3 = reducer_less_binder_per_m3(wall, plan.proportions, tables)});
    add_cautions(plan);
    return plan;
}

} // namespace boardmark::core
