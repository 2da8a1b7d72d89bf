#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// The envelope of pressure on each form, by each method, with the caution beneath it; parts
/// that carry the same share one.
Flow pressure_figures(const std::vector<core::FormForces>& forces, core::UnitSystem system);

} // namespace boardmark::report
