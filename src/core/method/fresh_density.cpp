#include "fresh_density.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"

namespace boardmark::core {

void cross_check_by_mass(const Proportions& proportions, const Tables& tables,
                         Worksheet& worksheet) {
    if (!worksheet.is_told) {
        return; // nothing else reads it
    }
    const Selection& selection = proportions.selection;
    const SizeRow& row = selection.air_entrained ? tables.method.fresh_density_air_entrained_kg_m3
                                                 : tables.method.fresh_density_plain_kg_m3;
    const auto estimate = value_at_size(row, selection.nominal_max_size_mm);
    Step step{
        .quantity = "fine_aggregate_by_mass",
        .value = std::nullopt,
        .measure = Measure::concentration,
        .provenance = Provenance::computed,
        .reason = {"not checked: the table of fresh densities has no figure for {size} stone",
                   {quantity("size", {selection.nominal_max_size_mm, Measure::aggregate_size})}},
        .source = row.source,
        .marks = with_confidence({Mark::estimate}, row.source)};
    if (estimate) {
        double coarse_dry_kg_m3 = 0;
        for (const Ingredient* coarse : of_role(proportions, Role::coarse)) {
            coarse_dry_kg_m3 += *coarse->dry_kg_m3;
        }
        double fine_dry_kg_m3 = 0;
        for (const Ingredient* fine : of_role(proportions, Role::fine)) {
            fine_dry_kg_m3 += *fine->dry_kg_m3;
        }
        step.value = estimate->value - proportions.totals.water_kg_m3 -
                     proportions.totals.binder_kg_m3 - coarse_dry_kg_m3;
        step.reason = {
            "cross-check: first estimate of fresh density {density} less {water} of "
            "water, {cementitious} of cementitious material and {coarse} of dry coarse "
            "aggregate; by volume {fine} dry",
            {quantity("density", {estimate->value, Measure::concentration}),
             quantity("water", {proportions.totals.water_kg_m3, Measure::concentration}),
             quantity("cementitious", {proportions.totals.binder_kg_m3, Measure::concentration}),
             quantity("coarse", {coarse_dry_kg_m3, Measure::concentration}),
             quantity("fine", {fine_dry_kg_m3, Measure::concentration})}};
    }
    worksheet.steps.push_back(std::move(step));
}

} // namespace boardmark::core
