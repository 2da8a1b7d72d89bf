#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "cement_words.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"
#include "suspect_chloride.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// How a cement stands to what a class accepts.
enum class Acceptance {
    accepted,
    in_sea_water_only, ///< by its C3A at a low w/cm
    type_not_stated,
    not_accepted,
    no_cement,
};

struct CementFinding {
    Acceptance acceptance = Acceptance::no_cement;
    const Material* cement = nullptr;
};

Verdict verdict_of(Acceptance acceptance) {
    switch (acceptance) {
    case Acceptance::accepted:
        return Verdict::holds;
    case Acceptance::in_sea_water_only:
        return Verdict::watch;
    case Acceptance::not_accepted:
        return Verdict::fails;
    case Acceptance::type_not_stated:
    case Acceptance::no_cement:
        break;
    }
    return Verdict::not_checked;
}

bool suits_sea_water(const Material& cement, const ExposureClass& exposure,
                     const CheckContext& context) {
    const auto& seawater = context.code.seawater;
    return seawater && exposure.name == seawater->class_name && cement.binder.c3a_percent &&
           !above(*cement.binder.c3a_percent, seawater->max_c3a_percent) &&
           at_most({context.proportions.totals.w_cm, seawater->max_w_cm, w_cm_precision}) !=
               Verdict::fails;
}

Acceptance examine(const Material& cement, const ExposureClass& exposure,
                   const CheckContext& context) {
    const bool accepted =
        std::ranges::any_of(exposure.sulfate_cements, [&](const std::string& designation) {
            return holds_words(cement.standard, designation);
        });
    return accepted                                     ? Acceptance::accepted
           : suits_sea_water(cement, exposure, context) ? Acceptance::in_sea_water_only
           : states_cement_type(cement.standard)        ? Acceptance::not_accepted
                                                        : Acceptance::type_not_stated;
}

/// The cement that asks most for a reader's attention.
CementFinding worst_cement(const ExposureClass& exposure, const CheckContext& context) {
    CementFinding worst;
    for (const Ingredient& binder : context.proportions.ingredients) {
        if (binder.role != Role::binder || !is_cement(binder.material->kind)) {
            continue;
        }
        const Acceptance found = examine(*binder.material, exposure, context);
        if (!worst.cement || severity(verdict_of(found)) > severity(verdict_of(worst.acceptance))) {
            worst = {found, &*binder.material};
        }
    }
    return worst;
}

Phrase message_of(const CementFinding& found, const ExposureClass& exposure,
                  const CheckContext& context) {
    if (found.acceptance == Acceptance::no_cement) {
        return {"the binder holds no cement", {}};
    }
    const Material& cement = *found.cement;
    const Argument name = word("name", cement.name);
    const Argument standard = word("standard", cement.standard);
    const Argument exposure_class = word("class", exposure.name);
    const Argument accepted = word("accepted", joined(exposure.sulfate_cements));
    switch (found.acceptance) {
    case Acceptance::accepted:
        return {"{name} ({standard}) is accepted in {class}", {name, standard, exposure_class}};
    case Acceptance::in_sea_water_only:
        return {"{name}: C3A {c3a} at w/cm not above {w_cm} is accepted in sea water, not in "
                "sulfate soil ({source})",
                {name, percent_of("c3a", *cement.binder.c3a_percent),
                 quantity("w_cm", {context.code.seawater->max_w_cm, Measure::w_cm}),
                 word("source", context.code.seawater->source.citation)}};
    case Acceptance::type_not_stated:
        return {"{name} states no type of ASTM C150, C595 or C1157: the mill certificate has it; "
                "add 'standard' ({class} accepts {accepted})",
                {name, exposure_class, accepted}};
    case Acceptance::not_accepted:
    case Acceptance::no_cement:
        break;
    }
    return {"{name} ({standard}) is not accepted in {class}, which requires {accepted}",
            {name, standard, exposure_class, accepted}};
}

void check_cement(const CheckContext& context, const ExposureClass& exposure, Findings& findings) {
    const CementFinding found = worst_cement(exposure, context);
    const Verdict verdict = verdict_of(found.acceptance);
    const bool low_expansion = exposure.pozzolanic_limits && verdict == Verdict::holds &&
                               !binder_holds_pozzolan_or_slag(context.proportions);
    findings.add(
        {.id = check_ids::cement_sulfate, .verdict = low_expansion ? Verdict::watch : verdict},
        [&](Check& told) {
            told.requirement = exposure.name;
            told.source = exposure.limits.source;
            told.message = message_of(found, exposure, context);
            if (low_expansion) {
                told.message.text += "; without pozzolan or slag the cement must show the low "
                                     "expansion that the code's second option requires";
            }
        });
}

/// An accelerator with chloride, or else the last whose chloride is not stated.
const Material* suspect_accelerator(const Proportions& proportions) {
    const Material* suspect = nullptr;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (!may_hold_calcium_chloride(ingredient)) {
            continue;
        }
        suspect = &*ingredient.material;
        if (suspect->chloride_percent) {
            break;
        }
    }
    return suspect;
}

/// Calcium chloride is not permitted in the severe sulfate classes.
void check_calcium_chloride(const CheckContext& context, const ExposureClass& exposure,
                            Findings& findings) {
    if (!exposure.bars_calcium_chloride) {
        return;
    }
    const Material* suspect = suspect_accelerator(context.proportions);
    const bool holds_chloride = suspect && suspect->chloride_percent;
    findings.add(
        {.id = check_ids::chloride_sulfate,
         .verdict = !suspect         ? Verdict::holds
                    : holds_chloride ? Verdict::fails
                                     : Verdict::not_checked},
        [&](Check& told) {
            told.requirement = exposure.name;
            told.source = exposure.limits.source;
            if (!suspect) {
                told.message = {"no accelerator that could contain calcium chloride", {}};
                return;
            }
            told.message = {
                holds_chloride
                    ? "{name} contains chloride; calcium chloride is not permitted in {class}"
                    : "{name} does not state its chloride; calcium chloride is not "
                      "permitted in {class}",
                {word("name", suspect->name), word("class", exposure.name)}};
        });
}

} // namespace

void check_sulfate_cement(const CheckContext& context, Findings& findings) {
    const ExposureClass* exposure = context.stated.first(
        [](const ExposureClass& stated) { return !stated.sulfate_cements.empty(); });
    if (exposure) {
        check_cement(context, *exposure, findings);
        check_calcium_chloride(context, *exposure, findings);
    }
}

} // namespace boardmark::core
