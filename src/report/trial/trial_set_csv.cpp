#include <boardmark/report/trial/trial_set_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/csv_cells.hpp"
#include "../writing/names.hpp"
#include "trial_set_cautions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace boardmark::report {
namespace {

using core::UnitSystem;

/// The item to weigh of an ingredient, or nullptr.
const core::BatchItem* item_of(const core::SolvedTrial& mix, std::string_view name) {
    if (!mix.batch) {
        return nullptr;
    }
    const auto found = std::ranges::find(mix.batch->items, name, &core::BatchItem::name);
    return found == mix.batch->items.end() ? nullptr : &*found;
}

std::string rows_of(const core::SolvedTrial& mix, const std::string& label, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const std::string_view concentration = us ? "lb/yd3" : "kg/m3";
    const auto ids = failed_ids(mix.checks);
    const std::string remark =
        std::string{mix.proportions.estimate ? "estimate, must not be batched; " : ""} +
        (ids.empty() ? "" : fmt::format("not met: {}", fmt::join(ids, ", ")));
    std::string rows;
    for (const core::Ingredient& ingredient : mix.proportions.ingredients) {
        const core::BatchItem* item = item_of(mix, ingredient.name);
        const auto litres = item ? item->litres : std::nullopt;
        rows += csv_row(
            {label, csv_cell(std::string{ingredient.name}),
             std::string{core::name_of(ingredient.role)},
             csv_cell_in(ingredient.kg_m3, concentration),
             csv_cell_in(ingredient.dry_kg_m3, concentration),
             csv_cell(std::optional{100 * *ingredient.volume_m3}),
             csv_cell_in(item ? std::optional{item->kg} : std::nullopt, us ? "lb" : "kg"),
             csv_cell_in(litres ? std::optional{*litres / 1000} : std::nullopt, us ? "fl oz" : "L"),
             ingredient.by_trial ? "yes" : "no", csv_cell(remark)});
    }
    return rows;
}

} // namespace

std::string csv(const TrialSetResult& result, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const std::string_view mass = us ? "lb/yd3" : "kg/m3";
    std::string text =
        csv_row({"mix", "name", "role", fmt::format("mass SSD ({})", mass),
                 fmt::format("mass oven-dry ({})", mass), "absolute volume (% of 1)",
                 fmt::format("weigh ({})", us ? "lb" : "kg"),
                 fmt::format("or measure ({})", us ? "fl oz" : "L"), "dosed by trial", "remark"});
    for (const core::TrialMix& mix : result.set.mixes) {
        const std::string label = label_of(mix);
        if (const auto* unresolved = std::get_if<core::Unresolved>(&mix.outcome)) {
            text += csv_row({label, "", "", "", "", "", "", "", "",
                             csv_cell("no mix follows: " + words(unresolved->what, system))});
        } else {
            text += rows_of(*mix.solved(), label, system);
        }
    }
    return text;
}

} // namespace boardmark::report
