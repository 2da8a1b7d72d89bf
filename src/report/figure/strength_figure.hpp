#pragma once

#include <boardmark/core/strength/strength_line.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// Expected strength over w/cm, with the ratio of the mix and the average that it has to reach.
/// Nothing where no strength is expected.
Flow strength_figure(const MixResult& result, core::UnitSystem system);

/// The line of own results, the side on which the mean surely lies above it, and the tests.
Flow strength_figure(const core::StrengthLine& line, core::UnitSystem system);

} // namespace boardmark::report
