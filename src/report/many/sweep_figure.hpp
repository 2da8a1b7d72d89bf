#pragma once

#include <boardmark/core/many/sweep.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// Over one variable a line for each figure of the mixes; over two, lines of equal value. What
/// fails a check is marked; where there is no mix there is no line.
Flow sweep_figures(const core::Sweep& sweep, core::UnitSystem system);

} // namespace boardmark::report
