#pragma once

#include <boardmark/core/strength/strength_line.hpp>
#include <boardmark/report/mix/mix_report.hpp>
#include <boardmark/report/strength/strength_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// Expected strength over w/cm: the mix, the average that it has to reach, the specified strength
/// and the highest ratio of its exposure. Nothing where no strength is expected.
Flow strength_figure(const MixResult& result, core::UnitSystem system);

/// Production tests in order of casting against what they are held to; those that fail are marked.
/// Nothing for fewer than two.
Flow tests_figure(const StrengthResult& result, core::UnitSystem system);

/// The line of own results, the side on which the mean surely lies above it, and the tests, those
/// that fail marked. The findings must have a line.
Flow line_figure(const core::StrengthFindings& findings, core::UnitSystem system);

} // namespace boardmark::report
