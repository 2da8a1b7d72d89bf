#include <boardmark/core/mix/proportions.hpp>

#include "ingredients.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Volumes of a mix and of two of its parts, of the ingredients whose density is known.
struct Volumes {
    double all_m3 = 0;
    double paste_m3 = 0;
    double coarse_m3 = 0;
    bool are_known = true; ///< of every ingredient
};

bool is_of_paste(Role role) {
    return role == Role::water || role == Role::binder || role == Role::admixture;
}

Volumes volumes_of(const std::vector<Ingredient>& ingredients) {
    Volumes sums;
    for (const Ingredient& ingredient : ingredients) {
        sums.are_known = sums.are_known && ingredient.volume_m3;
        const double volume_m3 = ingredient.volume_m3.value_or(0);
        sums.all_m3 += volume_m3;
        sums.paste_m3 += is_of_paste(ingredient.role) ? volume_m3 : 0;
        sums.coarse_m3 += ingredient.role == Role::coarse ? volume_m3 : 0;
    }
    return sums;
}

} // namespace

IngredientsOfRole of_role(const Proportions& proportions, Role role) {
    const auto is_other = [&](const Ingredient& ingredient) { return ingredient.role != role; };
    const std::span all{proportions.ingredients};
    const auto first = std::ranges::find(all, role, &Ingredient::role);
    const auto last = std::find_if(first, all.end(), is_other);
    return IngredientsOfRole{all.subspan(static_cast<std::size_t>(first - all.begin()),
                                         static_cast<std::size_t>(last - first))};
}

Totals total(const std::vector<Ingredient>& ingredients) {
    Totals totals{};
    double mass_kg_m3 = 0;
    bool has_coarse = false;
    bool has_fine = false;
    for (const Ingredient& ingredient : ingredients) {
        mass_kg_m3 += ingredient.kg_m3;
        totals.water_kg_m3 +=
            ingredient.role == Role::water ? ingredient.kg_m3 : ingredient.liquid_kg_m3;
        totals.binder_kg_m3 += ingredient.role == Role::binder ? ingredient.kg_m3 : 0;
        has_coarse = has_coarse || ingredient.role == Role::coarse;
        has_fine = has_fine || ingredient.role == Role::fine;
    }
    totals.w_cm = totals.water_kg_m3 / totals.binder_kg_m3;
    if (!has_coarse || !has_fine) {
        return totals; // a submittal that lists no aggregate has no density and no volume
    }
    totals.fresh_density_kg_m3 = mass_kg_m3;
    const Volumes volumes = volumes_of(ingredients);
    if (volumes.are_known) {
        totals.volume_m3 = volumes.all_m3;
        totals.paste_percent = 100 * volumes.paste_m3 / volumes.all_m3;
        totals.mortar_percent = 100 * (volumes.all_m3 - volumes.coarse_m3) / volumes.all_m3;
    }
    return totals;
}

} // namespace boardmark::core
