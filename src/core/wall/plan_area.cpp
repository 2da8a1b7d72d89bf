#include "plan_area.hpp"

#include "plan_at_height.hpp"

#include <algorithm>
#include <vector>

namespace boardmark::core {
namespace {

/// Mean plan area of the highest part of a run. An opening of unknown height is taken to be there.
double mean_of_the_top_m2(const WallRun& run, const Profile& profile, double depth_m) {
    const Reach top{profile.greatest_height_m - depth_m, profile.greatest_height_m};
    double concrete_m3 = concrete_between_m3(run, top);
    for (const Opening& opening : run.openings) {
        if (!opening.sill_m) {
            const double height_m = std::min(depth_m, opening.height_mm / 1000);
            const double thick_m =
                opening.depth_mm ? *opening.depth_mm / 1000 : profile.thickness_at(top.low_m);
            concrete_m3 -= opening.count * opening.width_mm / 1000 * thick_m * height_m;
        }
    }
    return std::max(concrete_m3 / depth_m, sliver_m * profile.top_thickness_m);
}

/// Heights at which the plan area may be least: it shrinks on the way up, and jumps at these.
std::vector<double> turning_heights_m(const WallRun& run, const Profile& profile,
                                      double highest_m) {
    std::vector<double> heights_m{highest_m};
    const auto add = [&](double height_m) {
        if (height_m > 0 && height_m < highest_m) {
            heights_m.push_back(height_m);
        }
    };
    for (const HeightAt& at : run.heights) {
        add(at.height_m);
    }
    for (const Opening& opening : run.openings) {
        if (opening.sill_m) {
            add(*opening.sill_m);
            add(*opening.sill_m + opening.height_mm / 1000);
        }
        for (const double station_m : opening.at_m) {
            add(profile.height_at(station_m + opening.width_mm / 2000));
        }
    }
    return heights_m;
}

} // namespace

double smallest_plan_m2(const WallRun& run, double head_m) {
    const Profile profile = profile_of(run);
    const double depth_m =
        run.top == Top::sloping ? std::min(head_m, profile.greatest_height_m) : 0;
    double least_m2 = depth_m > 0 ? mean_of_the_top_m2(run, profile, depth_m)
                                  : profile.whole().to_m * profile.bottom_thickness_m;
    const double as_it_is_m = profile.greatest_height_m - depth_m;
    if (as_it_is_m > 0) {
        for (const double height_m : turning_heights_m(run, profile, as_it_is_m)) {
            least_m2 =
                std::min(least_m2, plan_just_below_m2(run, profile, height_m).value_or(least_m2));
        }
    }
    return least_m2;
}

double smallest_plan_m2(const Planter& planter) {
    const double thickness_m = planter.thickness_mm / 1000;
    return (2 * (planter.length_m + planter.width_m) - 4 * thickness_m) * thickness_m;
}

} // namespace boardmark::core
