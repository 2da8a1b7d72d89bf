#pragma once

#include <boardmark/core/layout/elevation.hpp>
#include <boardmark/core/mix/mix.hpp>

#include "view.hpp"

#include <vector>

namespace boardmark::report {

/// A face at a scale; too long a one in several views with match lines between them. Each entry of
/// the geometry is counted in one of them.
std::vector<View> elevation_views(const core::Elevation& elevation, double scale,
                                  double most_width_mm, core::UnitSystem system);

} // namespace boardmark::report
