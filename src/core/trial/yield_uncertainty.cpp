#include "yield_uncertainty.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

/// Variance of a reading that may be off by half its last digit, evenly: step² / 12.
double variance(const Reading& reading) {
    return reading.step * reading.step / 12;
}

double relative_variance(const DensityTest& test) {
    if (const auto* density = std::get_if<Reading>(&test)) {
        return variance(*density) / (density->value * density->value);
    }
    const auto& [full, empty, volume] = std::get<FilledMeasure>(test);
    const double net_kg = full.value - empty.value;
    return (variance(full) + variance(empty)) / (net_kg * net_kg) +
           variance(volume) / (volume.value * volume.value);
}

} // namespace

double volume_uncertainty_m3(const Trial& trial, const Yield& yield) {
    double mass_variance = trial.water.kg ? variance(*trial.water.kg) : 0;
    for (const BatchedMaterial& batched : trial.batched) {
        mass_variance += batched.amount.kg ? variance(*batched.amount.kg) : 0;
    }
    const double relative = mass_variance / (yield.batch_mass_kg * yield.batch_mass_kg) +
                            relative_variance(trial.tests.density);
    constexpr double deviations_at_95_percent = 2;
    return deviations_at_95_percent * std::sqrt(relative) * yield.volume_m3;
}

} // namespace boardmark::core
