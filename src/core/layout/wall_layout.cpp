#include "wall_layout.hpp"

#include "layout_parts.hpp"

#include <algorithm>

namespace boardmark::core {

const FormForces& forces_on(const WallPlan& plan, const std::string& part) {
    return *std::ranges::find(plan.forces, part, &FormForces::wall);
}

const RunPlan& run_plan_of(const WallPlan& plan, const std::string& part) {
    return *std::ranges::find(plan.runs, part, &RunPlan::wall);
}

std::vector<double> lift_lines_m(const WallPlan& plan, const std::string& part) {
    std::vector<double> lines_m = run_plan_of(plan, part).lifts.tops_m;
    lines_m.pop_back();
    return lines_m;
}

std::string_view name_of(FaceJointKind kind) {
    return kind == FaceJointKind::corner ? "corner" : "contraction";
}

const DrawnTie* hardest_tie(const Elevation& elevation) {
    const auto hardest = std::ranges::max_element(elevation.ties, {}, &DrawnTie::load_kn);
    return hardest == elevation.ties.end() ? nullptr : &*hardest;
}

WallLayout wall_layout(const Wall& wall, const WallPlan& plan, const PracticeTables& practice) {
    const LayoutCase drawn{wall, plan, practice.cut_course_percent.value};
    WallLayout layout;
    const auto add = [&](std::vector<Elevation> elevations) {
        std::ranges::move(elevations, std::back_inserter(layout.elevations));
    };
    for (const WallRun& run : wall.runs) {
        add(elevations_of(drawn, run));
        layout.sections.push_back(section_of(drawn, run));
    }
    for (const Planter& planter : wall.planters) {
        add(elevations_of(drawn, planter));
        layout.sections.push_back(section_of(drawn, planter));
    }
    for (const BenchTop& bench : wall.benches) {
        add(elevations_of(drawn, bench));
        layout.sections.push_back(section_of(bench));
    }
    return layout;
}

} // namespace boardmark::core
