#pragma once

#include <boardmark/core/layout/wall_section.hpp>
#include <boardmark/core/mix/mix.hpp>

#include "view.hpp"

namespace boardmark::report {

/// A part cut across, its bars, ties and lifts, with the pressure on its form beside it.
View section_view(const core::WallSection& section, double scale, core::UnitSystem system);

} // namespace boardmark::report
