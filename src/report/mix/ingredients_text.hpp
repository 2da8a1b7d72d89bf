#pragma once

#include <boardmark/core/mix/proportions.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// The ingredients of 1 yd3 or 1 m3: mass, relative density, volume, and what is measured on site
/// by volume.
Flow ingredients_text(const core::Proportions& proportions, core::UnitSystem system);

/// What each file says of where the figures of its materials come from, and of which it says
/// nothing.
Flow sources_text(const core::Proportions& proportions);

} // namespace boardmark::report
