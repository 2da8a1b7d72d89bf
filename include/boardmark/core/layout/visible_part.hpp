#pragma once

#include <boardmark/core/layout/elevation.hpp>

#include <vector>

namespace boardmark::core {

/// The top of a face from left to right; steps are two points at one station.
std::vector<DrawnPoint> top_of(const Elevation& elevation);

/// What of a board lies below the top of its face: its corners, closed. Openings are not taken out.
std::vector<DrawnPoint> visible_part(const LaidBoard& board, const Elevation& elevation);

} // namespace boardmark::core
