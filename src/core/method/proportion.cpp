#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/made_in_place.hpp"
#include "../basis/phrases.hpp"
#include "../code/required_strength.hpp"
#include "../code/site_exposure.hpp"
#include "../mix/ingredients.hpp"
#include "../mix/material_figures.hpp"
#include "../weather/placing_temperature.hpp"
#include "air_content.hpp"
#include "cautions.hpp"
#include "coarse_aggregate.hpp"
#include "fine_aggregate.hpp"
#include "fresh_density.hpp"
#include "method_steps.hpp"
#include "paste.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool is_estimate(const Mix& mix) {
    const auto is_typical = [](const Share& share) { return share.material->aggregate.typical; };
    return std::ranges::any_of(mix.coarse, is_typical) || std::ranges::any_of(mix.fine, is_typical);
}

/// Binder, admixtures and air, behind the water, which is what the admixtures' liquid leaves of the
/// mixing water.
std::optional<Unresolved> add_all_but_aggregates(const Mix& mix, const Paste& paste,
                                                 double air_percent, const Tables& tables,
                                                 std::vector<Ingredient>& ingredients) {
    ingredients.emplace_back(MadeInPlace{[&] { return water_ingredient(0, tables); }});
    for (const Share& share : mix.binder) {
        ingredients.emplace_back(MadeInPlace{[&] {
            return binder_ingredient(share.material, paste.binder_kg_m3 * share.percent / 100,
                                     tables);
        }});
    }
    for (const Dosage& dosage : mix.admixtures) {
        ingredients.emplace_back(MadeInPlace{[&] {
            return admixture_ingredient(dosage.material,
                                        dosed_kg_m3(dosage, paste.binder_kg_m3, tables), tables);
        }});
        ingredients.back().by_trial = !dosage.dose;
    }
    ingredients.emplace_back(MadeInPlace{[&] { return air_ingredient(air_percent); }});

    const double liquid_kg_m3 = sum_of_liquids_kg_m3(ingredients);
    if (liquid_kg_m3 > paste.water_kg_m3) {
        return Unresolved{{"the admixtures bring {liquid} of liquid, more than the mixing water of "
                           "{water}",
                           {quantity("liquid", {liquid_kg_m3, Measure::concentration}),
                            quantity("water", {paste.water_kg_m3, Measure::concentration})}},
                          {{"lower the doses", {}},
                           {"state the solids of the admixtures: without them the whole liquid "
                            "counts as water",
                            {}}}};
    }
    ingredients.front() = water_ingredient(paste.water_kg_m3 - liquid_kg_m3, tables);
    return std::nullopt;
}

/// Admixtures and air stand last in a result: behind the aggregates, which they were added before.
void put_aggregates_before_admixtures(std::vector<Ingredient>& ingredients) {
    const auto is_last = [](const Ingredient& one) {
        return one.role == Role::admixture || one.role == Role::air;
    };
    const auto is_aggregate = [](const Ingredient& one) {
        return one.role == Role::coarse || one.role == Role::fine;
    };
    std::rotate(std::ranges::find_if(ingredients, is_last),
                std::ranges::find_if(ingredients, is_aggregate), ingredients.end());
}

/// The average strength that the file states, else by the method. Nothing yet where that depends on
/// the air, which is selected after it.
Outcome<std::optional<double>> average_before_air(const Mix& mix, const Tables& tables,
                                                  Worksheet& worksheet) {
    if (mix.requirements.average) {
        return std::optional{
            required_average_strength(mix.requirements, tables.code->average_strength, worksheet)};
    }
    return steps_of(tables.method).average_before_air(mix, tables, worksheet);
}

bool holds_pozzolan(const Mix& mix) {
    return std::ranges::any_of(mix.binder, [](const Share& share) {
        return share.percent > 0 && is_or_holds_pozzolan_or_slag(*share.material);
    });
}

/// Every value of the mix, each with its reason where the worksheet is told.
std::optional<Unresolved> solve(const Mix& mix, const Tables& tables, Proportions& proportions) {
    Worksheet& worksheet = proportions.worksheet;
    Selection& selection = proportions.selection;
    proportions.estimate = is_estimate(mix);

    const double size_mm = largest_size_mm(mix.coarse);
    auto average_mpa = average_before_air(mix, tables, worksheet);
    if (!average_mpa) {
        return std::move(average_mpa).why();
    }
    const StatedClasses classes{mix.requirements, holds_pozzolan(mix), tables.code};
    const auto air = select_air(mix, classes, size_mm, tables, worksheet);
    if (!air) {
        return air.why();
    }
    if (!*average_mpa) {
        auto with_air = steps_of(tables.method)
                            .average_with_air(mix, air->entrained ? air->in_batch_percent : 0,
                                              tables, worksheet);
        if (!with_air) {
            return std::move(with_air).why();
        }
        *average_mpa = *with_air;
    }
    const double target_mpa = **average_mpa;
    const auto paste =
        select_paste(mix, classes, {target_mpa, size_mm, air->entrained}, tables, worksheet);
    if (!paste) {
        return paste.why();
    }
    selection = {.specified_strength_mpa = mix.requirements.strength_mpa,
                 .required_average_strength_mpa = target_mpa,
                 .slump_mm = mix.requirements.slump_mm,
                 .slump_before_reducer_mm = mix.requirements.slump_before_reducer_mm,
                 .nominal_max_size_mm = size_mm,
                 .air_percent = air->in_batch_percent,
                 .air_at_placing_percent = air->at_placing_percent,
                 .w_cm = paste->w_cm(),
                 .w_cm_by_strength = paste->w_cm_by_strength,
                 .w_cm_by_exposure = paste->w_cm_by_exposure,
                 .w_cm_governed_by = paste->governed_by,
                 .table_water_kg_m3 = paste->table_water_kg_m3,
                 .water_reduction_percent = paste->water_reduction_percent,
                 .water_kg_m3 = paste->water_kg_m3,
                 .binder_kg_m3 = paste->binder_kg_m3,
                 .coarse_volume = std::nullopt,
                 .fineness_modulus = blend_fineness_modulus(mix.fine, tables, worksheet),
                 .water_is_stated = paste->water_is_stated,
                 .water_of_slump_kg_m3 = paste->water_of_slump_kg_m3,
                 .air_entrained = air->entrained,
                 .strength_by_trial = mix.selections.w_cm_by_exposure,
                 .margin_mpa = target_mpa - mix.requirements.strength_mpa};

    std::vector<Ingredient>& ingredients = proportions.ingredients;
    if (auto why =
            add_all_but_aggregates(mix, *paste, air->in_batch_percent, tables, ingredients)) {
        return why;
    }
    if (mix.blend) {
        record_blend(*mix.blend, worksheet);
    }
    if (auto why = steps_of(tables.method).add_aggregates(mix, tables, proportions)) {
        return why;
    }
    put_aggregates_before_admixtures(ingredients);
    proportions.totals = total(ingredients);
    proportions.method = tables.method.name;
    proportions.procedure = tables.method.procedure;
    proportions.blend = mix.blend;
    if (steps_of(tables.method).is_checked_by_mass) {
        cross_check_by_mass(proportions, tables, worksheet);
    }
    return record_temperature(mix.requirements, mix.batched_water, proportions, tables);
}

} // namespace

std::optional<Unresolved> figures(const CompleteMix& mix, const Tables& tables,
                                  Proportions& proportions) {
    proportions.ingredients.clear();
    proportions.temperature.reset();
    proportions.submitted = false;
    proportions.is_load = false;
    proportions.worksheet = {.steps = {}, .cautions = {}, .is_told = false};
    return solve(*mix, tables, proportions);
}

Outcome<Proportions> proportion(const CompleteMix& mix, const Tables& tables) {
    Proportions proportions{};
    record_site(mix->requirements, tables.code, proportions.worksheet);
    record_typical_figures(materials_of(*mix), tables, proportions.worksheet);
    if (auto why = solve(*mix, tables, proportions)) {
        return std::move(*why);
    }
    caution(mix->requirements, proportions, tables);
    return proportions;
}

Outcome<Proportions> proportions_of(const AnyCompleteMix& mix, const Tables& tables) {
    if (const auto* submitted = std::get_if<CompleteSubmittedMix>(&mix)) {
        return accept(*submitted, tables);
    }
    return proportion(std::get<CompleteMix>(mix), tables);
}

} // namespace boardmark::core
