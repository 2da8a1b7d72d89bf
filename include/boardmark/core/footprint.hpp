#pragma once

#include <boardmark/core/proportions.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A sum over the materials of 1 m3, and what it lacks.
struct PartialSum {
    double per_m3 = 0;
    std::vector<std::string> missing; ///< materials without a figure: the sum is "at least" this

    bool is_whole() const { return missing.empty(); }
};

/// What the materials of 1 m3 cost.
struct Cost {
    std::string currency;
    PartialSum sum;
};

/// Cost of the materials; aggregates are priced by their mass at saturated surface-dry. Nothing
/// where no material states a price or where they are in different currencies. Water without a
/// price counts as free.
std::optional<Cost> cost_of(const Proportions& proportions);

/// What the high-range water reducers of 1 m3 cost. Nothing where one states no price.
std::optional<double> reducer_cost_per_m3(const Proportions& proportions);

/// Greenhouse gas of the materials, kg of CO2 equivalent. Nothing where no material states it.
std::optional<PartialSum> carbon_of(const Proportions& proportions);

} // namespace boardmark::core
