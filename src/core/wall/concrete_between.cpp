#include "concrete_between.hpp"

#include "plan_area.hpp"
#include "profile.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// What two reaches have in common; without length where that is nothing.
Reach shared_reach(Reach one, Reach other) {
    const double low_m = std::max(one.low_m, other.low_m);
    return {low_m, std::max(low_m, std::min(one.high_m, other.high_m))};
}

double length_m(Reach reach) {
    return reach.high_m - reach.low_m;
}

/// What an opening of known height takes from a reach of heights, m3.
double opened_m3(const Opening& opening, const Profile& profile, Reach heights) {
    const Reach own =
        shared_reach({*opening.sill_m, *opening.sill_m + opening.height_mm / 1000}, heights);
    const double depth_m = opening.depth_mm ? *opening.depth_mm / 1000
                                            : profile.thickness_at((own.low_m + own.high_m) / 2);
    return opening.count * opening.width_mm / 1000 * depth_m * length_m(own);
}

} // namespace

double concrete_between_m3(const WallRun& run, Reach heights) {
    const Profile profile = profile_of(run);
    FaceBox box = profile.whole();
    box.low_m = heights.low_m;
    box.high_m = heights.high_m;
    double concrete_m3 = profile.volume_m3(box);
    for (const Opening& opening : run.openings) {
        concrete_m3 -= opening.sill_m ? opened_m3(opening, profile, heights) : 0;
    }
    return std::max(0.0, concrete_m3);
}

double concrete_between_m3(const Planter& planter, Reach heights) {
    const double floor_m = length_m(shared_reach({0, planter.floor_mm / 1000}, heights));
    return planter.length_m * planter.width_m * floor_m +
           smallest_plan_m2(planter) * (length_m(heights) - floor_m);
}

} // namespace boardmark::core
