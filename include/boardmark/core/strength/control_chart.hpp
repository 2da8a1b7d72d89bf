#pragma once

#include <boardmark/core/strength/strength_tables.hpp>

#include <cstddef>
#include <optional>
#include <vector>

namespace boardmark::core {

/// What a value of a control chart says beside itself.
enum class ChartSignal {
    none,
    outside, ///< beyond the control limits
    run,     ///< one more value on the same side of the mean, in a row too long for chance
};

/// A control chart of individual values in their order: mean, limits, signals.
struct ControlChart {
    double mean;
    /// Standard deviation from value to value, from the mean moving range of two. Nothing for fewer
    /// than two values; then there are no limits and no signals.
    std::optional<double> deviation;
    std::optional<double> low;        ///< control limit
    std::optional<double> high;       ///< control limit
    bool provisional = true;          ///< fewer values than make limits firm
    std::vector<ChartSignal> signals; ///< one for each value
};

/// Charts values, of which there must be at least one.
///
/// The deviation is the mean absolute difference of neighbours times sqrt(pi)/2, which is exact for
/// normal values; print rounds its reciprocal to 1.128 (NIST/SEMATECH e-Handbook of Statistical
/// Methods, 6.3.2.2). Slow drift widens such limits less than the deviation of all values would be.
ControlChart control_chart(const std::vector<double>& values, const ControlChartRules& rules);

} // namespace boardmark::core
