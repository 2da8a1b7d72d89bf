#pragma once

#include <boardmark/report/comparison_report.hpp>

#include <string>

namespace boardmark::report {

/// Where the figures of each column come from, and prices and carbon of the materials.
std::string comparison_reasons(const ComparisonResult& result, const TextStyle& style);

} // namespace boardmark::report
