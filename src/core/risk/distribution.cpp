#include "distribution.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

double mean_of(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values) {
        sum += value;
    }
    return sum / static_cast<double>(values.size());
}

double deviation_of(const std::vector<double>& values, double mean) {
    double sum = 0;
    for (const double value : values) {
        sum += (value - mean) * (value - mean);
    }
    return std::sqrt(sum / static_cast<double>(values.size() - 1));
}

using Sorted = std::vector<double>::iterator;

/// Everything before `first` is not above what follows it.
double quantile_from(Sorted first, std::vector<double>& values, double share) {
    const double at = share * static_cast<double>(values.size() - 1);
    const auto below = values.begin() + static_cast<std::ptrdiff_t>(at);
    std::nth_element(first, below, values.end());
    const double lower = *below;
    if (below + 1 == values.end()) {
        return lower;
    }
    const double upper = *std::min_element(below + 1, values.end());
    return lower + (at - std::floor(at)) * (upper - lower);
}

/// Four standard deviations to both sides.
Histogram histogram_of(const std::vector<double>& values, double mean, double deviation) {
    constexpr double reach = 4;
    constexpr std::size_t steps = 48;
    Histogram histogram{mean - reach * deviation, mean + reach * deviation, {}};
    if (deviation <= 0) {
        return histogram;
    }
    histogram.counts.resize(steps);
    const double step = (histogram.to - histogram.from) / steps;
    for (const double value : values) {
        const double place = std::clamp((value - histogram.from) / step, 0.0, steps - 1.0);
        ++histogram.counts[static_cast<std::size_t>(place)];
    }
    return histogram;
}

} // namespace

Distribution distribution_of(RiskQuantity quantity, std::vector<double>& values) {
    std::erase_if(values, [](double value) { return std::isnan(value); });
    Distribution found{.quantity = quantity,
                       .samples = values.size(),
                       .mean = 0,
                       .standard_deviation = 0,
                       .p05 = 0,
                       .p50 = 0,
                       .p95 = 0,
                       .histogram = {}};
    if (values.size() < 2) {
        return found;
    }
    const auto [least, most] = std::ranges::minmax(values);
    found.mean = least == most ? least : mean_of(values);
    found.standard_deviation = least == most ? 0 : deviation_of(values, found.mean);
    found.histogram = histogram_of(values, found.mean, found.standard_deviation);
    const auto place = [&](double share) {
        return values.begin() +
               static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
    };
    found.p05 = quantile_from(values.begin(), values, 0.05);
    found.p50 = quantile_from(place(0.05), values, 0.5);
    found.p95 = quantile_from(place(0.5), values, 0.95);
    return found;
}

} // namespace boardmark::core
