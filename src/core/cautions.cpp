#include "cautions.hpp"

#include "phrases.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool holds_high_range_reducer(const Proportions& proportions) {
    return std::ranges::any_of(proportions.ingredients, [](const Ingredient& ingredient) {
        return ingredient.material &&
               ingredient.material->kind == Kind::high_range_water_reducer;
    });
}

void caution_flow(const Requirements& requirements, const Tables& tables,
                  const Proportions& proportions, std::vector<Phrase>& cautions) {
    const double limit_mm = tables.practice.formula_slump_mm.value;
    const double highest_mm =
        requirements.slump_window ? requirements.slump_window->high_mm : requirements.slump_mm;
    if (!holds_high_range_reducer(proportions) && highest_mm <= limit_mm) {
        return;
    }
    cautions.push_back({"Fluid concrete pushes harder on the forms: above {limit} slump, and with "
                        "a high-range water reducer, count on the full liquid head unless the "
                        "formwork's designer has found otherwise. A qualified person designs the "
                        "formwork.",
                        {quantity("limit", {limit_mm, Measure::slump})}});
}

void caution_slump(const Requirements& requirements, const Tables& tables,
                   const Proportions& proportions, std::vector<Phrase>& cautions) {
    if (holds_high_range_reducer(proportions) || tables.method.slump.empty()) {
        return;
    }
    const SlumpRecommendation& walls =
        *std::ranges::find_if(tables.method.slump, [](const SlumpRecommendation& row) {
            return row.construction == "beams and reinforced walls";
        });
    if (requirements.slump_mm >= walls.low_mm * 0.98 &&
        requirements.slump_mm <= walls.high_mm * 1.02) {
        return;
    }
    cautions.push_back({"The slump of {slump} lies outside {low} to {high}, recommended for {what} "
                        "consolidated by vibration ({source}).",
                        {quantity("slump", {requirements.slump_mm, Measure::slump}),
                         quantity("low", {walls.low_mm, Measure::slump}),
                         quantity("high", {walls.high_mm, Measure::slump}),
                         word("what", walls.construction),
                         word("source", walls.source.citation)}});
}

} // namespace

void caution(const Requirements& requirements, Proportions& proportions, const Tables& tables) {
    auto& cautions = proportions.worksheet.cautions;
    if (proportions.estimate) {
        cautions.insert(cautions.begin(),
                        {"An estimate with usual aggregate figures. It must not be batched: enter "
                         "the figures of the aggregate test reports first.",
                         {}});
    }
    caution_slump(requirements, tables, proportions, cautions);
    caution_flow(requirements, tables, proportions, cautions);
    cautions.push_back({"Proportions are a start, to be proven by trial batches with the materials "
                        "of the job. Local codes and the licensed engineer decide.",
                        {}});
    cautions.push_back({"Wet concrete burns skin and eyes: gloves, boots, eye protection, clean "
                        "water at hand. Dust of cement and of cut concrete holds silica: keep it "
                        "wet or extracted, wear a respirator.",
                        {}});
}

} // namespace boardmark::core
