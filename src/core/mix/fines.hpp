#pragma once

#include <boardmark/core/mix/material.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// Percent of an aggregate that passes an opening, linear in its logarithm between two stated
/// sieves. Nothing where no stated sieve is as fine, or none as coarse.
std::optional<double> passing_percent(const std::vector<SievePassing>& sieves, double opening_mm);

/// Percent that can pass an opening at most: what passes the finest stated sieve that is no finer.
/// Nothing where there is none.
std::optional<double> passing_at_most_percent(const std::vector<SievePassing>& sieves,
                                              double opening_mm);

/// Cementitious material, ground limestone and pigments: all of it is fines, kg/m3.
double powder_kg_m3(const Proportions& proportions);

/// The part of the sands that passes an opening, kg/m3 of oven-dry mass. Nothing where no sand is
/// listed or a sand's sieves do not tell; nothing is counted for the coarse aggregate.
std::optional<double> sand_passing_kg_m3(const Proportions& proportions, double opening_mm);

/// The same as the most that it can be.
std::optional<double> sand_passing_at_most_kg_m3(const Proportions& proportions, double opening_mm);

} // namespace boardmark::core
