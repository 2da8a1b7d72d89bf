#include "british_aggregates.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../../basis/phrases.hpp"
#include "../../mix/aggregate_blend.hpp"
#include "../../mix/ingredients.hpp"
#include "../../mix/material_figures.hpp"
#include "chart_readings.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Volume of 1 kg of a blend, saturated surface-dry, over that of as much water.
double volume_of_kg(const std::vector<Share>& shares, const Tables& tables) {
    double sum = 0;
    for (const Share& share : shares) {
        sum += share.percent / 100 / relative_density(*share.material, tables)->value;
    }
    return sum;
}

/// Of all aggregate; of the stone alone while the sand's share is not known.
double relative_density_of_all(const Mix& mix, const Tables& tables) {
    const double fine = mix.selections.fine_share_by_mass_percent.value_or(0) / 100;
    return 1 /
           (fine * volume_of_kg(mix.fine, tables) + (1 - fine) * volume_of_kg(mix.coarse, tables));
}

Unresolved no_aggregate_left(double density_kg_m3, double others_kg_m3) {
    return {{"the fresh density {density} leaves no aggregate beside {others} of water, binder and "
             "admixtures",
             {quantity("density", {density_kg_m3, Measure::concentration}),
              quantity("others", {others_kg_m3, Measure::concentration})}},
            {{"check the reading 'selections.fresh_density'", {}}}};
}

/// The stone that a trial held; sand is what it leaves of all aggregate.
std::optional<Unresolved> add_as_tried(const Mix& mix, double aggregate_kg_m3, const Tables& tables,
                                       std::vector<Ingredient>& ingredients) {
    const auto before = static_cast<std::ptrdiff_t>(ingredients.size());
    add_blend_of_dry_mass(mix.coarse, *mix.selections.coarse_dry_kg_m3, tables, ingredients);
    double fine_kg_m3 = aggregate_kg_m3;
    for (auto stone = ingredients.begin() + before; stone != ingredients.end(); ++stone) {
        fine_kg_m3 -= stone->kg_m3;
    }
    if (!(fine_kg_m3 > 0)) {
        return Unresolved{{"the coarse aggregate of the trial leaves no sand of {aggregate} of "
                           "aggregate",
                           {quantity("aggregate", {aggregate_kg_m3, Measure::concentration})}},
                          {{"take the coarse aggregate as the mix file selects it", {}}}};
    }
    add_blend_of_mass(mix.fine, fine_kg_m3, tables, ingredients);
    return std::nullopt;
}

void set_air(const Mix& mix, Proportions& proportions) {
    std::vector<Ingredient>& ingredients = proportions.ingredients;
    const auto air = std::ranges::find(ingredients, Role::air, &Ingredient::role);
    double filled_m3 = 0;
    for (const Ingredient& one : ingredients) {
        filled_m3 += one.role == Role::air ? 0 : one.volume_m3.value_or(0);
    }
    const double percent = std::max(1 - filled_m3, 0.0) * 100;
    *air = air_ingredient(percent);
    Selection& selection = proportions.selection;
    const double lost_percent = selection.air_entrained ? mix.requirements.air_loss_percent : 0;
    selection.air_percent = percent;
    selection.air_at_placing_percent = std::max(percent - lost_percent, 0.0);
    proportions.worksheet.record([&] {
        return Step{
            .quantity = "air_in_batch",
            .value = percent,
            .measure = Measure::percent,
            .provenance = Provenance::computed,
            .reason = {"what water, binder, admixtures and aggregate, {filled} of the volume, "
                       "leave of it; the fresh density is a reading of a chart",
                       {percent_of("filled", 100 * filled_m3)}}};
    });
}

} // namespace

std::optional<Unresolved> add_british_aggregates(const Mix& mix, const Tables& tables,
                                                 Proportions& proportions) {
    std::vector<Ingredient>& ingredients = proportions.ingredients;
    const Selection& selection = proportions.selection;
    const auto readings = aggregate_readings(
        mix,
        {.water_kg_m3 = selection.water_kg_m3,
         .w_cm = selection.w_cm,
         .size_mm = selection.nominal_max_size_mm,
         .slump_mm = selection.slump_before_reducer_mm.value_or(selection.slump_mm),
         .relative_density = relative_density_of_all(mix, tables),
         .entrained_air_percent = selection.air_entrained ? selection.air_percent : 0},
        tables.method, proportions.worksheet);
    if (!readings) {
        return readings.why();
    }
    double others_kg_m3 = 0;
    for (const Ingredient& one : ingredients) {
        others_kg_m3 += one.kg_m3;
    }
    const double aggregate_kg_m3 = readings->fresh_density_kg_m3 - others_kg_m3;
    if (!(aggregate_kg_m3 > 0)) {
        return no_aggregate_left(readings->fresh_density_kg_m3, others_kg_m3);
    }
    const double fine = readings->fine_share_percent / 100;
    proportions.worksheet.record([&] {
        return Step{.quantity = "aggregate",
                    .value = aggregate_kg_m3,
                    .measure = Measure::concentration,
                    .provenance = Provenance::computed,
                    .reason = {"fresh density {density} less {others} of water, binder and "
                               "admixtures; saturated surface-dry",
                               {quantity("density",
                                         {readings->fresh_density_kg_m3, Measure::concentration}),
                                quantity("others", {others_kg_m3, Measure::concentration})}}};
    });
    if (mix.selections.coarse_dry_kg_m3) {
        if (auto why = add_as_tried(mix, aggregate_kg_m3, tables, ingredients)) {
            return why;
        }
    } else {
        add_blend_of_mass(mix.coarse, aggregate_kg_m3 * (1 - fine), tables, ingredients);
        add_blend_of_mass(mix.fine, aggregate_kg_m3 * fine, tables, ingredients);
    }
    set_air(mix, proportions);
    return std::nullopt;
}

} // namespace boardmark::core
