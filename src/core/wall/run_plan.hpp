#pragma once

#include <boardmark/core/wall_plan.hpp>

namespace boardmark::core {

/// Contraction joints of a run: at changes of height and between them by the rules.
JointLayout joints_of(const WallRun& run, const JointWishes& wishes, const Tables& tables);

/// Joints, steel and lifts of a run; its checks are appended.
RunPlan run_plan(const Wall& wall, const WallRun& run, const Tables& tables,
                 std::vector<Check>& checks);

} // namespace boardmark::core
