#include "comparison_reasons.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// The last step of that name, which fixed its value; nothing where no step did.
void add_step(const Worksheet& worksheet, StepId id, std::vector<Step>& reasons) {
    const auto step = std::find_if(worksheet.steps.rbegin(), worksheet.steps.rend(),
                                   [&](const Step& one) { return one.is(id); });
    if (step != worksheet.steps.rend()) {
        reasons.push_back(*step);
    }
}

Step strength_step(const ComparedMix& column) {
    const Argument w_cm = quantity("w_cm", {column.proportions->totals.w_cm, Measure::w_cm});
    if (!column.strength) {
        return {
            .quantity = "expected_strength",
            .value = std::nullopt,
            .measure = Measure::strength,
            .provenance = Provenance::computed,
            .reason = {"none is read at w/cm {w_cm}: own data and table do not reach it", {w_cm}}};
    }
    return {.quantity = "expected_strength",
            .value = column.strength->mpa,
            .measure = Measure::strength,
            .provenance = Provenance::computed,
            .reason = {column.strength->in_place_of_own
                           ? "read at w/cm {w_cm}, for which the own results give none"
                           : "read at w/cm {w_cm}",
                       {w_cm}},
            .source = *column.strength->source,
            .marks = column.strength->marks()};
}

Step slump_step(const ComparedSlump& slump) {
    return {.quantity = "slump",
            .value = slump.mm,
            .measure = Measure::slump,
            .provenance = slump.estimate ? Provenance::computed : Provenance::given,
            .reason = slump.reason,
            .source = slump.source,
            .marks = slump.estimate ? Marks{Mark::estimate} : Marks{}};
}

Step heat_step(const ComparedMix& column, const HeatTables& heat) {
    return {.quantity = "heat_rise",
            .value = column.temperature_rise_k,
            .measure = Measure::temperature_difference,
            .provenance = Provenance::computed,
            .reason = {"the cementitious material {binder}, each kind by its heat against portland "
                       "cement's: {rise} for every {portland} of portland cement",
                       {quantity("binder",
                                 {column.proportions->totals.binder_kg_m3, Measure::concentration}),
                        quantity("rise",
                                 {heat.rise_k_of_100_kg_m3.value, Measure::temperature_difference}),
                        quantity("portland", {100, Measure::concentration})}},
            .source = heat.rise_k_of_100_kg_m3.source,
            .marks = with_confidence({Mark::estimate}, heat.rise_k_of_100_kg_m3.source)};
}

} // namespace

std::vector<Step> reasons_of(const ComparedMix& column, const Tables& tables) {
    const Worksheet& worksheet = column.proportions->worksheet;
    std::vector<Step> reasons;
    for (const StepId id : {step_ids::water, step_ids::w_cm, step_ids::binder}) {
        add_step(worksheet, id, reasons);
    }
    reasons.push_back(strength_step(column));
    reasons.push_back(slump_step(column.slump));
    reasons.push_back(heat_step(column, tables.heat));
    return reasons;
}

} // namespace boardmark::core
