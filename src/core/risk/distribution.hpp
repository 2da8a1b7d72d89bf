#pragma once

#include <boardmark/core/risk/risk.hpp>

#include <vector>

namespace boardmark::core {

/// Mean, scatter and quantiles (linear between the two samples beside them) of the values that are
/// numbers; the values are reordered. The order of the samples decides the last digit, nothing
/// else.
Distribution distribution_of(RiskQuantity quantity, std::vector<double>& values);

} // namespace boardmark::core
