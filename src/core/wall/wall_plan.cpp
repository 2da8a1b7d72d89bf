#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include "../layout/layout_checks.hpp"
#include "../layout/wall_layout.hpp"
#include "cast_part_checks.hpp"
#include "evaporation_of_wall.hpp"
#include "flow_of_pour.hpp"
#include "form_forces.hpp"
#include "run_plan.hpp"
#include "salt_checks.hpp"
#include "temperature_of_wall.hpp"
#include "trucks.hpp"
#include "wall_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

double thinnest_mm(const std::vector<CastPart>& parts) {
    return std::ranges::min_element(parts, {}, &CastPart::thinnest_mm)->thinnest_mm();
}

/// Joints, steel and lifts of runs and planters.
void plan_runs(const Wall& wall, const Tables& tables, WallPlan& plan) {
    JointStations stations;
    for (const WallRun& run : wall.runs) {
        plan.runs.push_back(run_plan(wall, run, formed_wall(run, wall.placing, tables),
                                     joints_of(run, wall.joints, tables), tables, plan.checks));
    }
    for (const Planter& planter : wall.planters) {
        plan.runs.push_back(planter_plan(wall, planter, tables, plan.checks));
    }
    for (const RunPlan& run : plan.runs) {
        stations[run.wall] = run.joints.positions_m;
    }
    plan.boards = board_order(wall, stations);
}

void add_cautions(const Wall& wall, WallPlan& plan) {
    plan.cautions.push_back(form_caution());
    for (Phrase& uplift : uplift_cautions(wall)) {
        plan.cautions.push_back(std::move(uplift));
    }
    plan.cautions.push_back({"Tie loads are compared with working loads, never with breaking "
                             "loads; check which of the two the tie's data sheet states.",
                             {}});
    plan.cautions.push_back({"Minimum steel is the code's, for cracks and shrinkage, not for earth "
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

const FormPressure& governing_pressure(const FormForces& forces) {
    return forces.pressures.at(forces.governing);
}

std::optional<double> hardest_tie_kn(const FormForces& forces) {
    std::optional<double> hardest;
    for (const TieRowLoad& row : forces.tie_rows) {
        hardest = std::max(hardest.value_or(0), row.load_kn);
    }
    return hardest;
}

Outcome<WallPlan> plan_wall(const CompleteWall& complete_wall, const Tables& tables) {
    const Wall& wall = *complete_wall;
    auto proportions = proportions_of(wall.mix, tables);
    if (!proportions) {
        return std::move(proportions).why();
    }
    WallPlan plan{.proportions = *std::move(proportions),
                  .mix_checks = {},
                  .quantities = wall_quantities(wall, tables.practice),
                  .coursing = coursing(wall, tables.practice),
                  .boards = {},
                  .forces = {},
                  .runs = {},
                  .after = {},
                  .checks = {},
                  .cautions = {}};
    const std::vector<CastPart> parts = cast_parts(wall);
    plan.mix_checks = assess(wall.mix, plan.proportions, tables);
    for (const FormedWall& formed : formed_walls(wall, tables)) {
        plan.forces.push_back(form_forces(wall, formed, plan.proportions, tables, plan.checks));
    }
    plan_runs(wall, tables, plan);
    plan.layout = wall_layout(wall, plan, tables.practice);
    check_stone_in_parts(parts, plan.proportions.selection.nominal_max_size_mm, tables,
                         plan.checks);
    plan.checks.push_back(check_section_of_mix(wall, parts));
    check_low_parts(wall, parts, plan.proportions, tables, plan.checks);
    const ConcreteTemperatures temperatures = concrete_temperatures(wall, plan.proportions);
    plan.placed_c = placing_temperatures(thinnest_mm(parts), tables.weather);
    plan.checks.push_back(
        check_placing_temperature(temperatures, thinnest_mm(parts), tables.weather));
    watch_mass_heat(wall, temperatures, plan.proportions, tables, plan.mix_checks);
    watch_setting(wall, temperatures, tables.weather, plan.checks);
    if (auto flow = check_flow_class(wall, form_case(wall, plan.proportions, 1, 1, tables),
                                     tables.forms->flow)) {
        plan.checks.push_back(std::move(*flow));
    }
    for (Check& check : salt_checks(wall, tables)) {
        plan.checks.push_back(std::move(check));
    }
    plan.evaporation = evaporation_of(wall, temperatures, tables);
    if (plan.evaporation) {
        plan.checks.push_back(evaporation_check(wall, *plan.evaporation, plan.proportions, tables));
    } else {
        plan.checks.push_back(missing_evaporation());
    }
    plan.after = after_placing(wall, plan.proportions, tables, plan.checks);
    add_missing_checks(wall, parts, plan.checks);
    for (Check& check : layout_checks(wall, plan, tables.practice)) {
        plan.checks.push_back(std::move(check));
    }
    plan.trucks = trucks_of(wall, plan, tables);
    if (plan.trucks) {
        plan.checks.insert(plan.checks.end(), plan.trucks->checks.begin(),
                           plan.trucks->checks.end());
    } else {
        for (const CastPart& part : parts) {
            plan.checks.push_back(of_wall(part.name, missing_trucks(wall)));
        }
    }
    const bool full_head = std::ranges::any_of(plan.forces, [](const FormForces& forces) {
        return governing_pressure(forces).governed_by == PressureGovernor::liquid_head;
    });
    plan.added_cost =
        added_cost({.wall = wall,
                    .quantities = plan.quantities,
                    .boards = plan.boards,
                    .full_head = full_head,
                    .plain_strip_h = plan.after.strip.earliest_h(),
                    .reducer_per_m3 = reducer_less_binder_per_m3(wall, plan.proportions, tables)});
    add_cautions(wall, plan);
    return plan;
}

} // namespace boardmark::core
