#pragma once

#include <boardmark/core/mix/kind.hpp>
#include <boardmark/core/trial/trial_tables.hpp>

namespace boardmark::core {

/// How far what is weighed may be from its target, percent of it. ASTM C94.
const TypicalFigure& batching_tolerance(Role role, const BatchingTolerances& tolerances);

/// The same of an amount, kg.
double batching_tolerance_kg(Role role, double kg, const BatchingTolerances& tolerances);

} // namespace boardmark::core
