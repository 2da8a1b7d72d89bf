#include <boardmark/core/mix/proportions.hpp>

#include "ingredients.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Sum of the volumes of the ingredients that a test selects; nothing where one is unknown.
template <class Selects>
std::optional<double> sum_of_volumes(const std::vector<Ingredient>& ingredients, Selects selects) {
    double sum = 0;
    for (const Ingredient& ingredient : ingredients) {
        if (!selects(ingredient.role)) {
            continue;
        }
        if (!ingredient.volume_m3) {
            return std::nullopt;
        }
        sum += *ingredient.volume_m3;
    }
    return sum;
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
    totals.volume_m3 = sum_of_volumes(ingredients, [](Role) { return true; });
    if (totals.volume_m3) {
        const auto paste = sum_of_volumes(ingredients, [](Role role) {
            return role == Role::water || role == Role::binder || role == Role::admixture;
        });
        const auto coarse =
            sum_of_volumes(ingredients, [](Role role) { return role == Role::coarse; });
        totals.paste_percent = 100 * *paste / *totals.volume_m3;
        totals.mortar_percent = 100 * (*totals.volume_m3 - *coarse) / *totals.volume_m3;
    }
    return totals;
}

} // namespace boardmark::core
