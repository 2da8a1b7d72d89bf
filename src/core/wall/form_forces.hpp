#pragma once

#include <boardmark/core/wall_plan.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// A form to be filled.
struct FormedWall {
    std::string name;
    double height_m;
    double plan_area_m2;
};
/// All forms of the walls: runs, then planters.
std::vector<FormedWall> formed_walls(const Wall& wall);

/// Forces on a form; their checks are appended.
FormForces form_forces(const Wall& wall, const FormedWall& formed, const Proportions& proportions,
                       const Tables& tables, std::vector<Check>& checks);

} // namespace boardmark::core
