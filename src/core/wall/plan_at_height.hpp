#pragma once

#include "profile.hpp"

#include <optional>

namespace boardmark::core {

/// Narrower than this nothing stands beside an opening.
constexpr double sliver_m = 0.001;

/// Plan area of a run just below a height, m2. Openings of unknown height or place are taken to be
/// there, as many as leave a sliver. Nothing where openings are known to leave no concrete at all.
std::optional<double> plan_just_below_m2(const WallRun& run, const Profile& profile,
                                         double height_m);

} // namespace boardmark::core
