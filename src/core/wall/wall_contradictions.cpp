#include <boardmark/core/wall/wall_contradictions.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace boardmark::core {
namespace {

void take_thinner(std::optional<double>& thinnest, double thickness_mm) {
    if (thickness_mm > 0) {
        thinnest = std::min(thinnest.value_or(thickness_mm), thickness_mm);
    }
}

double bar_mm(const std::optional<BarGrid>& grid) {
    return grid ? grid->bar_mm : 0;
}

} // namespace

std::optional<double> thinnest_mm(const WallWork& wall) {
    std::optional<double> thinnest;
    for (const WallRun& run : wall.runs) {
        take_thinner(thinnest, run.thickness_mm);
    }
    return thinnest;
}

std::optional<double> thinnest_formed_mm(const WallWork& wall) {
    auto thinnest = thinnest_mm(wall);
    for (const Planter& planter : wall.planters) {
        take_thinner(thinnest, planter.thickness_mm);
    }
    return thinnest;
}

bool is_thinner_at_foot(const WallRun& run) {
    return run.bottom_thickness_mm < run.thickness_mm;
}

bool is_narrower_than_wall(const Footing& footing, const WallRun& run) {
    return footing.width_mm < run.bottom_thickness_mm;
}

bool cones_meet(const Ties& ties, const WallWork& wall) {
    const auto thinnest = thinnest_formed_mm(wall);
    const double cone_mm = ties.cone_mm.value_or(0);
    return cone_mm > 0 && thinnest && 2 * cone_mm >= *thinnest;
}

bool has_two_loads(const Ties& ties) {
    return ties.working_load_kn && ties.breaking_load_kn;
}

bool cuts_wall_in_two(const JointWishes& joints, const WallWork& wall) {
    const auto thinnest = thinnest_formed_mm(wall);
    return joints.groove_mm && thinnest && *joints.groove_mm >= *thinnest;
}

bool touch(const BarGrid& grid) {
    return grid.spacing_mm <= grid.bar_mm;
}

bool is_area_of_another(const BarGrid& grid) {
    const double circle_mm2 = std::numbers::pi / 4 * grid.bar_mm * grid.bar_mm;
    return std::abs(grid.area_mm2 - circle_mm2) > circle_mm2 / 10;
}

bool do_not_fit(const Reinforcement& bars, const WallWork& wall) {
    const auto thinnest = thinnest_mm(wall);
    const double layer_mm = bar_mm(bars.vertical) + bar_mm(bars.horizontal);
    return bars.cover_mm && thinnest && 2 * *bars.cover_mm + bars.layers * layer_mm > *thinnest;
}

bool lie_bare(const Reinforcement& bars, const WallWork& wall) {
    return bars.cover_mm && wall.boards && wall.boards->relief_mm >= *bars.cover_mm;
}

} // namespace boardmark::core
