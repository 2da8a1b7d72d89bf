#include "least_dimensions.hpp"

#include <algorithm>

namespace boardmark::core {

std::vector<double> least_dimensions_mm(const Wall& wall) {
    std::vector<double> all;
    for (const WallRun& run : wall.runs) {
        all.insert(all.end(), {run.thickness_mm, run.bottom_thickness_mm});
        if (run.footing) {
            all.push_back(std::min(run.footing->depth_mm, run.footing->width_mm));
        }
    }
    for (const Planter& planter : wall.planters) {
        all.push_back(planter.thickness_mm);
        if (planter.floor_mm > 0) {
            all.push_back(planter.floor_mm);
        }
    }
    for (const BenchTop& bench : wall.benches) {
        all.push_back(bench.thickness_mm);
    }
    return all;
}

} // namespace boardmark::core
