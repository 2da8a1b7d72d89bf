#pragma once

#include <boardmark/core/mix.hpp>
#include <boardmark/core/step.hpp>
#include <boardmark/core/tables.hpp>

namespace boardmark::core {

/// The water that all reducers of a mix save together, percent of the table's water, recorded
/// reducer by reducer. With a slump stated before the high-range reducer, that one saves nothing:
/// its work goes into flow. Throws Unresolved where a dose lies above the reducer's curve.
double water_reduction_percent(const Mix& mix, const Tables& tables, Worksheet& worksheet);

} // namespace boardmark::core
