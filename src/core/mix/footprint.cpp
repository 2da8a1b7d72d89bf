#include <boardmark/core/mix/footprint.hpp>

#include "../basis/phrases.hpp"
#include "high_range_reducer.hpp"
#include "unlisted_aggregate.hpp"

#include <algorithm>

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

/// Solids are sold loose by volume: how much of that their solid volume makes is not known.
bool can_be_priced(const Ingredient& ingredient, const Price& price) {
    const bool liquid = ingredient.role == Role::admixture;
    return price.basis == PriceBasis::mass || (liquid && ingredient.volume_m3);
}

/// How much is bought for what gets into the concrete.
double bought(const Ingredient& ingredient) {
    return 1 + ingredient.material->waste_percent / 100;
}

double cost_per_m3(const Ingredient& ingredient, const Price& price) {
    const bool by_volume = price.basis == PriceBasis::volume;
    return bought(ingredient) * price.amount *
           (by_volume ? ingredient.volume_m3.value_or(0) : ingredient.kg_m3);
}

bool is_counted(const Ingredient& ingredient) {
    const auto& price = ingredient.material->price;
    return price && can_be_priced(ingredient, *price);
}

/// Whether all of its cost is known.
bool is_priced(const Ingredient& ingredient) {
    return is_counted(ingredient) && !(ingredient.by_trial && !has_amount(ingredient));
}

void add_missing(const Ingredient& ingredient, bool has_figure, PartialSum& sum) {
    sum.missing.emplace_back(ingredient.name);
    if (has_figure) {
        sum.undosed.emplace_back(ingredient.name);
    }
}

/// Aggregate that a submitted mix leaves out is bought all the same.
void add_unlisted(const Proportions& proportions, PartialSum& sum) {
    if (!lists_aggregates(proportions)) {
        sum.missing.push_back(unlisted_aggregate(proportions));
    }
}

std::set<std::string> currencies_of(const std::vector<const Ingredient*>& materials) {
    std::set<std::string> currencies;
    for (const Ingredient* ingredient : materials) {
        if (is_counted(*ingredient)) {
            currencies.insert(ingredient->material->price->currency);
        }
    }
    return currencies;
}

std::optional<Cost> cost_of(const std::vector<const Ingredient*>& materials) {
    PartialSum sum;
    for (const Ingredient* ingredient : materials) {
        if (is_counted(*ingredient)) {
            sum.per_m3 += cost_per_m3(*ingredient, *ingredient->material->price);
        }
        if (!is_priced(*ingredient)) {
            add_missing(*ingredient, is_counted(*ingredient), sum);
        }
    }
    const auto currencies = currencies_of(materials);
    return currencies.size() == 1 ? std::optional{Cost{*currencies.begin(), sum}} : std::nullopt;
}

} // namespace

std::optional<Cost> cost_of(const Proportions& proportions) {
    auto cost = cost_of(materials_of(proportions));
    if (cost) {
        add_unlisted(proportions, cost->sum);
    }
    return cost;
}

std::optional<Cost> binder_cost(const Proportions& proportions) {
    const auto binders = of_role(proportions, Role::binder);
    return cost_of({binders.begin(), binders.end()});
}

std::optional<Cost> reducer_cost(const Proportions& proportions) {
    return cost_of(high_range_reducers(proportions));
}

std::set<std::string> currencies_of(const Proportions& proportions) {
    return currencies_of(materials_of(proportions));
}

std::optional<Phrase> why_no_cost(const Proportions& proportions) {
    const auto currencies = currencies_of(proportions);
    if (currencies.size() == 1) {
        return std::nullopt;
    }
    if (currencies.empty()) {
        return Phrase{"not added up: no material states a price that can be counted", {}};
    }
    std::string names;
    for (const std::string& currency : currencies) {
        names += (names.empty() ? "" : " and ") + currency;
    }
    return Phrase{"not added up: prices in {currencies}", {word("currencies", names)}};
}

std::optional<double> reducer_cost_per_m3(const Proportions& proportions) {
    double sum = 0;
    for (const Ingredient* ingredient : high_range_reducers(proportions)) {
        if (!is_priced(*ingredient)) {
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
        sum.per_m3 += carbon.value_or(0) * bought(*ingredient) * ingredient->kg_m3;
        if (!carbon || (ingredient->by_trial && !has_amount(*ingredient))) {
            add_missing(*ingredient, carbon.has_value(), sum);
        }
    }
    add_unlisted(proportions, sum);
    return any ? std::optional{sum} : std::nullopt;
}

} // namespace boardmark::core
