#pragma once

#include <boardmark/core/wall/wall_plan.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "../writing/flow.hpp"

#include <vector>

namespace boardmark::report {

/// Pressure on each form by each method, the load of its hardest tie, the caution, and why.
Flow text_of_forces(const std::vector<core::FormForces>& all, const TextStyle& style);

/// How fast concrete may rise in each form.
Flow text_of_rise(const std::vector<core::FormForces>& all, core::UnitSystem system);

} // namespace boardmark::report
