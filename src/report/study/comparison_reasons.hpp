#pragma once

#include <boardmark/report/study/comparison_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// Where the figures of each column come from, and prices and carbon of the materials.
Flow comparison_reasons(const ComparisonResult& result, const TextStyle& style);

} // namespace boardmark::report
