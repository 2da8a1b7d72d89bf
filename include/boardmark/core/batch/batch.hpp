#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Sacks of one cementitious material.
struct Sack {
    std::string material;
    double kg; ///< > 0, what one sack holds
};

// Volumes that somebody weighs at once: a tenth of a litre to a ship's plant for weeks; common
// practice, no source.
constexpr double least_batch_m3 = 1e-4;
constexpr double most_batch_m3 = 10000;

/// What is to be batched.
struct BatchOrder {
    double volume_m3;                         ///< > 0, the allowance included
    std::optional<double> resolution_kg = {}; ///< of the scale
    std::vector<Sack> sacks = {};             ///< what comes in sacks
    bool whole_sacks = false;                 ///< take the nearest whole sack, at least one
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
    std::optional<double> sacks = {};            ///< of what is taken by the sack
};

/// A batch at today's moistures.
struct Batch {
    double volume_m3;
    std::vector<BatchItem> items;
    double free_water_kg; ///< on all aggregates together
    double w_cm;          ///< of the rounded weights
    double mass_kg;
    double binder_kg = 0;
    double liquid_kg = 0;                ///< of the admixtures: their part of the mixing water
    std::optional<double> yield_m3 = {}; ///< that these weights fill; absent without densities
    double held_back_kg = 0;             ///< of the water, kept apart for the site
    std::vector<Phrase> cautions = {};
    std::vector<Phrase> order = {}; ///< what is done at the mixer, one step after the other

    /// The yield over the volume asked for.
    std::optional<double> relative_yield() const {
        return yield_m3 ? std::optional{*yield_m3 / volume_m3} : std::nullopt;
    }
    /// All water that is free to react.
    double mixing_water_kg() const { return w_cm * binder_kg; }
};

/// Batch weights for a volume. Every aggregate must state moisture and absorption.
///
/// Unresolved where the aggregates carry more water than the mix has room for.
Outcome<Batch> batch(const Proportions& proportions, const BatchOrder& order,
                     double water_density_kg_m3);

} // namespace boardmark::core
