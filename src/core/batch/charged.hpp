#pragma once

#include <boardmark/core/trial/trial.hpp>

#include <map>
#include <string>

namespace boardmark::core {

struct Tables;

/// A batched material at saturated surface-dry, and the water it brought besides.
struct SaturatedAmount {
    double kg;
    double free_water_kg = 0; ///< negative: it took water up
};

/// What went into the mixer, as it counts. Aggregates must state moisture and absorption.
SaturatedAmount saturated(const BatchedMaterial& batched, const Tables& tables);

/// The batched material of that name, or nullptr.
const BatchedMaterial* find_batched(const Trial& trial, std::string_view name);

double charged_water_kg(const Charged& water, const Tables& tables);

/// Cementitious material of the batch.
double charged_binder_kg(const Trial& trial);

/// What went into the mixer, by the names of the materials and "water".
std::map<std::string, double> weighed_kg(const Trial& trial, const Tables& tables);

} // namespace boardmark::core
