#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/batch/mixing_order.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "batch_yield.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// The nearest graduation of the scale.
double rounded(double kg, const BatchOrder& order) {
    return order.resolution_kg ? std::round(kg / *order.resolution_kg) * *order.resolution_kg : kg;
}

const Sack* sack_of(std::string_view material, const BatchOrder& order) {
    const auto found = std::ranges::find(order.sacks, material, &Sack::material);
    return found == order.sacks.end() ? nullptr : &*found;
}

/// By the sack where whole ones are asked for or come out, else over the scale.
BatchItem binder_item(const Ingredient& binder, const BatchOrder& order) {
    const double kg = binder.kg_m3 * order.volume_m3;
    BatchItem item{.name = std::string{binder.name},
                   .role = binder.role,
                   .kg = rounded(kg, order),
                   .litres = std::nullopt};
    if (const Sack* sack = sack_of(binder.name, order)) {
        const double whole = std::max(std::round(kg / sack->kg), 1.0);
        if (order.whole_sacks || same(kg / sack->kg, whole)) {
            item.kg = whole * sack->kg;
        }
        item.sacks = item.kg / sack->kg;
    }
    return item;
}

BatchItem aggregate_item(const Ingredient& aggregate, const BatchOrder& order) {
    const AggregateFigures& figures = aggregate.material->aggregate;
    const double moisture_percent = *figures.moisture_percent;
    const double dry_kg = *aggregate.dry_kg_m3 * order.volume_m3;
    return {.name = std::string{aggregate.name},
            .role = aggregate.role,
            .kg = rounded(dry_kg * (1 + moisture_percent / 100), order),
            .litres = std::nullopt,
            .moisture_percent = moisture_percent,
            .free_water_kg = dry_kg * (moisture_percent - *figures.absorption_percent) / 100};
}

BatchItem admixture_item(const Ingredient& admixture, const BatchOrder& order) {
    const bool liquid = admixture.material->kind != Kind::pigment;
    const double kg = admixture.kg_m3 * order.volume_m3;
    return {.name = std::string{admixture.name},
            .role = admixture.role,
            .kg = liquid ? kg : rounded(kg, order),
            .litres = liquid ? std::optional{*admixture.volume_m3 * order.volume_m3 * 1000}
                             : std::nullopt,
            .by_trial = admixture.by_trial};
}

/// The free water that the wet mass as weighed really carries.
double free_water_as_weighed_kg(const BatchItem& item, const Ingredient& aggregate) {
    const double dry_kg = item.kg / (1 + *item.moisture_percent / 100);
    return dry_kg * (*item.moisture_percent - *aggregate.material->aggregate.absorption_percent) /
           100;
}

Unresolved too_wet(const std::vector<BatchItem>& items, double free_water_kg,
                   double mixing_water_kg) {
    std::vector<Argument> arguments{quantity("free", {free_water_kg, Measure::mass}),
                                    quantity("room", {mixing_water_kg, Measure::mass})};
    std::string stated;
    for (const BatchItem& item : items) {
        if (item.moisture_percent) {
            const std::string number = std::to_string(arguments.size());
            stated += (stated.empty() ? "" : ", ") + std::string{"{name"} + number +
                      "} at {moisture" + number + "}";
            arguments.push_back(word("name" + number, item.name));
            arguments.push_back(
                quantity("moisture" + number, {*item.moisture_percent, Measure::percent}));
        }
    }
    return {{"the aggregates (" + stated +
                 ") carry {free} of free water, but the mix has room for {room} besides the "
                 "admixtures' liquid: the water to batch would be negative",
             std::move(arguments)},
            {{"measure the moistures again: a sampling error is the usual cause", {}},
             {"let the stockpile drain, or take sand from a drier part of it", {}}}};
}

/// An item that the scale cannot show would be left out in silence.
std::optional<Unresolved> demand_readable(const std::vector<BatchItem>& items,
                                          const Proportions& proportions) {
    for (const BatchItem& item : items) {
        if (item.kg == 0 && ingredient_named(proportions, item.name).kg_m3 > 0) {
            return Unresolved{
                {"{name} rounds to zero at this scale's resolution", {word("name", item.name)}},
                {{"weigh on a finer scale ('--resolution')", {}}, {"mix a larger batch", {}}}};
        }
    }
    return std::nullopt;
}

} // namespace

Outcome<Batch> batch(const Proportions& proportions, const BatchOrder& order,
                     double water_density_kg_m3) {
    Batch batch{
        .volume_m3 = order.volume_m3, .items = {}, .free_water_kg = 0, .w_cm = 0, .mass_kg = 0};
    double exact_free_water_kg = 0;
    for (const Ingredient& ingredient : proportions.ingredients) {
        switch (ingredient.role) {
        case Role::water:
        case Role::air:
            break;
        case Role::binder:
            batch.items.push_back(binder_item(ingredient, order));
            batch.binder_kg += batch.items.back().kg;
            break;
        case Role::coarse:
        case Role::fine:
            batch.items.push_back(aggregate_item(ingredient, order));
            exact_free_water_kg += *batch.items.back().free_water_kg;
            batch.items.back().free_water_kg =
                free_water_as_weighed_kg(batch.items.back(), ingredient);
            batch.free_water_kg += *batch.items.back().free_water_kg;
            break;
        case Role::admixture:
            batch.items.push_back(admixture_item(ingredient, order));
            batch.liquid_kg += ingredient.liquid_kg_m3 * order.volume_m3;
            break;
        }
    }
    if (auto why = demand_readable(batch.items, proportions)) {
        return std::move(*why);
    }
    const double room_kg = proportions.totals.water_kg_m3 * order.volume_m3 - batch.liquid_kg;
    if (exact_free_water_kg > room_kg) {
        return too_wet(batch.items, exact_free_water_kg, room_kg);
    }
    const double water_kg = rounded(room_kg - exact_free_water_kg, order);
    batch.items.insert(batch.items.begin(), {.name = "water",
                                             .role = Role::water,
                                             .kg = water_kg,
                                             .litres = 1000 * water_kg / water_density_kg_m3});
    for (const BatchItem& item : batch.items) {
        batch.mass_kg += item.kg;
    }
    batch.w_cm = (water_kg + batch.free_water_kg + batch.liquid_kg) / batch.binder_kg;
    batch.yield_m3 = yield_m3(batch, proportions);
    batch.order = mixing_order(proportions, batch, order.resolution_kg, nullptr);
    return batch;
}

} // namespace boardmark::core
