// Pigments and white cement: the dose, the water, and what keeps the colour of a face even. What
// the trade advises never fails; the highest dose of the pigments' standard does.

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/material_figures.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "suspect_chloride.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr std::string_view colour = "colour";

bool is_pigment(const Ingredient& ingredient) {
    return ingredient.goes_in() && ingredient.material &&
           ingredient.material->kind == Kind::pigment;
}

bool holds_pigment(const Proportions& proportions) {
    return std::ranges::any_of(proportions.ingredients, is_pigment);
}

/// All pigments of a mix together.
struct PigmentDose {
    double of_cement_percent; ///< portland, blended and white cement alone
    double of_binder_percent;
    bool by_trial;                          ///< one is dosed as needed and counts as nothing
    std::optional<double> own_most_percent; ///< the smallest highest dose that a data sheet states
};

PigmentDose dose_of(const Proportions& proportions, const Tables& tables) {
    double pigment_kg = 0;
    double cement_kg = 0;
    PigmentDose dose{};
    for (const Ingredient& one : proportions.ingredients) {
        cement_kg += one.material && is_cement(one.material->kind) ? one.kg_m3 : 0;
        if (!is_pigment(one)) {
            continue;
        }
        pigment_kg += one.kg_m3;
        dose.by_trial = dose.by_trial || one.by_trial;
        if (const auto& most = one.material->admixture.maximum_dose) {
            const double percent =
                dose_percent(*most, product_density(*one.material, tables).value);
            dose.own_most_percent = std::min(dose.own_most_percent.value_or(percent), percent);
        }
    }
    const double binder_kg = proportions.totals.binder_kg_m3;
    dose.of_binder_percent = 100 * pigment_kg / binder_kg;
    dose.of_cement_percent = 100 * pigment_kg / (cement_kg > 0 ? cement_kg : binder_kg);
    return dose;
}

/// The highest dose is one of cement; whether that counts the other cementitious materials is not
/// said. It is broken for certain only where it is so by both counts.
Verdict dose_verdict(const PigmentDose& dose, const PracticeTables& practice) {
    const double most = practice.pigment_most_percent.value;
    if (dose.by_trial) {
        return Verdict::not_checked;
    }
    if (at_most({dose.of_binder_percent, most, percent_precision}) == Verdict::fails) {
        return Verdict::fails;
    }
    const bool above_own =
        dose.own_most_percent && above(dose.of_binder_percent, *dose.own_most_percent);
    return above_own || above(dose.of_cement_percent, practice.pigment_watch_percent.value)
               ? Verdict::watch
               : Verdict::holds;
}

void check_dose(const CheckContext& context, Findings& findings) {
    const PracticeTables& practice = context.tables.practice;
    const PigmentDose dose = dose_of(context.proportions, context.tables);
    const Verdict verdict = dose_verdict(dose, practice);
    Finding found{.id = check_ids::pigment_dose, .verdict = verdict, .measure = Measure::percent};
    if (verdict != Verdict::not_checked) {
        found.value = dose.of_cement_percent;
        found.limit = Limit{.low = std::nullopt, .high = practice.pigment_most_percent.value};
    }
    findings.add(found, [&](Check& told) {
        told.requirement = colour;
        told.source = practice.pigment_most_percent.source;
        if (verdict == Verdict::not_checked) {
            told.message = {"a pigment is dosed as needed: state its dose under "
                            "'mixture.admixtures'; the sample panel settles it",
                            {}};
            return;
        }
        told.message = {"pigment is {cement} of the cement, {binder} of all cementitious material; "
                        "at most {most}, and whether that is of cement alone is not said",
                        {percent_of("cement", dose.of_cement_percent),
                         percent_of("binder", dose.of_binder_percent),
                         percent_of("most", practice.pigment_most_percent.value)}};
        if (dose.own_most_percent && above(dose.of_binder_percent, *dose.own_most_percent)) {
            told.message.text += "; together more than {own}, the least that a data sheet permits "
                                 "of one";
            told.message.arguments.push_back(percent_of("own", *dose.own_most_percent));
        } else if (above(dose.of_cement_percent, practice.pigment_watch_percent.value)) {
            told.message.text += "; above about {watch} more pigment adds little colour and costs "
                                 "workability and strength";
            told.message.arguments.push_back(
                percent_of("watch", practice.pigment_watch_percent.value));
        }
    });
}

/// What the dose asks for in water is a figure of its data sheet or of a trial: no table has it.
void check_water(const CheckContext& context, Findings& findings) {
    for (const Ingredient& one : context.proportions.ingredients) {
        if (!is_pigment(one)) {
            continue;
        }
        const auto& added = one.material->admixture.added_water_percent;
        // A stated amount of water is whatever it is: the trial tells whether it suffices.
        const bool counted = added && context.proportions.selection.table_water_kg_m3;
        Finding found{.id = check_ids::pigment_water,
                      .verdict = counted ? Verdict::holds : Verdict::not_checked,
                      .measure = Measure::percent};
        if (counted) {
            found.value = *added;
        }
        findings.add(found, [&](Check& told) {
            told.requirement = colour;
            told.source = context.tables.practice.coloured_face;
            told.message = {
                counted ? "{name} asks for {added} more mixing water at equal slump, "
                          "as its paper says; a trial batch proves it"
                : added ? "{name} asks for {added} more mixing water at equal slump: a "
                          "trial batch tells whether the stated water holds it"
                        : "fine pigment asks for water: state how much at equal slump "
                          "('materials.*.added_water'); the data sheet of {name} or a "
                          "trial batch tells it",
                {word("name", std::string{one.name}), percent_of("added", added.value_or(0))}};
        });
    }
}

void check_chloride_beside(const CheckContext& context, Findings& findings) {
    const Material* suspect = suspect_of_chloride(
        context.proportions, context.tables.practice.chloride_free_percent.value);
    const bool stated = suspect && suspect->chloride_percent;
    findings.add({.id = check_ids::pigment_chloride,
                  .verdict = !suspect ? Verdict::holds
                             : stated ? Verdict::watch
                                      : Verdict::not_checked},
                 [&](Check& told) {
                     told.requirement = colour;
                     told.source = context.tables.practice.pigment_air;
                     if (!suspect) {
                         told.message = {"no admixture with chloride beside the pigment", {}};
                         return;
                     }
                     told.message = {stated ? "{name} holds chloride: calcium chloride stains and "
                                              "mottles a coloured face"
                                            : "{name} does not state its 'chloride': calcium "
                                              "chloride stains and mottles a coloured face; the "
                                              "data sheet tells it",
                                     {word("name", suspect->name)}};
                 });
}

/// What nobody can hold by a file is told to be held.
void check_constancy(const CheckContext& context, Findings& findings) {
    int cements = 0;
    for (const Ingredient& one : context.proportions.ingredients) {
        cements += one.material && is_cement(one.material->kind);
    }
    const bool air = context.proportions.selection.air_entrained;
    findings.add({.id = check_ids::colour_constancy, .verdict = Verdict::watch}, [&](Check& told) {
        told.requirement = colour;
        told.source = context.tables.practice.coloured_face;
        told.message = {"colour stays even only with the same slump and w/cm in each load (more "
                        "water is paler), one cement, pigment weighed for each batch, no wash "
                        "water; the sample panel decides",
                        {}};
        if (cements > 1) {
            told.message.text += "; here are {cements} cements";
            told.message.arguments.push_back(
                quantity("cements", {double(cements), Measure::count}));
        }
        told.message.text +=
            air ? "; some pigments cut the air: measure it with the pigment in" : "";
    });
}

bool greys_white(Kind kind) {
    return kind == Kind::fly_ash || kind == Kind::silica_fume || kind == Kind::natural_pozzolan ||
           (is_cement(kind) && kind != Kind::white_cement);
}

/// White cement is proportioned like grey; what stands beside it colours the face.
void check_white(const CheckContext& context, Findings& findings) {
    const Ingredient* white = nullptr;
    const Ingredient* greying = nullptr;
    for (const Ingredient& one : context.proportions.ingredients) {
        if (one.role != Role::binder || !one.material || !(one.kg_m3 > 0)) {
            continue;
        }
        white = one.material->kind == Kind::white_cement ? &one : white;
        greying = greys_white(one.material->kind) ? &one : greying;
    }
    if (!white) {
        return;
    }
    findings.add(
        {.id = check_ids::colour_binder, .verdict = greying ? Verdict::watch : Verdict::holds},
        [&](Check& told) {
            told.requirement = colour;
            told.source = context.tables.practice.coloured_face;
            if (!greying) {
                told.message = {"white cement is proportioned like grey; no grey binder "
                                "stands beside {white}",
                                {word("white", std::string{white->name})}};
                return;
            }
            told.message = {"{greying} greys the white of {white}: prove the colour on a "
                            "sample panel",
                            {word("greying", std::string{greying->name}),
                             word("white", std::string{white->name})}};
        });
}

} // namespace

void check_colour(const CheckContext& context, Findings& findings) {
    check_white(context, findings);
    if (!holds_pigment(context.proportions)) {
        return;
    }
    check_dose(context, findings);
    check_water(context, findings);
    check_chloride_beside(context, findings);
    check_constancy(context, findings);
}

} // namespace boardmark::core
