#pragma once

#include <boardmark/report/strength/record_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// A control chart: values in their order, mean, control limits and a common target.
Flow control_figure(const ChartResult& result, core::UnitSystem system);

} // namespace boardmark::report
