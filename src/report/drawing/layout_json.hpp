#pragma once

#include <boardmark/core/layout/wall_layout.hpp>

#include "../writing/json_values.hpp"

namespace boardmark::report {

/// Everything that the drawings show, m and kN.
Json json_of(const std::vector<core::Elevation>& elevations);
Json json_of(const std::vector<core::WallSection>& sections);

} // namespace boardmark::report
