#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>

#include "../basis/phrases.hpp"
#include "../checks/exposure_limits.hpp"
#include "../checks/trial_checks.hpp"
#include "../paper/fresh_windows.hpp"
#include "sections.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

const Check* check_of(const std::vector<Check>& checks, CheckId id) {
    const auto found =
        std::ranges::find_if(checks, [&](const Check& check) { return check.is(id); });
    return found == checks.end() ? nullptr : &*found;
}

constexpr const char* refusal = "DO NOT PLACE";

Phrase slump_asked(const Requirements& asked, const Tables& tables) {
    if (asked.slump_window) {
        return {"Slump at placing {slump}, permitted {low} to {high}, the same for every load",
                {quantity("slump", {asked.slump_mm, Measure::slump}),
                 quantity("low", {asked.slump_window->low_mm, Measure::slump}),
                 quantity("high", {asked.slump_window->high_mm, Measure::slump})}};
    }
    const double within_mm = slump_tolerance(asked.slump_mm, tables).within_mm.value;
    return {"Slump at placing {slump}, within {tolerance}, the same for every load",
            {quantity("slump", {asked.slump_mm, Measure::slump}),
             quantity("tolerance", {within_mm, Measure::slump})}};
}

Phrase air_asked(const BriefCase& brief) {
    const TestWindow air =
        air_window_of(brief.plan.proportions.selection, brief.plan.mix_checks, brief.tables);
    if (!air.low) {
        return {"No air is entrained; some {air} is trapped", {percent_of("air", *air.asked)}};
    }
    return {"Air at placing {air}, permitted {low} to {high}, tested on site",
            {percent_of("air", *air.asked), percent_of("low", *air.low),
             percent_of("high", *air.high)}};
}

/// Admixtures by their dose, the rest by mass.
Phrase amount_of(const Ingredient& ingredient, double binder_kg_m3) {
    if (ingredient.by_trial && ingredient.kg_m3 == 0) {
        return {"{name}: by trial", {word("name", ingredient.name)}};
    }
    const bool dosed = ingredient.role == Role::admixture && ingredient.volume_m3 &&
                       ingredient.material->kind != Kind::pigment;
    constexpr double ml_in_m3 = 1e6;
    return {"{name}: {amount}",
            {word("name", ingredient.name),
             dosed ? quantity("amount", {*ingredient.volume_m3 * ml_in_m3 / (binder_kg_m3 / 100),
                                         Measure::dose})
                   : quantity("amount", {ingredient.kg_m3, Measure::concentration})}};
}

/// The strength expected beside the strength required.
void add_strength(const std::vector<Check>& checks, BriefSection& section) {
    if (const Check* average = check_of(checks, check_ids::strength_average)) {
        section.items.push_back({"Strength: " + average->message.text, average->message.arguments});
    }
}

} // namespace

BriefSection brief_of_requirements(const BriefCase& brief) {
    const Requirements& asked = brief.asked;
    const Selection& selection = brief.plan.proportions.selection;
    BriefSection section{"WHAT IS ASKED", {}};
    section.items.push_back(
        {asked.strength_class.empty()
             ? "Compressive strength {strength} at {age}"
             : "Compressive strength {class}, {strength} of cylinders, at {age}",
         {word("class", asked.strength_class),
          quantity("strength", {asked.strength_mpa, Measure::strength}),
          quantity("age", {asked.strength_age_d, Measure::age})}});
    if (!asked.exposure.empty()) {
        section.items.push_back(
            {"Exposure {classes} of {code}",
             {word("classes", joined(asked.exposure)), word("code", asked.code)}});
    }
    if (selection.w_cm_by_exposure) {
        section.items.push_back({"w/cm at most {w_cm}; no water is added on site beyond what was "
                                 "held back and is on the ticket",
                                 {quantity("w_cm", {*selection.w_cm_by_exposure, Measure::w_cm})}});
    }
    section.items.push_back(slump_asked(asked, brief.tables));
    section.items.push_back(air_asked(brief));
    if (const Check* constancy =
            check_of(brief.plan.mix_checks, check_ids::finish_w_cm_constancy)) {
        section.items.push_back(constancy->message);
    }
    if (asked.board_marked) {
        section.items.push_back({"Board-marked face: one cement, one sand, one plant, one form "
                                 "treatment and one release agent from mock-up to last lift",
                                 {}});
    }
    return section;
}

BriefSection brief_of_mix(const BriefCase& brief) {
    const Proportions& mix = brief.plan.proportions;
    BriefSection section{mix.submitted ? "THE MIX, as submitted" : "THE MIX PROPOSED", {}};
    for (const Ingredient& ingredient : mix.ingredients) {
        if (ingredient.role == Role::air) {
            continue;
        }
        section.items.push_back(amount_of(ingredient, mix.totals.binder_kg_m3));
    }
    section.items.push_back(
        {"w/cm {w_cm}; mixing water {water}, all free water and the admixtures' "
         "liquid counted; aggregates saturated surface-dry",
         {quantity("w_cm", {mix.totals.w_cm, Measure::w_cm}),
          quantity("water", {mix.totals.water_kg_m3, Measure::concentration})}});
    section.items.push_back(headline_of(verdicts_of(brief.plan.mix_checks), refusal));
    add_strength(brief.plan.mix_checks, section);
    if (mix.estimate) {
        section.items.push_back(
            {"An ESTIMATE with usual figures of the aggregates: it must not be batched", {}});
    }
    section.items.push_back({"Proportions are a start: trial batches with the materials of the job "
                             "come before the mock-up",
                             {}});
    return section;
}

} // namespace boardmark::core
