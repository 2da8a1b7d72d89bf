#pragma once

#include <cstddef>

namespace boardmark::core {

/// Bounds of a probability.
struct ProbabilityRange {
    double low;
    double high;
};

/// The exact 95 % interval of a probability (Clopper and Pearson): never too narrow.
///
/// @param times that something happened, at most `trials`
/// @param trials above 0
ProbabilityRange probability_range(std::size_t times, std::size_t trials);

} // namespace boardmark::core
