#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>

namespace boardmark::core {

struct Tables;

/// The water that one dose saves at equal slump, percent of the mixing water.
/// Unresolved where the dose or its effect is not known, or the dose lies above the curve.
Outcome<double> reduction_percent(const Dosage& dosage, const Tables& tables);

/// The water that all reducers of a mix save together, percent of the table's water, recorded
/// reducer by reducer. With a slump stated before the high-range reducer, that one saves nothing:
/// its work goes into flow. Unresolved where a dose lies above the reducer's curve.
Outcome<double> water_reduction_percent(const Mix& mix, const Tables& tables, Worksheet& worksheet);

} // namespace boardmark::core
