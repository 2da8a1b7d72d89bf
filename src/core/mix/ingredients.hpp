#pragma once

#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

struct Tables;

Ingredient water_ingredient(double batched_kg_m3, const Tables& tables);
Ingredient binder_ingredient(const SharedMaterial& material, double kg_m3, const Tables& tables);
Ingredient aggregate_ingredient(const SharedMaterial& material, double ssd_kg_m3,
                                const Tables& tables);
Ingredient admixture_ingredient(const SharedMaterial& material, double kg_m3, const Tables& tables);
Ingredient air_ingredient(double percent);

/// Mass of a dose of an admixture.
double dosed_kg_m3(const Dosage& dosage, double binder_kg_m3, const Tables& tables);

double sum_of_liquids_kg_m3(const std::vector<Ingredient>& ingredients);

} // namespace boardmark::core
