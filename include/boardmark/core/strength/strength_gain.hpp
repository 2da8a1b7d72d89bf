#pragma once

#include <boardmark/core/placing/placing_tables.hpp>

#include <optional>

namespace boardmark::core {

/// Strength at an age as a part of the strength at 28 d, by ACI 209R: t / (a + b t). At 28 d it is
/// near 1, not 1. Moist curing at 20 to 23 °C, portland cement alone: concrete with slag or ash
/// lies below it at first.
double strength_part(double age_d, const StrengthGain& gain);

/// The same by EN 1992-1-1, exp(s (1 − √(28/t))); exactly 1 at 28 d. Age > 0.
double strength_part(double age_d, const EnStrengthGain& gain);

/// The age at which ACI 209R's curve reaches a part of the strength at 28 d, d. Nothing for a part
/// that it never reaches.
std::optional<double> age_for_part_d(double part, const StrengthGain& gain);

/// The same by EN 1992-1-1. Part > 0.
std::optional<double> age_for_part_d(double part, const EnStrengthGain& gain);

} // namespace boardmark::core
