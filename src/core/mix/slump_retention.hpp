#pragma once

#include <boardmark/core/mix/material.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// Percent of the slump at mixing that is left after some minutes: linear between the points and
/// from all of it at mixing. Nothing beyond the last point.
std::optional<double> retained_percent(const std::vector<RetentionPoint>& points, double minutes);

} // namespace boardmark::core
