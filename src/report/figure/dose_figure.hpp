#pragma once

#include <boardmark/core/study/dose_response.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// What the dose does: strength with less water, and cost in both uses where prices are known.
Flow dose_figures(const core::DoseResponse& response, core::UnitSystem system);

} // namespace boardmark::report
