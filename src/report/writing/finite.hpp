#pragma once

#include "json_values.hpp"

namespace boardmark::report {

/// A figure that may be shown. Throws std::logic_error where it is not finite: such a figure comes
/// from a fault of ours and never from a file, whose values have ranges.
double finite(double value);

/// The same for every figure of a result, named by its place in it.
void demand_finite(const Json& result);

} // namespace boardmark::report
