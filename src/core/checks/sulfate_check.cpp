#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/designation.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../method/water_cement_ratio.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// The cement standards that the code names, and the types of each.
struct Standard {
    std::string_view number;
    std::vector<std::string_view> types;
};
const std::vector<Standard>& standards() {
    static const std::vector<Standard> known{
        {"C150", {"I", "IA", "II", "IIA", "III", "IIIA", "IV", "V"}},
        {"C595", {"IS", "IP", "IL", "IT", "MS", "HS"}},
        {"C1157", {"GU", "HE", "MS", "HS", "MH", "LH"}}};
    return known;
}

/// Whether a designation names a type of one of those standards, so that it can be judged.
bool states_type(const std::vector<std::string>& words) {
    const auto holds = [&](std::string_view word) { return std::ranges::count(words, word) > 0; };
    return std::ranges::any_of(standards(), [&](const Standard& standard) {
        return holds(standard.number) && std::ranges::any_of(standard.types, holds);
    });
}

bool is_accepted(const std::vector<std::string>& words, const ExposureClass& exposure) {
    return std::ranges::any_of(exposure.sulfate_cements, [&](const std::string& designation) {
        return std::ranges::all_of(words_of(designation), [&](const std::string& word) {
            return std::ranges::count(words, word) > 0;
        });
    });
}

struct CementFinding {
    Verdict verdict;
    Phrase message;
};

CementFinding examine(const Material& cement, const ExposureClass& exposure,
                      const CheckContext& context) {
    const SeawaterCement& seawater = context.tables.code.seawater;
    const Argument name = word("name", cement.name);
    const Argument exposure_class = word("class", exposure.name);
    const auto words = words_of(cement.standard);
    if (is_accepted(words, exposure)) {
        return {Verdict::holds,
                {"{name} ({standard}) is accepted in {class}",
                 {name, word("standard", cement.standard), exposure_class}}};
    }
    const bool seawater_rule_applies = exposure.name == seawater.class_name &&
                                       cement.binder.c3a_percent &&
                                       !above(*cement.binder.c3a_percent, seawater.max_c3a_percent);
    if (seawater_rule_applies && at_most({context.proportions.totals.w_cm, seawater.max_w_cm,
                                          w_cm_precision}) != Verdict::fails) {
        return {Verdict::watch,
                {"{name}: C3A {c3a} at w/cm not above {w_cm} is accepted in sea water, not in "
                 "sulfate soil ({source})",
                 {name, quantity("c3a", {*cement.binder.c3a_percent, Measure::percent}),
                  quantity("w_cm", {seawater.max_w_cm, Measure::w_cm}),
                  word("source", seawater.source.citation)}}};
    }
    if (!states_type(words)) {
        return {
            Verdict::not_checked,
            {"{name} states no type of ASTM C150, C595 or C1157: the mill certificate has it; add "
             "'standard' ({class} accepts {accepted})",
             {name, exposure_class, word("accepted", joined(exposure.sulfate_cements))}}};
    }
    return {Verdict::fails,
            {"{name} ({standard}) is not accepted in {class}, which asks {accepted}",
             {name, word("standard", cement.standard), exposure_class,
              word("accepted", joined(exposure.sulfate_cements))}}};
}

/// Calcium chloride is not permitted in the severe sulfate classes.
Checks check_calcium_chloride(const CheckContext& context, const ExposureClass& exposure) {
    if (!exposure.bars_calcium_chloride) {
        return {};
    }
    Check check{.id = "chloride.sulfate",
                .verdict = Verdict::holds,
                .requirement = exposure.name,
                .source = exposure.limits.source,
                .message = {"no accelerator that could hold calcium chloride", {}}};
    for (const Ingredient* admixture : of_role(context.proportions, Role::admixture)) {
        const Material& material = *admixture->material;
        if (material.kind != Kind::accelerator || material.chloride_percent == 0.0) {
            continue;
        }
        check.verdict = material.chloride_percent ? Verdict::fails : Verdict::not_checked;
        check.message = {
            material.chloride_percent
                ? "{name} holds chloride; calcium chloride is not permitted in {class}"
                : "{name} does not state its chloride; calcium chloride is not permitted "
                  "in {class}",
            {word("name", material.name), word("class", exposure.name)}};
        if (check.verdict == Verdict::fails) {
            break;
        }
    }
    return {std::move(check)};
}

} // namespace

Checks check_sulfate_cement(const CheckContext& context) {
    const ExposureClass* exposure = stated_class(context, 'S');
    if (!exposure || exposure->sulfate_cements.empty()) {
        return {};
    }
    const auto materials = binder_materials(context.proportions);
    std::vector<CementFinding> findings;
    for (const Material* material : materials) {
        if (is_cement(material->kind)) {
            findings.push_back(examine(*material, *exposure, context));
        }
    }
    if (findings.empty()) {
        findings.push_back({Verdict::not_checked, {"the binder holds no cement", {}}});
    }
    const CementFinding& worst = *std::ranges::max_element(
        findings, {}, [](const CementFinding& finding) { return severity(finding.verdict); });
    Check check{.id = "cement.sulfate",
                .verdict = worst.verdict,
                .requirement = exposure->name,
                .source = exposure->limits.source,
                .message = worst.message};
    if (exposure->pozzolanic_limits && check.verdict == Verdict::holds &&
        !has_pozzolan_or_slag(materials)) {
        check.verdict = Verdict::watch;
        check.message.text += "; without pozzolan or slag the cement must show the low expansion "
                              "that the code's second option asks";
    }
    Checks checks{std::move(check)};
    std::ranges::move(check_calcium_chloride(context, *exposure), std::back_inserter(checks));
    return checks;
}

} // namespace boardmark::core
