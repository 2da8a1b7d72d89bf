#include "plan_at_height.hpp"

#include "concrete_between.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace boardmark::core {
namespace {

/// How much of a stretch's length stands just below a height.
double standing_m(const Stretch& stretch, double height_m) {
    const double length_m = stretch.to_m - stretch.from_m;
    const auto [low_m, high_m] = std::minmax(stretch.from_height_m, stretch.to_height_m);
    if (height_m <= low_m) {
        return length_m;
    }
    return height_m > high_m || low_m == high_m ? 0
                                                : length_m * (high_m - height_m) / (high_m - low_m);
}

double standing_m(const Profile& profile, double height_m) {
    double length_m = 0;
    for (const Stretch& stretch : profile.stretches) {
        length_m += standing_m(stretch, height_m);
    }
    return length_m;
}

/// Whether an opening may be met just below a height; without a sill it may be anywhere.
bool may_be_at(const Opening& opening, double height_m) {
    return !opening.sill_m ||
           (height_m > *opening.sill_m && height_m <= *opening.sill_m + opening.height_mm / 1000);
}

/// Stretches of length that openings of stated stations may take just below a height.
std::vector<Reach> taken_stretches(const Opening& opening, const Profile& profile,
                                   double height_m) {
    std::vector<Reach> stretches;
    const double width_m = opening.width_mm / 1000;
    for (const double station_m : opening.at_m) {
        if (may_be_at(opening, height_m) &&
            profile.height_at(station_m + width_m / 2) >= height_m) {
            stretches.push_back({station_m, station_m + width_m});
        }
    }
    return stretches;
}

/// Of one opening without stations as many stand just below a height as leave a sliver of it.
double taken_anywhere_m(const Opening& opening, double height_m, double left_m) {
    const double width_m = opening.width_mm / 1000;
    return opening.at_m.empty() && may_be_at(opening, height_m)
               ? width_m * std::clamp(std::floor((left_m - sliver_m) / width_m), 0.0,
                                      static_cast<double>(opening.count))
               : 0;
}

/// The length that openings through the run leave just below a height. Two of which one's height is
/// not known may share a station, but no height.
double left_beside_m(const WallRun& run, const Profile& profile, double height_m, bool all) {
    std::vector<Reach> taken;
    for (const Opening& opening : run.openings) {
        if (!opening.depth_mm && (all || opening.sill_m)) {
            const auto own = taken_stretches(opening, profile, height_m);
            taken.insert(taken.end(), own.begin(), own.end());
        }
    }
    std::ranges::sort(taken, {}, &Reach::low_m);
    double left_m = standing_m(profile, height_m);
    double reached_m = 0;
    for (const Reach& one : taken) {
        left_m -= std::max(0.0, one.high_m - std::max(one.low_m, reached_m));
        reached_m = std::max(reached_m, one.high_m);
    }
    for (const Opening& opening : run.openings) {
        left_m -= opening.depth_mm || !all ? 0 : taken_anywhere_m(opening, height_m, left_m);
    }
    return left_m;
}

} // namespace

std::optional<double> plan_just_below_m2(const WallRun& run, const Profile& profile,
                                         double height_m) {
    if (left_beside_m(run, profile, height_m, false) < sliver_m) {
        return std::nullopt;
    }
    const double thickness_m = profile.thickness_at(height_m);
    const double left_m = left_beside_m(run, profile, height_m, true);
    double plan_m2 = left_m * thickness_m;
    for (const Opening& opening : run.openings) {
        if (opening.depth_mm) {
            double niches_m = taken_anywhere_m(opening, height_m, left_m);
            for (const Reach& one : taken_stretches(opening, profile, height_m)) {
                niches_m += one.high_m - one.low_m;
            }
            plan_m2 -= niches_m * *opening.depth_mm / 1000;
        }
    }
    return std::max(plan_m2, sliver_m * thickness_m);
}

} // namespace boardmark::core
