#include <boardmark/core/footprint.hpp>

#include "high_range_reducer.hpp"

#include <algorithm>
#include <set>

namespace boardmark::core {
namespace {

std::vector<const Ingredient*> materials_of(const Proportions& proportions) {
    std::vector<const Ingredient*> materials;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (ingredient.material) {
            materials.push_back(&ingredient);
        }
    }
    return materials;
}

/// Whether the amount of an ingredient is known: one that is dosed by trial counts as nothing.
bool has_amount(const Ingredient& ingredient) {
    return ingredient.kg_m3 > 0;
}

/// An aggregate sold by volume is sold loose: how much of that its solid volume makes is not known.
bool can_be_priced(const Ingredient& ingredient, const Price& price) {
    const bool loose = ingredient.role == Role::coarse || ingredient.role == Role::fine;
    return price.basis == PriceBasis::mass || (!loose && ingredient.volume_m3);
}

double cost_per_m3(const Ingredient& ingredient, const Price& price) {
    const bool by_volume = price.basis == PriceBasis::volume;
    return price.amount * (by_volume ? ingredient.volume_m3.value_or(0) : ingredient.kg_m3);
}

} // namespace

std::optional<Cost> cost_of(const Proportions& proportions) {
    std::set<std::string> currencies;
    PartialSum sum;
    for (const Ingredient* ingredient : materials_of(proportions)) {
        const auto& price = ingredient->material->price;
        const bool counts = price && can_be_priced(*ingredient, *price);
        if (counts) {
            currencies.insert(price->currency);
            sum.per_m3 += cost_per_m3(*ingredient, *price);
        }
        if (!counts || (ingredient->by_trial && !has_amount(*ingredient))) {
            sum.missing.push_back(ingredient->name);
        }
    }
    return currencies.size() == 1 ? std::optional{Cost{*currencies.begin(), sum}} : std::nullopt;
}

std::optional<double> reducer_cost_per_m3(const Proportions& proportions) {
    double sum = 0;
    for (const Ingredient* ingredient : high_range_reducers(proportions)) {
        if (!ingredient->material->price) {
            return std::nullopt;
        }
        sum += cost_per_m3(*ingredient, *ingredient->material->price);
    }
    return sum;
}

std::optional<PartialSum> carbon_of(const Proportions& proportions) {
    PartialSum sum;
    bool any = false;
    for (const Ingredient* ingredient : materials_of(proportions)) {
        const auto& carbon = ingredient->material->carbon_kg_kg;
        any = any || carbon;
        sum.per_m3 += carbon.value_or(0) * ingredient->kg_m3;
        if (!carbon || (ingredient->by_trial && !has_amount(*ingredient))) {
            sum.missing.push_back(ingredient->name);
        }
    }
    return any ? std::optional{sum} : std::nullopt;
}

} // namespace boardmark::core
