#include "profile.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace boardmark::core {
namespace {

/// Stations of a stretch inside the box between which its top stays on one side of both edges.
std::vector<double> breaks(const Stretch& stretch, const FaceBox& box) {
    const double from_m = std::max(stretch.from_m, box.from_m);
    const double to_m = std::min(stretch.to_m, box.to_m);
    if (from_m >= to_m) {
        return {};
    }
    std::vector<double> stations{from_m, to_m};
    const double rise_m = stretch.to_height_m - stretch.from_height_m;
    if (rise_m != 0) {
        for (const double level_m : {box.low_m, box.high_m}) {
            const double station_m = stretch.from_m + (stretch.to_m - stretch.from_m) *
                                                          (level_m - stretch.from_height_m) /
                                                          rise_m;
            if (station_m > from_m && station_m < to_m) {
                stations.push_back(station_m);
            }
        }
    }
    std::ranges::sort(stations);
    return stations;
}

/// Integral over the length of what stands between the box's lower edge and the top, where
/// `below(h)` is what stands below h in a slice. Simpson's rule is exact: it is quadratic in h.
template <class Below>
double integral(const Profile& profile, const FaceBox& box, Below below) {
    double sum = 0;
    for (const Stretch& stretch : profile.stretches) {
        const auto slice = [&](double station_m) {
            const double top_m = std::clamp(stretch.height_at(station_m), box.low_m,
                                            std::max(box.low_m, box.high_m));
            return below(top_m) - below(box.low_m);
        };
        const std::vector<double> stations = breaks(stretch, box);
        for (std::size_t next = 1; next < stations.size(); ++next) {
            const double from_m = stations[next - 1];
            const double to_m = stations[next];
            sum += (to_m - from_m) / 6 *
                   (slice(from_m) + 4 * slice((from_m + to_m) / 2) + slice(to_m));
        }
    }
    return sum;
}

} // namespace

double Profile::thickness_at(double height_m) const {
    return bottom_thickness_m +
           (top_thickness_m - bottom_thickness_m) * height_m / greatest_height_m;
}

double Profile::section_m2(double height_m) const {
    return (bottom_thickness_m + thickness_at(height_m)) / 2 * height_m;
}

double Profile::face_m2(const FaceBox& box) const {
    return integral(*this, box, [](double height_m) { return height_m; });
}

double Profile::volume_m3(const FaceBox& box) const {
    return integral(*this, box, [this](double height_m) { return section_m2(height_m); });
}

FaceBox Profile::whole() const {
    return {.from_m = 0, .to_m = stretches.back().to_m, .low_m = 0, .high_m = greatest_height_m};
}

double Profile::height_at(double station_m) const {
    double height_m = 0;
    for (const Stretch& stretch : stretches) {
        if (station_m >= stretch.from_m && station_m <= stretch.to_m) {
            height_m = std::max(height_m, stretch.height_at(station_m));
        }
    }
    return height_m;
}

double Profile::highest_along_m(const FaceBox& strip) const {
    double height_m = 0;
    for (const Stretch& stretch : stretches) {
        const double low_m = std::max(strip.from_m, stretch.from_m);
        const double high_m = std::min(strip.to_m, stretch.to_m);
        if (below(low_m, high_m)) {
            height_m = std::max({height_m, stretch.height_at(low_m), stretch.height_at(high_m)});
        }
    }
    return height_m;
}

double greatest_height_m(const WallRun& run) {
    return std::ranges::max_element(run.heights, {}, &HeightAt::height_m)->height_m;
}

Profile profile_of(const WallRun& run) {
    Profile profile{.stretches = {},
                    .greatest_height_m = core::greatest_height_m(run),
                    .bottom_thickness_m = run.bottom_thickness_mm / 1000,
                    .top_thickness_m = run.thickness_mm / 1000};
    for (std::size_t at = 0; at < run.heights.size(); ++at) {
        const HeightAt& here = run.heights[at];
        const bool last = at + 1 == run.heights.size();
        const double to_m =
            last ? run.length_m : std::min(run.heights[at + 1].station_m, run.length_m);
        const bool slopes = run.top == Top::sloping && !last;
        if (to_m > here.station_m) {
            profile.stretches.push_back(
                {.from_m = here.station_m,
                 .to_m = to_m,
                 .from_height_m = here.height_m,
                 .to_height_m = slopes ? run.heights[at + 1].height_m : here.height_m});
        }
    }
    return profile;
}

std::vector<FaceBox> boxes_of(const Opening& opening, const Profile& profile) {
    const double length_m = profile.whole().to_m;
    const double width_m = opening.width_mm / 1000;
    const double height_m = opening.height_mm / 1000;
    std::vector<double> stations_m = opening.at_m;
    for (int number = 0; opening.at_m.empty() && number < opening.count; ++number) {
        stations_m.push_back((number + 0.5) * length_m / opening.count - width_m / 2);
    }
    std::vector<FaceBox> boxes;
    for (const double station_m : stations_m) {
        const double here_m = profile.height_at(station_m + width_m / 2);
        const double low_m = opening.sill_m.value_or(std::max(here_m - height_m, 0.0) / 2);
        boxes.push_back({.from_m = station_m,
                         .to_m = station_m + width_m,
                         .low_m = low_m,
                         .high_m = low_m + height_m});
    }
    return boxes;
}

} // namespace boardmark::core
