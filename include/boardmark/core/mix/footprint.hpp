#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace boardmark::core {

/// A sum over the materials of 1 m3, and what it lacks.
struct PartialSum {
    double per_m3 = 0;
    std::vector<std::string> missing; ///< materials without a figure: the sum is "at least" this
    std::vector<std::string> undosed = {}; ///< of these: the figure is known, the dose is not

    bool is_whole() const { return missing.empty(); }
};

/// What the materials of 1 m3 cost.
struct Cost {
    std::string currency;
    PartialSum sum;
};

/// Cost of the materials, waste included; aggregates are priced by their mass at saturated
/// surface-dry. Nothing where no material states a price or where they are in different
/// currencies. Water without a price counts as free.
std::optional<Cost> cost_of(const Proportions& proportions);

/// The currencies of the prices that are counted.
std::set<std::string> currencies_of(const Proportions& proportions);

/// Why the prices were not added up; nothing where they were.
std::optional<Phrase> why_no_cost(const Proportions& proportions);

/// Cost of the cementitious materials alone, and of the high-range water reducers alone.
std::optional<Cost> binder_cost(const Proportions& proportions);
std::optional<Cost> reducer_cost(const Proportions& proportions);

/// What the high-range water reducers of 1 m3 cost. Nothing where one states no price that can be
/// counted, or is dosed by trial.
std::optional<double> reducer_cost_per_m3(const Proportions& proportions);

/// Greenhouse gas of the materials, waste included, kg of CO2 equivalent. Nothing where no material
/// states it.
std::optional<PartialSum> carbon_of(const Proportions& proportions);

} // namespace boardmark::core
