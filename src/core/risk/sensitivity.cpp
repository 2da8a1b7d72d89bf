#include "sensitivity.hpp"

#include <algorithm>
#include <cassert>
#include <cstddef>

namespace boardmark::core {
namespace {

/// Mean and variance of both sets together.
struct Spread {
    double mean;
    double variance;
};

Spread spread_of(const PairedValues& values) {
    const auto count = static_cast<double>(2 * values.first.size());
    double sum = 0;
    for (std::size_t i = 0; i < values.first.size(); ++i) {
        sum += values.first[i] + values.second[i];
    }
    const double mean = sum / count;
    double squares = 0;
    for (std::size_t i = 0; i < values.first.size(); ++i) {
        squares += (values.first[i] - mean) * (values.first[i] - mean) +
                   (values.second[i] - mean) * (values.second[i] - mean);
    }
    return {mean, squares / count};
}

} // namespace

VarianceShares variance_shares(const PairedValues& values) {
    assert(values.first.size() == values.second.size());
    assert(values.first.size() == values.first_with_input_of_second.size());
    const Spread spread = spread_of(values);
    if (!(spread.variance > 0)) {
        return {0, 0};
    }
    double first_order = 0;
    double total = 0;
    for (std::size_t i = 0; i < values.first.size(); ++i) {
        const double changed = values.first_with_input_of_second[i] - values.first[i];
        // Around the mean the estimate scatters least.
        first_order += (values.second[i] - spread.mean) * changed;
        total += changed * changed / 2;
    }
    const double whole = spread.variance * static_cast<double>(values.first.size());
    // A share lies in 0 to 1, and what an input does by itself is a part of all it does; estimates
    // may stray from both.
    const double in_all = std::clamp(total / whole, 0.0, 1.0);
    return {std::clamp(first_order / whole, 0.0, in_all), in_all};
}

} // namespace boardmark::core
