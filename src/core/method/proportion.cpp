#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../code/required_strength.hpp"
#include "../code/site_exposure.hpp"
#include "../mix/aggregate_blend.hpp"
#include "../mix/ingredients.hpp"
#include "../mix/material_figures.hpp"
#include "../weather/placing_temperature.hpp"
#include "air_content.hpp"
#include "cautions.hpp"
#include "coarse_aggregate.hpp"
#include "fine_aggregate.hpp"
#include "fresh_density.hpp"
#include "paste.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

std::vector<const Material*> materials_of(const Mix& mix) {
    std::vector<const Material*> materials;
    for (const auto* shares : {&mix.binder, &mix.coarse, &mix.fine}) {
        for (const Share& share : *shares) {
            materials.push_back(&share.material);
        }
    }
    for (const Dosage& dosage : mix.admixtures) {
        materials.push_back(&dosage.material);
    }
    return materials;
}

std::vector<Ingredient> binder_of(const Mix& mix, double binder_kg_m3, const Tables& tables) {
    std::vector<Ingredient> binder;
    for (const Share& share : mix.binder) {
        binder.push_back(
            binder_ingredient(share.material, binder_kg_m3 * share.percent / 100, tables));
    }
    return binder;
}

std::vector<Ingredient> admixtures_of(const Mix& mix, double binder_kg_m3, const Tables& tables) {
    std::vector<Ingredient> admixtures;
    for (const Dosage& dosage : mix.admixtures) {
        Ingredient ingredient = admixture_ingredient(
            dosage.material, dosed_kg_m3(dosage, binder_kg_m3, tables), tables);
        ingredient.by_trial = !dosage.dose;
        admixtures.push_back(std::move(ingredient));
    }
    return admixtures;
}

/// Water to batch besides the admixtures' liquid, which is part of the mixing water.
double batched_water_kg_m3(double water_kg_m3, const std::vector<Ingredient>& admixtures) {
    const double liquid_kg_m3 = sum_of_liquids_kg_m3(admixtures);
    if (liquid_kg_m3 > water_kg_m3) {
        throw Unresolved{{"the admixtures bring {liquid} of liquid, more than the mixing water of "
                          "{water}",
                          {quantity("liquid", {liquid_kg_m3, Measure::concentration}),
                           quantity("water", {water_kg_m3, Measure::concentration})}},
                         {{"lower the doses", {}},
                          {"state the solids of the admixtures: without them the whole liquid "
                           "counts as water",
                           {}}}};
    }
    return water_kg_m3 - liquid_kg_m3;
}

void append(std::vector<Ingredient>& to, std::vector<Ingredient> from) {
    std::ranges::move(from, std::back_inserter(to));
}

/// The bulk volume of coarse aggregate, given or by the table.
double bulk_volume(const Mix& mix, const Selection& selection, const Tables& tables,
                   Worksheet& worksheet) {
    if (mix.selections.coarse_volume) {
        worksheet.steps.push_back({.quantity = "coarse_volume",
                                   .value = *mix.selections.coarse_volume,
                                   .measure = Measure::bulk_volume,
                                   .provenance = Provenance::given,
                                   .reason = {"given under 'selections'", {}},
                                   .marks = {Mark::given}});
        return *mix.selections.coarse_volume;
    }
    return table_bulk_volume({selection.nominal_max_size_mm, *selection.fineness_modulus},
                             mix.selections, tables, worksheet);
}

/// Oven-dry coarse aggregate, given as an amount or by its bulk volume.
double coarse_dry_kg_m3(const Mix& mix, const Tables& tables, Selection& selection,
                        Worksheet& worksheet) {
    if (mix.selections.coarse_dry_kg_m3) {
        return *mix.selections.coarse_dry_kg_m3;
    }
    selection.coarse_volume = bulk_volume(mix, selection, tables, worksheet);
    const double density_kg_m3 = *dry_rodded_density_kg_m3(mix, tables, worksheet);
    const double dry_kg_m3 = *selection.coarse_volume * density_kg_m3;
    worksheet.steps.push_back(
        {.quantity = "coarse_aggregate_oven_dry",
         .value = dry_kg_m3,
         .measure = Measure::concentration,
         .provenance = Provenance::computed,
         .reason = {"bulk volume {volume} of the concrete's volume times {density}; saturated "
                    "surface-dry it is heavier by the absorption",
                    {quantity("volume", {*selection.coarse_volume, Measure::bulk_volume}),
                     quantity("density", {density_kg_m3, Measure::bulk_density})}}});
    return dry_kg_m3;
}

/// Coarse and fine aggregate in what the paste and the air leave of 1 m3.
std::vector<Ingredient> aggregates_of(const Mix& mix, const std::vector<Ingredient>& others,
                                      const Tables& tables, Selection& selection,
                                      Worksheet& worksheet) {
    if (mix.selections.fine_share_percent) {
        const double share = *mix.selections.fine_share_percent / 100;
        const double room_m3 = room_for_aggregate_m3(others);
        record_fine_share(*mix.selections.fine_share_percent, worksheet);
        auto aggregates = blend_of_volume(mix.coarse, room_m3 * (1 - share), tables);
        append(aggregates, blend_of_volume(mix.fine, room_m3 * share, tables));
        return aggregates;
    }
    const double dry_kg_m3 = coarse_dry_kg_m3(mix, tables, selection, worksheet);
    auto aggregates = blend_of_dry_mass(mix.coarse, dry_kg_m3, tables);
    std::vector<Ingredient> all_but_fine = others;
    append(all_but_fine, aggregates);
    const double room_m3 = room_for_fine_aggregate_m3(all_but_fine);
    record_fine_volume(room_m3, worksheet);
    append(aggregates, blend_of_volume(mix.fine, room_m3, tables));
    return aggregates;
}

} // namespace

Proportions proportion(const Mix& mix, const Tables& tables) {
    Proportions proportions;
    Worksheet& worksheet = proportions.worksheet;
    Selection& selection = proportions.selection;
    const auto materials = materials_of(mix);

    record_site(mix.requirements, tables, worksheet);
    record_typical_figures(materials, tables, worksheet);
    proportions.estimate = std::ranges::any_of(
        materials, [](const Material* material) { return material->aggregate.typical; });

    const double average_mpa =
        required_average_strength(mix.requirements, tables.code.average_strength, worksheet);
    const double size_mm = largest_size_mm(mix.coarse);
    const AirContent air = select_air(mix, size_mm, tables, worksheet);
    const Paste paste = select_paste(mix, {average_mpa, size_mm, air.entrained}, tables, worksheet);

    selection = {.specified_strength_mpa = mix.requirements.strength_mpa,
                 .required_average_strength_mpa = average_mpa,
                 .slump_mm = mix.requirements.slump_mm,
                 .slump_before_reducer_mm = mix.requirements.slump_before_reducer_mm,
                 .nominal_max_size_mm = size_mm,
                 .air_percent = air.in_batch_percent,
                 .air_at_placing_percent = air.at_placing_percent,
                 .w_cm = paste.w_cm(),
                 .w_cm_by_strength = paste.w_cm_by_strength,
                 .w_cm_by_exposure = paste.w_cm_by_exposure,
                 .w_cm_governed_by = paste.governed_by,
                 .table_water_kg_m3 = paste.table_water_kg_m3,
                 .water_reduction_percent = paste.water_reduction_percent,
                 .water_kg_m3 = paste.water_kg_m3,
                 .binder_kg_m3 = paste.binder_kg_m3,
                 .coarse_volume = std::nullopt,
                 .fineness_modulus = blend_fineness_modulus(mix.fine, tables, worksheet),
                 .air_entrained = air.entrained,
                 .strength_by_trial = mix.selections.w_cm_by_exposure};

    const auto admixtures = admixtures_of(mix, paste.binder_kg_m3, tables);
    std::vector<Ingredient> others{
        water_ingredient(batched_water_kg_m3(paste.water_kg_m3, admixtures), tables)};
    append(others, binder_of(mix, paste.binder_kg_m3, tables));
    std::vector<Ingredient> around = others;
    append(around, admixtures);
    around.push_back(air_ingredient(air.in_batch_percent));

    proportions.ingredients = std::move(others);
    append(proportions.ingredients, aggregates_of(mix, around, tables, selection, worksheet));
    append(proportions.ingredients, admixtures);
    proportions.ingredients.push_back(air_ingredient(air.in_batch_percent));
    proportions.totals = total(proportions.ingredients);

    cross_check_by_mass(proportions, tables, worksheet);
    record_temperature(mix.requirements, mix.batched_water, proportions, tables);
    caution(mix.requirements, proportions, tables);
    return proportions;
}

Proportions proportions_of(const AnyMix& mix, const Tables& tables) {
    if (const auto* submitted = std::get_if<SubmittedMix>(&mix)) {
        return accept(*submitted, tables);
    }
    return proportion(std::get<Mix>(mix), tables);
}

const Requirements& requirements_of(const AnyMix& mix) {
    return std::visit([](const auto& either) -> const Requirements& { return either.requirements; },
                      mix);
}

} // namespace boardmark::core
