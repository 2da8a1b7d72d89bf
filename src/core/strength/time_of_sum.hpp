#pragma once

#include <boardmark/core/strength/maturity.hpp>

#include <optional>

namespace boardmark::core {

/// The time at which the hours of a history, each worth a rate, add up to a sum, h. Nothing where
/// the history ends before.
template <class Rate>
std::optional<double> time_of_sum_h(const TemperatureHistory& history, double sum_h, Rate rate) {
    double gathered_h = 0;
    double passed_h = 0;
    for (const TemperatureStretch& stretch : history) {
        const double worth_h = rate(stretch) * stretch.hours;
        if (worth_h > 0 && gathered_h + worth_h >= sum_h) {
            return passed_h + (sum_h - gathered_h) / worth_h * stretch.hours;
        }
        gathered_h += worth_h;
        passed_h += stretch.hours;
    }
    return std::nullopt;
}

} // namespace boardmark::core
