#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// The envelope of pressure on the highest form, by each method, with the caution beneath it.
/// Nothing without forms.
Flow pressure_figure(const std::vector<core::FormForces>& forces, core::UnitSystem system);

} // namespace boardmark::report
