#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

namespace boardmark::core {

/// Draws a plan whose forces, joints, lifts and boards are known.
WallLayout wall_layout(const Wall& wall, const WallPlan& plan, const PracticeTables& practice);

} // namespace boardmark::core
