#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "sections.hpp"

namespace boardmark::core {
namespace {

Phrase soffit_rule(const SoffitAge& age, const CuringRules& rules) {
    const Soffit& soffit = age.soffit;
    const Argument part = word("part", soffit.part);
    if (soffit.is_open()) {
        return {"{part}: nobody states its clear span between supports; as long as it is not known "
                "to rest on its whole underside, it is a soffit",
                {part}};
    }
    if (!soffit.span_m) {
        return {"{part} is a cantilever: no rule by time exists; the engineer states the strength "
                "at which its props are removed",
                {part}};
    }
    const char* what = soffit.opening.empty() ? "{part}, clear span {span}: "
                                              : "{part}, head of {opening}, clear span {span}: ";
    Phrase rule{std::string{what} + "{days} at least, counting only hours in air above {air}",
                {part, word("opening", soffit.opening),
                 quantity("span", {*soffit.span_m, Measure::line_length}),
                 quantity("days", {*age.days, Measure::age}),
                 quantity("air", {rules.strip_air_c.value, Measure::temperature})}};
    if (soffit.stands_out) {
        rule.text += ", and where it is a cantilever the strength that the engineer states";
    }
    return rule;
}

/// When a soffit may go by what is known, or that nothing tells it.
Phrase soffit_release(const SoffitAge& age) {
    const Argument part = word("part", age.soffit.part);
    const auto earliest_h = age.earliest_h();
    if (!earliest_h) {
        return {"{part}: it is not known when; its props stay until strength tests and the "
                "engineer release them",
                {part}};
    }
    const Argument when = no_less_than("when", {*earliest_h, Measure::duration});
    return age.by_strength_h == earliest_h
               ? Phrase{"{part}: not before {when} after placing, an estimate; strength tests "
                        "decide",
                        {part, when}}
               : Phrase{"{part}: not before {when} after placing", {part, when}};
}

} // namespace

BriefSection brief_of_soffits(const BriefCase& brief) {
    BriefSection section{"SOFFITS AND PROPS", {}};
    const WallPlacing& placing = brief.wall.placing;
    if (brief.plan.after.soffits.empty()) {
        return section;
    }
    for (const SoffitAge& age : brief.plan.after.soffits) {
        section.items.push_back(soffit_rule(age, brief.tables.placing->curing));
        section.items.push_back(soffit_release(age));
    }
    if (placing.soffit_strength_percent) {
        section.items.push_back(
            {"The engineer requires {percent} of the specified strength, {needed}, before props "
             "are removed",
             {percent_of("percent", *placing.soffit_strength_percent),
              quantity("needed",
                       {*brief.plan.after.soffits.front().needed_mpa, Measure::strength})}});
    }
    if (placing.soffit_strip_after_h) {
        section.items.push_back(
            {"Planned: forms and props of soffits are removed {age} after placing",
             {quantity("age", {*placing.soffit_strip_after_h, Measure::duration})}});
    }
    section.items.push_back({"Faces are stripped without touching the props of a soffit; a side "
                             "form that carries a soffit stays with it",
                             {}});
    section.items.push_back(
        {"The engineer decides when props are removed, in which order, and whether reshores "
         "follow; until then nobody stands below, and nobody and nothing is on it",
         {}});
    return section;
}

} // namespace boardmark::core
