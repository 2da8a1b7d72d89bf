#pragma once

#include <boardmark/core/layout/elevation.hpp>
#include <boardmark/core/mix/mix.hpp>

#include "view.hpp"

#include <vector>

namespace boardmark::report {

/// How a face is drawn.
struct FaceLook {
    double scale;
    double most_width_mm;
    bool turns_at_ends; ///< the next face begins at a corner: boards are mitred there
    core::UnitSystem system;
};

/// How many views a face takes at a scale. Costs nothing beside drawing them.
int views_needed(const core::Elevation& elevation, double scale, double most_width_mm);

/// A face at a scale; too long a one in several views with match lines between them. Each entry of
/// the geometry is counted in one of them.
std::vector<View> elevation_views(const core::Elevation& elevation, const FaceLook& look);

} // namespace boardmark::report
