#include "form_forces.hpp"

namespace boardmark::core {

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

} // namespace boardmark::core
