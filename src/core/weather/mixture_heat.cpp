#include "mixture_heat.hpp"

#include "../mix/unlisted_aggregate.hpp"

namespace boardmark::core {
namespace {

bool is_solid(const Ingredient& ingredient) {
    return ingredient.role == Role::binder || ingredient.role == Role::coarse ||
           ingredient.role == Role::fine;
}

/// Sums of masses and of masses times temperatures.
struct Sum {
    double kg = 0;
    double kg_c = 0;

    void add(double mass_kg, double celsius) {
        kg += mass_kg;
        kg_c += mass_kg * celsius;
    }
    double mean_c() const { return kg == 0 ? 0 : kg_c / kg; }
};

void list_missing(const Ingredient& ingredient, std::vector<std::string>& missing) {
    const Material& material = *ingredient.material;
    const std::string path = "materials." + std::string{ingredient.name} + ".";
    if (!material.temperature_c) {
        missing.push_back(path + "temperature");
    }
    if (ingredient.role == Role::binder) {
        return;
    }
    if (!material.aggregate.moisture_percent) {
        missing.push_back(path + "moisture");
    }
    if (!material.aggregate.absorption_percent) {
        missing.push_back(path + "absorption");
    }
}

double free_water_kg(const Ingredient& aggregate) {
    const AggregateFigures& figures = aggregate.material->aggregate;
    return *aggregate.dry_kg_m3 * (*figures.moisture_percent - *figures.absorption_percent) / 100;
}

} // namespace

bool is_frozen(const Ingredient& ingredient) {
    constexpr double freezing_c = 0;
    const bool is_aggregate = ingredient.role == Role::coarse || ingredient.role == Role::fine;
    return is_aggregate && ingredient.material->temperature_c &&
           *ingredient.material->temperature_c < freezing_c;
}

MixtureTemperature heat_of(const Proportions& proportions, const BatchedWater& water) {
    MixtureTemperature found;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (is_solid(ingredient)) {
            list_missing(ingredient, found.missing);
        }
    }
    if (!lists_aggregates(proportions)) {
        found.missing.push_back("proportions: " + unlisted_aggregate(proportions));
    }
    if (!water.temperature_c) {
        found.missing.push_back(proportions.submitted ? "proportions.water_temperature"
                                                      : "mixture.water_temperature");
    }
    if (!found.missing.empty()) {
        return found;
    }
    Sum solids;
    Sum free_water;
    Sum frozen;
    double batched_kg = 0;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (ingredient.role == Role::water) {
            batched_kg = ingredient.kg_m3;
        }
        if (!is_solid(ingredient)) {
            continue;
        }
        const double celsius = *ingredient.material->temperature_c;
        solids.add(ingredient.kg_m3, celsius);
        if (ingredient.role != Role::binder) {
            const double kg = free_water_kg(ingredient);
            free_water.add(kg, celsius);
            frozen.add(is_frozen(ingredient) && kg > 0 ? kg : 0, celsius);
        }
    }
    found.heat = MixtureHeat{.solids_kg = solids.kg,
                             .solids_c = solids.mean_c(),
                             .free_water_kg = free_water.kg,
                             .free_water_c = free_water.mean_c(),
                             .water_kg = batched_kg - free_water.kg,
                             .water_c = *water.temperature_c,
                             .ice_kg = water.ice_kg_m3,
                             .frozen_kg = frozen.kg,
                             .frozen_c = frozen.mean_c()};
    return found;
}

} // namespace boardmark::core
