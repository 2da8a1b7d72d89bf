#pragma once

#include <boardmark/core/layout/wall_layout.hpp>
#include <boardmark/core/mix/mix.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// Every face that shows, true to scale where the page is printed; nothing in text. The layout must
/// outlive the flow.
Flow drawn_elevations(const core::WallLayout& layout, core::UnitSystem system);

/// Every part cut across, likewise.
Flow drawn_sections(const core::WallLayout& layout, core::UnitSystem system);

} // namespace boardmark::report
