#include "ingredients.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "material_figures.hpp"

#include <utility>

namespace boardmark::core {
namespace {

/// An ingredient of that material, with its relative density and the volume that follows.
Ingredient of_material(SharedMaterial material, Role role, double kg_m3, const Tables& tables) {
    Ingredient ingredient{.name = material->name,
                          .role = role,
                          .kg_m3 = kg_m3,
                          .dry_kg_m3 = std::nullopt,
                          .volume_m3 = std::nullopt,
                          .material = std::move(material)};
    if (const auto density = relative_density(*ingredient.material, tables)) {
        ingredient.relative_density = density->value;
        ingredient.volume_m3 = kg_m3 / (density->value * tables.water_density_kg_m3);
    }
    return ingredient;
}

} // namespace

Ingredient water_ingredient(double batched_kg_m3, const Tables& tables) {
    return {.name = name_of(Role::water),
            .role = Role::water,
            .kg_m3 = batched_kg_m3,
            .dry_kg_m3 = std::nullopt,
            .volume_m3 = batched_kg_m3 / tables.water_density_kg_m3};
}

Ingredient binder_ingredient(const SharedMaterial& material, double kg_m3, const Tables& tables) {
    Ingredient binder = of_material(material, Role::binder, kg_m3, tables);
    binder.dry_kg_m3 = kg_m3;
    return binder;
}

Ingredient aggregate_ingredient(const SharedMaterial& material, double ssd_kg_m3,
                                const Tables& tables) {
    const auto taken_up = absorption(*material, tables);
    SharedMaterial complete = material;
    if (taken_up && taken_up->is_typical()) {
        complete.edit().aggregate.absorption_percent = taken_up->value;
    }
    Ingredient aggregate =
        of_material(std::move(complete), role_of(material->kind), ssd_kg_m3, tables);
    if (taken_up) {
        aggregate.dry_kg_m3 = ssd_kg_m3 / (1 + taken_up->value / 100);
    }
    return aggregate;
}

Ingredient admixture_ingredient(const SharedMaterial& material, double kg_m3,
                                const Tables& tables) {
    Ingredient admixture = of_material(material, Role::admixture, kg_m3, tables);
    admixture.liquid_kg_m3 = kg_m3 * liquid_fraction(*material);
    return admixture;
}

Ingredient air_ingredient(double percent) {
    return {.name = name_of(Role::air),
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
