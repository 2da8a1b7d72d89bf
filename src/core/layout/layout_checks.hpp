#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include <vector>

namespace boardmark::core {

/// What meets on a face that should not, of each part: `layout.sliver`, `layout.stagger`,
/// `layout.lift_off_board_joint` where boards line it, `layout.joint_in_opening` and
/// `layout.tie_in_joint` where it has both. A face is ugly or hard to form by it, not unsafe: none
/// fails.
std::vector<Check> layout_checks(const Wall& wall, const WallPlan& plan,
                                 const PracticeTables& practice);

} // namespace boardmark::core
