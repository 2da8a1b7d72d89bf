#include "batch_yield.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

/// Of how many m3 of the mix the weight of an item is the share.
double covered_m3(const BatchItem& item, const Batch& batch, const Ingredient& ingredient) {
    switch (item.role) {
    case Role::water:
        return (item.kg + batch.free_water_kg) / ingredient.kg_m3;
    case Role::coarse:
    case Role::fine:
        return item.kg / (1 + *item.moisture_percent / 100) / *ingredient.dry_kg_m3;
    default:
        return item.kg / ingredient.kg_m3;
    }
}

void scale(Ingredient& ingredient, double factor) {
    ingredient.kg_m3 *= factor;
    ingredient.liquid_kg_m3 *= factor;
    for (auto* value : {&ingredient.dry_kg_m3, &ingredient.volume_m3}) {
        if (*value) {
            **value *= factor;
        }
    }
}

} // namespace

const Ingredient& ingredient_named(const Proportions& proportions, std::string_view name) {
    const auto found = std::ranges::find(proportions.ingredients, name, &Ingredient::name);
    assert(found != proportions.ingredients.end());
    return *found;
}

std::optional<double> yield_m3(const Batch& batch, const Proportions& proportions) {
    if (!proportions.totals.volume_m3) {
        return std::nullopt;
    }
    double without_air_m3 = 0;
    for (const BatchItem& item : batch.items) {
        const Ingredient& ingredient = ingredient_named(proportions, item.name);
        if (ingredient.kg_m3 > 0) {
            without_air_m3 += *ingredient.volume_m3 * covered_m3(item, batch, ingredient);
        }
    }
    double air = 0;
    for (const Ingredient* ingredient : of_role(proportions, Role::air)) {
        air += *ingredient->volume_m3;
    }
    return without_air_m3 / (1 - air / *proportions.totals.volume_m3);
}

Proportions as_weighed(const Proportions& proportions, const Batch& batch) {
    // Amounts that do not add up to 1 m3 on paper are not set right here: a check tells of them.
    const double concrete_m3 =
        batch.yield_m3 ? *batch.yield_m3 / *proportions.totals.volume_m3 : batch.volume_m3;
    Proportions weighed = proportions;
    for (Ingredient& ingredient : weighed.ingredients) {
        const auto item = std::ranges::find(batch.items, ingredient.name, &BatchItem::name);
        if (item != batch.items.end() && ingredient.kg_m3 > 0) {
            scale(ingredient, covered_m3(*item, batch, ingredient) / concrete_m3);
        }
    }
    weighed.totals = total(weighed.ingredients);
    weighed.totals.w_cm = batch.w_cm; // the same but for the last digit
    return weighed;
}

} // namespace boardmark::core
