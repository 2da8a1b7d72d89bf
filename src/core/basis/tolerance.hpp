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

} // namespace boardmark::core
