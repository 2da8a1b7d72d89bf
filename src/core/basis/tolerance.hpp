#pragma once

#include <algorithm>
#include <cmath>

namespace boardmark::core {

/// Values closer than this come from unit conversion and binary fractions, not from the mix: 5000
/// psi written in MPa is 5000 psi.
constexpr double relative_rounding = 1e-9;

inline bool same(double left, double right) {
    return std::abs(left - right) <=
           relative_rounding * std::max(std::max(1.0, std::abs(left)), std::abs(right));
}

inline bool above(double value, double limit) {
    return value > limit && !same(value, limit);
}

inline bool below(double value, double limit) {
    return value < limit && !same(value, limit);
}

/// A finite number above 0. NaN is none, and what only asks whether it is above a limit lets it
/// pass.
inline bool is_some(double value) {
    return std::isfinite(value) && value > 0;
}

} // namespace boardmark::core
