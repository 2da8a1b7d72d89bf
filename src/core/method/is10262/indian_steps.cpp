// The steps of IS 10262: a target of cubes, water by size and shape, the stone by its share of the
// aggregate volume.

#include <boardmark/core/basis/tables.hpp>

#include "../aggregate_shares.hpp"
#include "../coarse_aggregate.hpp"
#include "../fine_aggregate.hpp"
#include "../method_steps.hpp"
#include "coarse_share.hpp"
#include "indian_target.hpp"
#include "indian_water.hpp"

namespace boardmark::core {
namespace {

std::optional<Unresolved> add_by_coarse_share(const Mix& mix, const Tables& tables,
                                              Proportions& proportions) {
    if (mix.selections.fine_share_percent) {
        return add_by_stated_share(mix, tables, proportions);
    }
    if (mix.selections.coarse_dry_kg_m3) { // as a trial has it
        return aci_steps().add_aggregates(mix, tables, proportions);
    }
    const Selection& selection = proportions.selection;
    const auto share = indian_coarse_share(mix, {selection.nominal_max_size_mm, selection.w_cm},
                                           tables.method, proportions.worksheet);
    return share ? add_by_share_of_volume(mix, 1 - *share, tables, proportions.ingredients)
                 : share.why();
}

} // namespace

const MethodSteps& indian_steps() {
    static constexpr MethodSteps steps{
        .average_before_air = [](const Mix& mix, const Tables& tables,
                                 Worksheet& worksheet) -> Outcome<std::optional<double>> {
            auto target = indian_target_mpa(mix, tables, worksheet);
            return target ? Outcome{std::optional{*target}}
                          : Outcome<std::optional<double>>{std::move(target).why()};
        },
        .average_with_air = nullptr,
        .ratio_by_strength = [](const Mix&, const PasteDemand& demand, const Tables& tables,
                                Worksheet&) -> Outcome<double> {
            return no_indian_ratio(demand.average_mpa, tables.method);
        },
        .water_kg_m3 =
            [](const Mix& mix, const WaterEntry& entry, const Tables& tables,
               Worksheet& worksheet) {
                return indian_water_kg_m3(mix, entry, tables.method, worksheet);
            },
        .add_aggregates = add_by_coarse_share,
        .entrapped_air = [](const MethodTables& method) -> const SizeRow* {
            const auto& row = method.indian->entrapped_air_percent;
            return row ? &*row : nullptr;
        },
        .is_checked_by_mass = false,
        .has_margin_of_cubes = true};
    return steps;
}

} // namespace boardmark::core
