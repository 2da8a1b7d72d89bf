#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/risk/risk.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// How the batches spread over each quantity that scatters, with the limits that bound it.
Flow histogram_figures(const core::Risk& risk, core::UnitSystem system);

} // namespace boardmark::report
