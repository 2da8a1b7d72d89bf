// The steps of ACI 211.1: the average by the code, water and ratio by its tables, stone by its
// dry-rodded volume, sand in what is left.

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../code/required_strength.hpp"
#include "../mix/aggregate_blend.hpp"
#include "../mix/ingredients.hpp"
#include "aggregate_shares.hpp"
#include "coarse_aggregate.hpp"
#include "fine_aggregate.hpp"
#include "method_steps.hpp"
#include "water_cement_ratio.hpp"

#include <cassert>

namespace boardmark::core {
namespace {

/// The bulk volume of coarse aggregate, given or by the table.
Outcome<double> bulk_volume(const Mix& mix, const Selection& selection, const Tables& tables,
                            Worksheet& worksheet) {
    if (!mix.selections.coarse_volume) {
        return table_bulk_volume({selection.nominal_max_size_mm, *selection.fineness_modulus},
                                 mix.selections, tables, worksheet);
    }
    worksheet.record([&] {
        return Step{.quantity = "coarse_volume",
                    .value = *mix.selections.coarse_volume,
                    .measure = Measure::bulk_volume,
                    .provenance = Provenance::given,
                    .reason = {"given under 'selections'", {}},
                    .marks = {Mark::given}};
    });
    return *mix.selections.coarse_volume;
}

/// Oven-dry coarse aggregate, given as an amount or by its bulk volume.
Outcome<double> coarse_dry_kg_m3(const Mix& mix, const Tables& tables, Selection& selection,
                                 Worksheet& worksheet) {
    if (mix.selections.coarse_dry_kg_m3) {
        return *mix.selections.coarse_dry_kg_m3;
    }
    const auto volume = bulk_volume(mix, selection, tables, worksheet);
    if (!volume) {
        return volume.why();
    }
    selection.coarse_volume = *volume;
    const double density_kg_m3 = *dry_rodded_density_kg_m3(mix, tables, worksheet);
    const double dry_kg_m3 = *volume * density_kg_m3;
    worksheet.record([&] {
        return Step{
            .quantity = "coarse_aggregate_oven_dry",
            .value = dry_kg_m3,
            .measure = Measure::concentration,
            .provenance = Provenance::computed,
            .reason = {"bulk volume {volume} of the concrete's volume times {density}; saturated "
                       "surface-dry it is heavier by the absorption",
                       {quantity("volume", {*volume, Measure::bulk_volume}),
                        quantity("density", {density_kg_m3, Measure::bulk_density})}}};
    });
    return dry_kg_m3;
}

std::optional<Unresolved> add_by_bulk_volume(const Mix& mix, const Tables& tables,
                                             Proportions& proportions) {
    if (mix.selections.fine_share_percent) {
        return add_by_stated_share(mix, tables, proportions);
    }
    std::vector<Ingredient>& ingredients = proportions.ingredients;
    Worksheet& worksheet = proportions.worksheet;
    const auto dry_kg_m3 = coarse_dry_kg_m3(mix, tables, proportions.selection, worksheet);
    if (!dry_kg_m3) {
        return dry_kg_m3.why();
    }
    add_blend_of_dry_mass(mix.coarse, *dry_kg_m3, tables, ingredients);
    const auto room_m3 = room_for_fine_aggregate_m3(ingredients);
    if (!room_m3) {
        return room_m3.why();
    }
    record_fine_volume(*room_m3, tables.method, worksheet);
    add_blend_of_volume(mix.fine, *room_m3, tables, ingredients);
    return std::nullopt;
}

} // namespace

const MethodSteps& aci_steps() {
    static constexpr MethodSteps steps{
        .average_before_air = [](const Mix& mix, const Tables& tables,
                                 Worksheet& worksheet) -> Outcome<std::optional<double>> {
            return std::optional{required_average_strength(
                mix.requirements, tables.code->average_strength, worksheet)};
        },
        .average_with_air = nullptr,
        .ratio_by_strength =
            [](const Mix& mix, const PasteDemand& demand, const Tables& tables,
               Worksheet& worksheet) {
                return w_cm_by_strength(mix.requirements,
                                        {demand.average_mpa, demand.air_entrained}, tables,
                                        worksheet);
            },
        .water_kg_m3 =
            [](const Mix&, const WaterEntry& entry, const Tables& tables, Worksheet& worksheet) {
                return table_water_kg_m3(entry, tables, worksheet);
            },
        .add_aggregates = add_by_bulk_volume,
        .entrapped_air = [](const MethodTables& method) { return &method.entrapped_air_percent; },
        .is_checked_by_mass = true,
        .has_margin_of_cubes = false};
    return steps;
}

} // namespace boardmark::core
