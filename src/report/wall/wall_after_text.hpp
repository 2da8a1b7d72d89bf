#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// Curing, stripping of faces, soffits, and the plan for the cold.
Flow text_of_after(const core::AfterPlacing& after, core::UnitSystem system);

} // namespace boardmark::report
