#pragma once

#include <boardmark/core/mix/proportions.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// How the absolute volumes of the ingredients add up to the concrete, one bar after the other.
/// Nothing where a volume is not known.
Flow volumes_figure(const core::Proportions& proportions, core::UnitSystem system);

} // namespace boardmark::report
