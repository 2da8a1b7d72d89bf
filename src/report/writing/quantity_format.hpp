#pragma once

#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

/// A quantity with its unit, rounded as the trade rounds: "5740 psi", "3/4 in", "254 lb/yd3".
/// `finer` asks for that many digits more than the trade writes.
std::string shown(core::Quantity quantity, core::UnitSystem system, int finer = 0);

/// How many decimals a mass in lb or kg is shown with.
int decimals_of_mass(double amount);

/// Water as it is measured out: "2.19 gal", "8.29 L".
std::string water_measure(double litres, core::UnitSystem system);

/// Plain numbers with a fixed count of digits.
std::string fixed(double value, int decimals);

/// Ratios of one row or column at one precision: zeros that `shown` left off come back. What is no
/// plain number stays.
void even_ratios(const std::vector<std::string*>& cells);

} // namespace boardmark::report
