#pragma once

#include <boardmark/core/proportions.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// What is to be batched.
struct BatchOrder {
    double volume_m3;                    ///< > 0, the allowance included
    std::optional<double> resolution_kg; ///< of the scale
};

/// One item to weigh or measure.
struct BatchItem {
    std::string name;
    Role role;
    double kg;                    ///< aggregates wet, as weighed; water as added at the mixer
    std::optional<double> litres; ///< liquids only
    bool by_trial = false;
    std::optional<double> moisture_percent = {}; ///< of an aggregate, total
    std::optional<double> free_water_kg = {};    ///< of an aggregate; negative: it takes up water
};

/// A batch at today's moistures.
struct Batch {
    double volume_m3;
    std::vector<BatchItem> items;
    double free_water_kg; ///< on all aggregates together
    double w_cm;          ///< of the rounded weights
    double mass_kg;
    std::vector<Phrase> cautions;
};

/// Batch weights for a volume. Every aggregate must state moisture and absorption.
///
/// @throws Unresolved where the aggregates carry more water than the mix has room for.
Batch batch(const Proportions& proportions, const BatchOrder& order, double water_density_kg_m3);

} // namespace boardmark::core
