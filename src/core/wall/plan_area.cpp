#include "plan_area.hpp"

#include "profile.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace boardmark::core {
namespace {

/// Narrower than this nothing stands beside an opening.
constexpr double sliver_m = 0.001;

double overlap_m(HeightSpan one, HeightSpan other) {
    return std::max(0.0, std::min(one.high_m, other.high_m) - std::max(one.low_m, other.low_m));
}

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

/// The length that an opening takes just below a height, of the length that is left there. Without
/// stations as many stand there as leave a sliver.
double taken_m(const Opening& opening, const Profile& profile, double height_m, double left_m) {
    const double width_m = opening.width_mm / 1000;
    if (!may_be_at(opening, height_m)) {
        return 0;
    }
    if (!opening.at_m.empty()) {
        return width_m * double(std::ranges::count_if(opening.at_m, [&](double station_m) {
                   return profile.height_at(station_m + width_m / 2) >= height_m;
               }));
    }
    return width_m * std::clamp(std::floor((left_m - sliver_m) / width_m), 0.0,
                                static_cast<double>(opening.count));
}

/// Plan area just below a height; nothing where an opening leaves no concrete at all.
std::optional<double> plan_just_below_m2(const WallRun& run, const Profile& profile,
                                         double height_m) {
    const double thickness_m = profile.thickness_at(height_m);
    double left_m = standing_m(profile, height_m);
    for (const Opening& opening : run.openings) {
        left_m -= opening.depth_mm ? 0 : taken_m(opening, profile, height_m, left_m);
    }
    if (left_m < sliver_m) {
        return std::nullopt;
    }
    double plan_m2 = left_m * thickness_m;
    for (const Opening& opening : run.openings) {
        if (opening.depth_mm) {
            plan_m2 -= taken_m(opening, profile, height_m, left_m) * *opening.depth_mm / 1000;
        }
    }
    return std::max(plan_m2, sliver_m * thickness_m);
}

/// What an opening takes from a span of the run, m3.
double taken_m3(const Opening& opening, const Profile& profile, HeightSpan of_opening,
                double high_m) {
    const double middle_m = std::min((of_opening.low_m + of_opening.high_m) / 2, high_m);
    const double depth_m =
        opening.depth_mm ? *opening.depth_mm / 1000 : profile.thickness_at(middle_m);
    return opening.count * opening.width_mm / 1000 * depth_m *
           (of_opening.high_m - of_opening.low_m);
}

double solid_between_m3(const Profile& profile, HeightSpan span) {
    FaceBox box = profile.whole();
    box.low_m = span.low_m;
    box.high_m = span.high_m;
    return profile.volume_m3(box);
}

HeightSpan common(const Opening& opening, HeightSpan span) {
    const HeightSpan own{*opening.sill_m, *opening.sill_m + opening.height_mm / 1000};
    const double low_m = std::max(own.low_m, span.low_m);
    return {low_m, low_m + overlap_m(own, span)};
}

/// Mean plan area of the highest part of a run. An opening of unknown height is taken to be there.
double mean_of_the_top_m2(const WallRun& run, const Profile& profile, double depth_m) {
    const HeightSpan top{profile.greatest_height_m - depth_m, profile.greatest_height_m};
    double concrete_m3 = solid_between_m3(profile, top);
    for (const Opening& opening : run.openings) {
        const HeightSpan taken =
            opening.sill_m
                ? common(opening, top)
                : HeightSpan{top.low_m, top.low_m + std::min(depth_m, opening.height_mm / 1000)};
        concrete_m3 -= taken_m3(opening, profile, taken, top.high_m);
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

double ring_m2(const Planter& planter) {
    const double thickness_m = planter.thickness_mm / 1000;
    return (2 * (planter.length_m + planter.width_m) - 4 * thickness_m) * thickness_m;
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

double concrete_between_m3(const WallRun& run, HeightSpan span) {
    const Profile profile = profile_of(run);
    double concrete_m3 = solid_between_m3(profile, span);
    for (const Opening& opening : run.openings) {
        if (opening.sill_m) {
            concrete_m3 -= taken_m3(opening, profile, common(opening, span), span.high_m);
        }
    }
    return std::max(0.0, concrete_m3);
}

double smallest_plan_m2(const Planter& planter) {
    return ring_m2(planter);
}

double concrete_between_m3(const Planter& planter, HeightSpan span) {
    const HeightSpan floor{0, planter.floor_mm / 1000};
    const double in_floor_m = overlap_m(floor, span);
    return planter.length_m * planter.width_m * in_floor_m +
           ring_m2(planter) * (span.high_m - span.low_m - in_floor_m);
}

} // namespace boardmark::core
