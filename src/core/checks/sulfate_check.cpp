#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "cement_words.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"
#include "remembered_limit.hpp"
#include "supplementary.hpp"
#include "suspect_chloride.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// How a cement stands to what a class accepts.
enum class Acceptance {
    accepted,
    in_sea_water_only, ///< by its C3A at a low w/cm
    type_not_stated,
    several_types,     ///< named, and not all of them are accepted
    attack_not_stated, ///< the class asks it of one attack only, which may be another here
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
    case Acceptance::several_types:
    case Acceptance::attack_not_stated:
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
    if (accepted && names_alternatives(cement.standard)) {
        return Acceptance::several_types;
    }
    return accepted                                     ? Acceptance::accepted
           : !exposure.cements_where.empty()            ? Acceptance::attack_not_stated
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
    case Acceptance::several_types:
        return {"{name} ({standard}) names more than one type: state the one that is delivered, "
                "as its mill certificate has it ({class} accepts {accepted})",
                {name, standard, exposure_class, accepted}};
    case Acceptance::attack_not_stated:
        return {"{class} asks {accepted} in the designation where {where}, and nothing tells "
                "whether it does: ask for the analysis of the ground; {name} is {standard}",
                {exposure_class, accepted, word("where", exposure.cements_where), name,
                 cement.standard.empty() ? word("standard", "of no stated standard") : standard}};
    case Acceptance::not_accepted:
    case Acceptance::no_cement:
        break;
    }
    return {"{name} ({standard}) is not accepted in {class}, which requires {accepted}",
            {name, standard, exposure_class, accepted}};
}

/// What a class asks beside a cement that it accepts.
enum class Beside {
    nothing,
    low_expansion,    ///< of a cement without pozzolan or slag, shown by a test
    proven_addition,  ///< so much pozzolan or slag as a test or a service record shows to be enough
    unknown_addition, ///< what a blended cement holds is not stated
    missing_addition,
};

Beside beside_of(const ExposureClass& exposure, const CheckContext& context) {
    const bool has_addition = binder_holds_pozzolan_or_slag(context.proportions);
    if (!exposure.needs_pozzolan && !exposure.pozzolanic_limits) {
        return Beside::nothing;
    }
    return has_addition                         ? Beside::proven_addition
           : unknown_blend(context.proportions) ? Beside::unknown_addition
           : exposure.needs_pozzolan            ? Beside::missing_addition
                                                : Beside::low_expansion;
}

Verdict verdict_of(Beside beside) {
    return beside == Beside::nothing            ? Verdict::holds
           : beside == Beside::missing_addition ? Verdict::fails
           : beside == Beside::unknown_addition ? Verdict::not_checked
                                                : Verdict::watch;
}

const char* words_of(Beside beside) {
    switch (beside) {
    case Beside::nothing:
        return "";
    case Beside::low_expansion:
        return "; without pozzolan or slag the cement must show the low expansion that the code's "
               "second option requires";
    case Beside::proven_addition: // a note to ACI 318-19 Table 19.3.2.1, from memory
        return "; that so much pozzolan or slag is enough has to be shown by its service record or "
               "by tests to ASTM C1012: ask for the report";
    case Beside::unknown_addition:
        return "; how much pozzolan or slag it holds is not stated: add 'contains'";
    case Beside::missing_addition:
        return "; the class asks pozzolan or slag beside it, and the binder holds none";
    }
    return "";
}

/// What is printed from memory never makes a figure hold.
Verdict as_remembered(Verdict verdict, const ExposureClass& exposure) {
    return exposure.limits.source.confidence == Confidence::from_memory
               ? worse(verdict, Verdict::watch)
               : verdict;
}

/// What a class says of the cements, and of what it asks beside them.
struct ClassFinding {
    const ExposureClass* exposure = nullptr;
    CementFinding cement = {};
    Beside beside = Beside::nothing;
    Verdict verdict = Verdict::holds;
};

ClassFinding hold_cements(const ExposureClass& exposure, const CheckContext& context) {
    const CementFinding found = worst_cement(exposure, context);
    const Verdict of_cement = verdict_of(found.acceptance);
    const Beside beside =
        of_cement == Verdict::holds ? beside_of(exposure, context) : Beside::nothing;
    return {&exposure, found, beside,
            as_remembered(worse(of_cement, verdict_of(beside)), exposure)};
}

/// What one class accepts another may not: the worst of all speaks, of equal ones the first.
void check_cement(const CheckContext& context, Findings& findings) {
    ClassFinding worst;
    for (const StatedClass& stated : context.stated) {
        if (stated.exposure->sulfate_cements.empty()) {
            continue;
        }
        const ClassFinding found = hold_cements(*stated.exposure, context);
        if (!worst.exposure || severity(found.verdict) > severity(worst.verdict)) {
            worst = found;
        }
    }
    if (!worst.exposure) {
        return;
    }
    findings.add({.id = check_ids::cement_sulfate, .verdict = worst.verdict}, [&](Check& told) {
        const ExposureClass& exposure = *worst.exposure;
        told.requirement = exposure.name;
        told.source = exposure.limits.source;
        told.message = message_of(worst.cement, exposure, context);
        told.message.text += words_of(worst.beside);
        append_memory(told.source, told.message);
    });
}

/// The class that bars calcium chloride, one that is read before one that is remembered.
const ExposureClass* barring_class(const StatedClasses& stated) {
    const ExposureClass* read = stated.first([](const ExposureClass& one) {
        return one.bars_calcium_chloride && one.limits.source.confidence != Confidence::from_memory;
    });
    return read ? read
                : stated.first([](const ExposureClass& one) { return one.bars_calcium_chloride; });
}

/// Calcium chloride is not permitted in the severe sulfate classes, nor in any other that bars it.
void check_calcium_chloride(const CheckContext& context, Findings& findings) {
    const ExposureClass* barring = barring_class(context.stated);
    if (!barring) {
        return;
    }
    const ExposureClass& exposure = *barring;
    const double trace_percent = context.tables.practice.chloride_free_percent.value;
    const Material* suspect = suspect_of_chloride(context.proportions, trace_percent);
    const bool stated = suspect && suspect->chloride_percent;
    const bool hastens = suspect && hastens_setting(*suspect);
    const Verdict verdict = !suspect            ? Verdict::holds
                            : stated && hastens ? Verdict::fails
                                                : Verdict::not_checked;
    findings.add({.id = check_ids::chloride_sulfate, .verdict = as_remembered(verdict, exposure)},
                 [&](Check& told) {
                     told.requirement = exposure.name;
                     told.source = exposure.limits.source;
                     const char* text =
                         !suspect ? "no admixture that could contain calcium chloride"
                         : stated && hastens
                             ? "{name} contains chloride; calcium chloride is not permitted in "
                               "{class}"
                         : stated ? "{name} contains {percent} of chloride: its data sheet has to "
                                    "say that it is none of calcium, which is not permitted in "
                                    "{class}"
                                  : "{name} does not state its chloride; calcium chloride is not "
                                    "permitted in {class}";
                     told.message = {text, {}};
                     if (suspect) {
                         told.message.arguments = {word("name", suspect->name),
                                                   word("class", exposure.name)};
                     }
                     if (stated) {
                         told.message.arguments.push_back(
                             percent_of("percent", *suspect->chloride_percent));
                     }
                     append_memory(told.source, told.message);
                 });
}

} // namespace

void check_sulfate_cement(const CheckContext& context, Findings& findings) {
    check_cement(context, findings);
    check_calcium_chloride(context, findings);
}

} // namespace boardmark::core
