#include "ingredients.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "material_figures.hpp"

namespace boardmark::core {
namespace {

/// Gives an ingredient its relative density and the volume that follows.
Ingredient with_volume(Ingredient ingredient, const Tables& tables) {
    if (const auto density = relative_density(*ingredient.material, tables)) {
        ingredient.relative_density = density->value;
        ingredient.volume_m3 = ingredient.kg_m3 / (density->value * tables.water_density_kg_m3);
    }
    return ingredient;
}

} // namespace

Ingredient water_ingredient(double batched_kg_m3, const Tables& tables) {
    return {.name = "water",
            .role = Role::water,
            .kg_m3 = batched_kg_m3,
            .dry_kg_m3 = std::nullopt,
            .volume_m3 = batched_kg_m3 / tables.water_density_kg_m3};
}

Ingredient binder_ingredient(const Material& material, double kg_m3, const Tables& tables) {
    return with_volume({.name = material.name,
                        .role = Role::binder,
                        .kg_m3 = kg_m3,
                        .dry_kg_m3 = kg_m3,
                        .volume_m3 = std::nullopt,
                        .material = material},
                       tables);
}

Ingredient aggregate_ingredient(const Material& material, double ssd_kg_m3, const Tables& tables) {
    Material complete = material;
    std::optional<double> dry_kg_m3;
    if (const auto taken_up = absorption(material, tables)) {
        complete.aggregate.absorption_percent = taken_up->value;
        dry_kg_m3 = ssd_kg_m3 / (1 + taken_up->value / 100);
    }
    return with_volume({.name = material.name,
                        .role = role_of(material.kind),
                        .kg_m3 = ssd_kg_m3,
                        .dry_kg_m3 = dry_kg_m3,
                        .volume_m3 = std::nullopt,
                        .material = complete},
                       tables);
}

Ingredient admixture_ingredient(const Material& material, double kg_m3, const Tables& tables) {
    return with_volume({.name = material.name,
                        .role = Role::admixture,
                        .kg_m3 = kg_m3,
                        .dry_kg_m3 = std::nullopt,
                        .volume_m3 = std::nullopt,
                        .liquid_kg_m3 = kg_m3 * liquid_fraction(material),
                        .material = material},
                       tables);
}

Ingredient air_ingredient(double percent) {
    return {.name = "air",
            .role = Role::air,
            .kg_m3 = 0,
            .dry_kg_m3 = std::nullopt,
            .volume_m3 = percent / 100};
}

double dosed_kg_m3(const Dosage& dosage, double binder_kg_m3, const Tables& tables) {
    if (!dosage.dose) {
        return 0;
    }
    const double density_kg_m3 = product_density(dosage.material, tables).value;
    return binder_kg_m3 * dose_percent(*dosage.dose, density_kg_m3) / 100;
}

double sum_of_liquids_kg_m3(const std::vector<Ingredient>& ingredients) {
    double sum = 0;
    for (const Ingredient& ingredient : ingredients) {
        sum += ingredient.liquid_kg_m3;
    }
    return sum;
}

} // namespace boardmark::core
