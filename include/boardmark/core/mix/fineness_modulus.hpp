#pragma once

#include <boardmark/core/mix/material.hpp>

#include <optional>
#include <span>
#include <vector>

namespace boardmark::core {

/// Fineness modulus: the percentages retained on the standard series, added and divided by 100.
/// Sieves coarser than the coarsest stated one pass everything. Nothing where a sieve of the series
/// at or below the coarsest stated one is missing.
std::optional<double> fineness_modulus(const std::vector<SievePassing>& sieves,
                                       std::span<const double> series_mm);

/// The sieve of the series that an opening names (9.525 mm, 3/8 in, is the 9.5 mm sieve).
std::optional<double> standard_sieve(double opening_mm, std::span<const double> series_mm);

} // namespace boardmark::core
