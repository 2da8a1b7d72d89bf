#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../code/counted_binder.hpp"
#include "../code/required_strength.hpp"
#include "../code/site_exposure.hpp"
#include "../mix/ingredients.hpp"
#include "../mix/material_figures.hpp"
#include "../weather/placing_temperature.hpp"
#include "air_content.hpp"
#include "cautions.hpp"
#include "water_cement_ratio.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

double kg_m3_of(const SubmittedAmount& amount, const Tables& tables) {
    return amount.kg_m3 ? *amount.kg_m3
                        : *amount.m3_m3 * product_density(amount.material, tables).value;
}

Ingredient ingredient_of(const SubmittedAmount& amount, const Tables& tables) {
    const double kg_m3 = kg_m3_of(amount, tables);
    switch (role_of(amount.material->kind)) {
    case Role::binder:
        return binder_ingredient(amount.material, kg_m3, tables);
    case Role::coarse:
    case Role::fine:
        return aggregate_ingredient(amount.material, kg_m3, tables);
    default:
        break;
    }
    Ingredient admixture = admixture_ingredient(amount.material, kg_m3, tables);
    admixture.by_trial = amount.by_trial;
    return admixture;
}

/// The amounts as ingredients, in the order of the roles.
Outcome<std::vector<Ingredient>> ingredients_of(const SubmittedMix& mix, const Tables& tables) {
    std::vector<Ingredient> ingredients;
    for (const SubmittedAmount& amount : mix.amounts) {
        ingredients.push_back(ingredient_of(amount, tables));
    }
    std::ranges::stable_sort(ingredients, {}, &Ingredient::role);

    double batched_kg_m3 =
        mix.water_kg_m3 ? *mix.water_kg_m3 : *mix.water_m3_m3 * tables.water_density_kg_m3;
    if (mix.water_includes_admixtures) {
        const double liquid_kg_m3 = sum_of_liquids_kg_m3(ingredients);
        if (liquid_kg_m3 > batched_kg_m3) {
            return Unresolved{{"the submitted water is said to include the admixtures' liquid, but "
                               "that alone is {liquid} of {water}",
                               {quantity("liquid", {liquid_kg_m3, Measure::concentration}),
                                quantity("water", {batched_kg_m3, Measure::concentration})}},
                              {{"ask the supplier which water the figure includes", {}}}};
        }
        batched_kg_m3 -= liquid_kg_m3;
    }
    ingredients.insert(ingredients.begin(), water_ingredient(batched_kg_m3, tables));
    ingredients.push_back(air_ingredient(mix.air_percent));
    return ingredients;
}

std::optional<double> strength_ratio(const SubmittedMix& mix, double average_mpa,
                                     std::optional<bool> entrained, const Tables& tables,
                                     Worksheet& worksheet) {
    if (!entrained) {
        return std::nullopt;
    }
    const auto ratio =
        w_cm_by_strength(mix.requirements, {average_mpa, *entrained}, tables, worksheet);
    return ratio ? std::optional{*ratio} : std::nullopt;
}

} // namespace

Outcome<Proportions> accept(const CompleteSubmittedMix& complete_mix, const Tables& tables) {
    const SubmittedMix& mix = *complete_mix;
    auto ingredients = ingredients_of(mix, tables);
    if (!ingredients) {
        return std::move(ingredients).why();
    }
    Proportions proportions{.submitted = true,
                            .selection = {},
                            .ingredients = *std::move(ingredients),
                            .totals = {},
                            .worksheet = {}};
    Worksheet& worksheet = proportions.worksheet;
    record_site(mix.requirements, tables.code, worksheet);
    const auto materials = materials_of(mix);
    record_typical_figures(materials, tables, worksheet);
    proportions.estimate = std::ranges::any_of(
        materials, [](const Material* material) { return material->aggregate.typical; });

    const double average_mpa =
        required_average_strength(mix.requirements, tables.code->average_strength, worksheet);
    const auto entrained = is_entrained({mix.air_percent, mix.nominal_max_size_mm}, tables);
    const StatedClasses classes{mix.requirements, binder_holds_pozzolan_or_slag(proportions),
                                tables.code};
    const auto exposure = w_cm_by_exposure(classes);
    const double counted_share = count_binder(proportions, tables.code, classes).counted_share();

    proportions.totals = total(proportions.ingredients);
    proportions.selection = {
        .specified_strength_mpa = mix.requirements.strength_mpa,
        .required_average_strength_mpa = average_mpa,
        .slump_mm = mix.requirements.slump_mm,
        .slump_before_reducer_mm = mix.requirements.slump_before_reducer_mm,
        .nominal_max_size_mm = mix.nominal_max_size_mm,
        .air_percent = mix.air_percent,
        .air_at_placing_percent =
            at_placing_percent(mix.air_percent, entrained.value_or(true), mix.requirements),
        .w_cm = proportions.totals.w_cm,
        .w_cm_by_strength = strength_ratio(mix, average_mpa, entrained, tables, worksheet),
        .w_cm_by_exposure = exposure ? std::optional{exposure->w_cm * counted_share} : std::nullopt,
        .w_cm_governed_by = Governor::given,
        .table_water_kg_m3 = std::nullopt,
        .water_reduction_percent = std::nullopt,
        .water_kg_m3 = proportions.totals.water_kg_m3,
        .binder_kg_m3 = proportions.totals.binder_kg_m3,
        .coarse_volume = std::nullopt,
        .fineness_modulus = std::nullopt,
        .air_entrained = entrained.value_or(false),
        .entrainment_known = entrained.has_value(),
        .margin_mpa = average_mpa - mix.requirements.strength_mpa};
    worksheet.record([&] {
        return Step{
            .quantity = step_ids::w_cm,
            .value = proportions.totals.w_cm,
            .measure = Measure::w_cm,
            .provenance = Provenance::computed,
            .reason = {
                "submitted: mixing water {water} (with {liquid} of the admixtures' liquid) "
                "over cementitious material {binder}",
                {quantity("water", {proportions.totals.water_kg_m3, Measure::concentration}),
                 quantity("liquid",
                          {sum_of_liquids_kg_m3(proportions.ingredients), Measure::concentration}),
                 quantity("binder", {proportions.totals.binder_kg_m3, Measure::concentration})}}};
    });
    if (auto why = record_temperature(mix.requirements, mix.batched_water, proportions, tables)) {
        return std::move(*why);
    }
    caution(mix.requirements, proportions, tables);
    return proportions;
}

} // namespace boardmark::core
