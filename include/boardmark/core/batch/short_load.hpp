#pragma once

#include <boardmark/core/batch/charges.hpp>
#include <boardmark/core/mix/price.hpp>

#include <optional>

namespace boardmark::core {

/// What equal loads lack to the supplier's smallest one, and what he charges for it.
struct ShortLoad {
    int loads;
    double each_m3;
    double minimum_m3;
    double short_m3;              ///< each of the loads; 0 where they reach the minimum
    std::optional<Charge> charge; ///< absent: the supplier did not state it

    /// The charge for all loads together. Nothing where it is not known.
    std::optional<double> cost() const;
};

ShortLoad short_load(const Supply& supply, const Charging& charging);

} // namespace boardmark::core
