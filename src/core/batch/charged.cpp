#include "charged.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../mix/material_figures.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Mass of a batched material as weighed.
double charged_kg(const BatchedMaterial& batched, const Tables& tables) {
    return batched.amount.kg
               ? batched.amount.kg->value
               : batched.amount.m3->value * product_density(batched.material, tables).value;
}

} // namespace

const BatchedMaterial* find_batched(const Trial& trial, std::string_view name) {
    const auto found = std::ranges::find(
        trial.batched, name,
        [](const BatchedMaterial& batched) -> std::string_view { return batched.material.name; });
    return found == trial.batched.end() ? nullptr : &*found;
}

double charged_water_kg(const Charged& water, const Tables& tables) {
    return water.kg ? water.kg->value : water.m3->value * tables.water_density_kg_m3;
}

SaturatedAmount saturated(const BatchedMaterial& batched, const Tables& tables) {
    const double kg = charged_kg(batched, tables);
    const Role role = role_of(batched.material.kind);
    if (role != Role::coarse && role != Role::fine) {
        return {kg};
    }
    const AggregateFigures& figures = batched.material.aggregate;
    const double dry_kg = kg / (1 + *figures.moisture_percent / 100);
    const double saturated_kg = dry_kg * (1 + *figures.absorption_percent / 100);
    return {saturated_kg, kg - saturated_kg};
}

double charged_binder_kg(const Trial& trial) {
    double sum_kg = 0;
    for (const BatchedMaterial& batched : trial.batched) {
        if (role_of(batched.material.kind) == Role::binder) {
            sum_kg += batched.amount.kg->value;
        }
    }
    return sum_kg;
}

std::map<std::string, double> weighed_kg(const Trial& trial, const Tables& tables) {
    std::map<std::string, double> masses_kg{{"water", charged_water_kg(trial.water, tables)}};
    for (const BatchedMaterial& batched : trial.batched) {
        masses_kg[batched.material.name] = charged_kg(batched, tables);
    }
    return masses_kg;
}

} // namespace boardmark::core
