#include <boardmark/core/strength/maturity.hpp>

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double kelvin_at_zero_c = 273.15;
constexpr double freezing_c = 0;

/// The sum of the hours, each worth a rate at its temperature.
template <class Rate>
double weighted_hours(const TemperatureHistory& history, Rate rate) {
    double sum = 0;
    for (const TemperatureStretch& stretch : history) {
        if (stretch.temperature_c > freezing_c) {
            sum += rate(stretch.temperature_c) * stretch.hours;
        }
    }
    return sum;
}

} // namespace

double temperature_time_factor_c_h(const TemperatureHistory& history, double datum_c) {
    double sum = 0;
    for (const TemperatureStretch& stretch : history) {
        sum += std::max(stretch.temperature_c - datum_c, 0.0) * stretch.hours;
    }
    return sum;
}

double equivalent_age_h(const TemperatureHistory& history, const MaturityRules& rules) {
    const double reference_k = rules.reference_c.value + kelvin_at_zero_c;
    return weighted_hours(history, [&](double celsius) {
        return std::exp(-rules.activation_k.value *
                        (1 / (celsius + kelvin_at_zero_c) - 1 / reference_k));
    });
}

double en_equivalent_age_h(const TemperatureHistory& history, const MaturityRules& rules) {
    constexpr double printed_kelvin_at_zero_c = 273; // as B.10 has it
    return weighted_hours(history, [&](double celsius) {
        return std::exp(rules.en_exponent.value -
                        rules.en_activation_k.value / (printed_kelvin_at_zero_c + celsius));
    });
}

} // namespace boardmark::core
