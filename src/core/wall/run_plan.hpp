#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

#include "form_forces.hpp"

namespace boardmark::core {

/// Contraction joints of a run: at changes of height and between them by the rules.
JointLayout joints_of(const WallRun& run, const JointWishes& wishes, const Tables& tables);

/// Those along the four sides of a planter, whose corners are cast in one piece. Stations run round
/// its outside from a corner, a length first.
JointLayout joints_of(const Planter& planter, const JointWishes& wishes, const Tables& tables);

/// Joints, steel and lifts of a run; its checks are appended.
///
/// @param formed  what is filled: of a planter its floor too, which is no part of the run
RunPlan run_plan(const Wall& wall, const WallRun& run, const FormedWall& formed, JointLayout joints,
                 const Tables& tables, std::vector<Check>& checks);

/// The same of a planter's four walls.
RunPlan planter_plan(const Wall& wall, const Planter& planter, const Tables& tables,
                     std::vector<Check>& checks);

} // namespace boardmark::core
