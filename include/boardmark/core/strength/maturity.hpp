#pragma once

#include <boardmark/core/placing/placing_tables.hpp>

#include <vector>

namespace boardmark::core {

/// A stretch of time at one temperature of the concrete.
struct TemperatureStretch {
    double hours;         ///< ≥ 0
    double temperature_c; ///< mean of the stretch
};

using TemperatureHistory = std::vector<TemperatureStretch>;

/// Temperature–time factor (Nurse–Saul), °C·h: hours times degrees above the datum. Stretches below
/// the datum count as nothing. ASTM C1074.
double temperature_time_factor_c_h(const TemperatureHistory& history, double datum_c);

/// Age at the reference temperature that is worth this history, h, by Arrhenius' law (ASTM C1074).
/// Stretches at or below freezing count as nothing, which errs to the safe side. The activation
/// energy is a usual one: a mix asks for its own calibration.
double equivalent_age_h(const TemperatureHistory& history, const MaturityRules& rules);

/// The same by EN 1992-1-1, formula B.10, which is made for 0 to 80 °C.
double en_equivalent_age_h(const TemperatureHistory& history, const MaturityRules& rules);

} // namespace boardmark::core
