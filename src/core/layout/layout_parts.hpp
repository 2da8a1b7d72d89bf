#pragma once

#include <boardmark/core/layout/wall_layout.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include <vector>

namespace boardmark::core {

/// What the elevations and sections of a wall are drawn from.
struct LayoutCase {
    const Wall& wall;
    const WallPlan& plan;
    double sliver_percent; ///< of a course: a board narrower than that does not look meant
};

std::vector<Elevation> elevations_of(const LayoutCase& drawn, const WallRun& run);
std::vector<Elevation> elevations_of(const LayoutCase& drawn, const Planter& planter);
std::vector<Elevation> elevations_of(const LayoutCase& drawn, const BenchTop& bench);

WallSection section_of(const LayoutCase& drawn, const WallRun& run);
WallSection section_of(const LayoutCase& drawn, const Planter& planter);
WallSection section_of(const BenchTop& bench);

/// Of the run or planter of that name.
const FormForces& forces_on(const WallPlan& plan, const std::string& part);
const RunPlan& run_plan_of(const WallPlan& plan, const std::string& part);

/// Heights of the lines between its lifts.
std::vector<double> lift_lines_m(const WallPlan& plan, const std::string& part);

/// Courses of boards that lie and boards that stand which are too narrow to look meant.
std::vector<Sliver> slivers_of(const LayoutCase& drawn, const Elevation& elevation);

} // namespace boardmark::core
