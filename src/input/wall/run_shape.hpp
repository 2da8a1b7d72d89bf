#pragma once

#include <boardmark/core/wall/wall.hpp>

namespace boardmark::input {

/// Two lengths are told apart beyond this: what units lose in conversion is less.
constexpr double shape_tolerance_m = 1e-6;

/// The least height between two stations of a run that has heights.
double least_height_m(const core::WallRun& run, double from_m, double to_m);

/// The thickness at a height above the footing.
double thickness_at_mm(const core::WallRun& run, double height_m);

} // namespace boardmark::input
