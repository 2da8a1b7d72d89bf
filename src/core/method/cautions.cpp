#include "cautions.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/high_range_reducer.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

void caution_flow(const Requirements& requirements, const Tables& tables,
                  const Proportions& proportions, std::vector<Phrase>& cautions) {
    const double limit_mm = tables.practice.formula_slump_mm.value;
    const double highest_mm =
        requirements.slump_window ? requirements.slump_window->high_mm : requirements.slump_mm;
    if (high_range_reducers(proportions).empty() && highest_mm <= limit_mm) {
        return;
    }
    cautions.push_back(
        {"Fluid concrete pushes harder on the forms: above {limit} slump, and with a high-range "
         "water reducer where nobody holds the slump to a highest one, assume the full liquid head "
         "unless the formwork's designer has found otherwise. A qualified person designs the "
         "formwork.",
         {quantity("limit", {limit_mm, Measure::slump})}});
}

void caution_slump(const Requirements& requirements, const Tables& tables,
                   const Proportions& proportions, std::vector<Phrase>& cautions) {
    if (!high_range_reducers(proportions).empty() || tables.method.slump.empty()) {
        return;
    }
    const auto walls = std::ranges::find(tables.method.slump, "beams and reinforced walls",
                                         &SlumpRecommendation::construction);
    assert(walls != tables.method.slump.end() && "the table has lost the row of walls");
    if (requirements.slump_mm >= walls->low_mm * 0.98 &&
        requirements.slump_mm <= walls->high_mm * 1.02) {
        return;
    }
    cautions.push_back(
        {"The slump of {slump} lies outside {low} to {high}, recommended for {what} "
         "consolidated by vibration ({source}).",
         {quantity("slump", {requirements.slump_mm, Measure::slump}),
          quantity("low", {walls->low_mm, Measure::slump}),
          quantity("high", {walls->high_mm, Measure::slump}), word("what", walls->construction),
          word("source", walls->source.citation)}});
}

/// Where the table makes a rich wall, says so and names what helps.
void caution_rich_mix(const Tables& tables, const Proportions& proportions,
                      std::vector<Phrase>& cautions) {
    const Selection& selection = proportions.selection;
    const auto& by_strength = selection.w_cm_by_strength;
    const auto& by_exposure = selection.w_cm_by_exposure;
    const double watch_kg_m3 = tables.practice.heat_watch_kg_m3.value;
    const double margin = tables.practice.strength_governs_margin.value;
    const bool two_ratios = by_strength && by_exposure && !same(*by_strength, *by_exposure);
    const bool strength_far_below = two_ratios &&
                                    selection.w_cm_governed_by == Governor::strength &&
                                    above(*by_exposure - *by_strength, margin);
    const bool rich = above(selection.binder_kg_m3, watch_kg_m3);
    if (proportions.submitted || (!strength_far_below && !rich)) {
        return;
    }
    const auto amount = [](std::string name, double kg_m3) {
        return quantity(std::move(name), {kg_m3, Measure::concentration});
    };
    Phrase told;
    if (rich) {
        told.text = "A rich mix: {binder} of cementitious material (above {watch} check heat, "
                    "shrinkage and cost). ";
        told.arguments = {amount("binder", selection.binder_kg_m3), amount("watch", watch_kg_m3)};
    }
    if (two_ratios) {
        told.text += "Strength requires w/cm {strength} ({strength_binder} of cementitious "
                     "material), the exposure classes {exposure} ({exposure_binder}). ";
        told.arguments.push_back(quantity("strength", {*by_strength, Measure::w_cm}));
        told.arguments.push_back(amount("strength_binder", selection.water_kg_m3 / *by_strength));
        told.arguments.push_back(quantity("exposure", {*by_exposure, Measure::w_cm}));
        told.arguments.push_back(amount("exposure_binder", selection.water_kg_m3 / *by_exposure));
    }
    told.text +=
        "What helps, in this order: field records of this class of mix; a three-point trial "
        "and its own strength curve; supplementary materials with a later strength age, if "
        "the engineer agrees; a water reducer; larger stone.";
    cautions.push_back(std::move(told));
}

/// With so little water a mix of site materials is not compacted, and the figure is rather a slip.
void caution_dry_mix(const Tables& tables, const Proportions& proportions,
                     std::vector<Phrase>& cautions) {
    const double w_cm = proportions.totals.w_cm;
    const double lowest = tables.practice.lowest_w_cm.value;
    if (!below(w_cm, lowest)) {
        return;
    }
    cautions.push_back(
        {"A w/cm of {w_cm} is unusually low, below {lowest}: check the water and the cementitious "
         "material again. If it is intended, such a mix is hard to place and to compact, shrinks "
         "by its own drying and is proven by trial alone.",
         {quantity("w_cm", {w_cm, Measure::w_cm}), quantity("lowest", {lowest, Measure::w_cm})}});
}

} // namespace

Phrase general_caution() {
    return {"Proportions are a start, to be proven by trial batches with the materials of the job. "
            "Local codes and the licensed engineer decide.",
            {}};
}

void caution(const Requirements& requirements, Proportions& proportions, const Tables& tables) {
    auto& cautions = proportions.worksheet.cautions;
    cautions.insert(cautions.end(), requirements.improbable.begin(), requirements.improbable.end());
    if (proportions.estimate) {
        cautions.insert(cautions.begin(),
                        {"An estimate with usual aggregate figures. It must not be batched: enter "
                         "the figures of the aggregate test reports first.",
                         {}});
    }
    caution_rich_mix(tables, proportions, cautions);
    caution_dry_mix(tables, proportions, cautions);
    caution_slump(requirements, tables, proportions, cautions);
    caution_flow(requirements, tables, proportions, cautions);
    if (requirements.strength_line) {
        cautions.push_back(
            {"The strength comes from a line through your own results: it is valid only for their "
             "materials, curing and air. With more air than theirs this concrete is weaker: "
             "compare them, and see what 'boardmark strength' says of those results.",
             {}});
    }
    cautions.push_back(general_caution());
    cautions.push_back({"Wet concrete burns skin and eyes: gloves, boots, eye protection, clean "
                        "water at hand. Dust of cement and of cut concrete holds silica: keep it "
                        "wet or extracted, wear a respirator.",
                        {}});
}

} // namespace boardmark::core
