#include <boardmark/core/comparison.hpp>
#include <boardmark/core/heat.hpp>
#include <boardmark/core/proportion.hpp>

#include "comparison_remarks.hpp"

namespace boardmark::core {
namespace {

/// Fills a column from its proportions.
void evaluate(ComparedMix& column, const Requirements& requirements, const Tables& tables) {
    const Proportions& proportions = *column.proportions;
    column.checks = assess(requirements, proportions, tables);
    column.strength = expected_strength(requirements, proportions.totals.w_cm,
                                        proportions.selection.air_entrained, tables);
    column.temperature_rise_k = temperature_rise_k(proportions, tables);
    column.cost = cost_of(proportions);
    column.reducer_cost_per_m3 = reducer_cost_per_m3(proportions);
    column.carbon = carbon_of(proportions);
    column.remarks = remarks_on(column, tables);
}

} // namespace

ComparedMix compared(std::string label, const AnyMix& mix, const Tables& tables) {
    ComparedMix column{.label = std::move(label)};
    const Requirements& requirements = requirements_of(mix);
    column.slump.mm = requirements.slump_mm;
    if (requirements.slump_mm > tables.practice.slump_measures_to_mm.value) {
        column.slump.mm = std::nullopt;
    }
    try {
        column.proportions = proportions_of(mix, tables);
    } catch (const Unresolved& unresolved) {
        column.unresolved = unresolved;
        return column;
    }
    evaluate(column, requirements, tables);
    return column;
}

} // namespace boardmark::core
