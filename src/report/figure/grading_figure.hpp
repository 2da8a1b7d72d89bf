#pragma once

#include <boardmark/report/mix/mix_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// Fine aggregates between their limits, and all aggregates together beside the line of maximum
/// density, as far as their sieves are stated.
Flow grading_figures(const MixResult& result);

} // namespace boardmark::report
