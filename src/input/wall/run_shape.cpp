#include "run_shape.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::input {
namespace {

/// The height where a sloping top passes a station; beyond the last one it is level.
double sloping_height_m(const core::WallRun& run, double station_m) {
    const auto next =
        std::ranges::upper_bound(run.heights, station_m, {}, &core::HeightAt::station_m);
    if (next == run.heights.begin() || next == run.heights.end()) {
        return next == run.heights.end() ? run.heights.back().height_m
                                         : run.heights.front().height_m;
    }
    const core::HeightAt& before = *(next - 1);
    return std::lerp(before.height_m, next->height_m,
                     (station_m - before.station_m) / (next->station_m - before.station_m));
}

} // namespace

double least_height_m(const core::WallRun& run, double from_m, double to_m) {
    double least = core::greatest_height_m(run);
    if (run.top == core::Top::sloping) {
        least = std::min(sloping_height_m(run, from_m), sloping_height_m(run, to_m));
    }
    for (auto at = run.heights.begin(); at != run.heights.end(); ++at) {
        const bool is_last = at + 1 == run.heights.end();
        const double end_m = is_last ? run.length_m : (at + 1)->station_m;
        const bool stepped = run.top != core::Top::sloping;
        const bool touched = stepped ? at->station_m < to_m - shape_tolerance_m &&
                                           (end_m > from_m + shape_tolerance_m || is_last)
                                     : at->station_m > from_m && at->station_m < to_m;
        least = touched ? std::min(least, at->height_m) : least;
    }
    return least;
}

double thickness_at_mm(const core::WallRun& run, double height_m) {
    const double part = std::clamp(height_m / core::greatest_height_m(run), 0.0, 1.0);
    return std::lerp(run.bottom_thickness_mm, run.thickness_mm, part);
}

} // namespace boardmark::input
