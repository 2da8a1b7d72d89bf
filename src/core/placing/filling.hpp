#pragma once

#include <boardmark/core/placing/placing_plan.hpp>

#include <vector>

namespace boardmark::core {

/// All lifts together, m3 and h.
double volume_of(const std::vector<FilledLift>& lifts);
double hours_of(const std::vector<FilledLift>& lifts);

/// The time from the bottom until so much concrete is in, h; of more than the lifts hold, of all.
double filled_after_h(const std::vector<FilledLift>& lifts, double filled_m3);

/// The longest that lifts take for so much concrete in one go, wherever in the form it begins, h.
/// Each lift fills evenly.
///
/// @param taken_m3 > 0, at most all of the lifts
double slowest_h(const std::vector<FilledLift>& lifts, double taken_m3);

} // namespace boardmark::core
