#include "aggregate_blend.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/made_in_place.hpp"
#include "ingredients.hpp"
#include "material_figures.hpp"

namespace boardmark::core {

void add_blend_of_mass(const std::vector<Share>& shares, double ssd_kg_m3, const Tables& tables,
                       std::vector<Ingredient>& ingredients) {
    for (const Share& share : shares) {
        ingredients.emplace_back(MadeInPlace{[&] {
            return aggregate_ingredient(share.material, ssd_kg_m3 * share.percent / 100, tables);
        }});
    }
}

void add_blend_of_dry_mass(const std::vector<Share>& shares, double dry_kg_m3, const Tables& tables,
                           std::vector<Ingredient>& ingredients) {
    double dry_per_ssd = 0;
    for (const Share& share : shares) {
        dry_per_ssd += share.percent / 100 / (1 + absorption(*share.material, tables)->value / 100);
    }
    add_blend_of_mass(shares, dry_kg_m3 / dry_per_ssd, tables, ingredients);
}

void add_blend_of_volume(const std::vector<Share>& shares, double volume_m3, const Tables& tables,
                         std::vector<Ingredient>& ingredients) {
    double volume_per_kg_m3 = 0;
    for (const Share& share : shares) {
        volume_per_kg_m3 +=
            share.percent / 100 /
            (relative_density(*share.material, tables)->value * tables.water_density_kg_m3);
    }
    add_blend_of_mass(shares, volume_m3 / volume_per_kg_m3, tables, ingredients);
}

} // namespace boardmark::core
