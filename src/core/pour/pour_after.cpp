#include "../basis/phrases.hpp"
#include "../brief/sections.hpp"
#include "pour_case.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool is_poured(const PourCase& pour, const std::string& part) {
    return std::ranges::count(pour.card.parts, part, &PouredPart::name) > 0;
}

/// Protection in the cold in one line; the brief has the rest.
Phrase cold_rule(const ColdPlan& plan) {
    return {
        "In the cold: hold the concrete at {least} or more for {days}, edges and corners first; "
        "then let it cool at most {fall} in 24 h",
        {quantity("least", {plan.least_c.value, Measure::temperature}),
         quantity("days", {plan.days, Measure::age}),
         quantity("fall", {plan.most_fall_k.value, Measure::temperature_difference})}};
}

} // namespace

BriefSection pour_after(const PourCase& pour) {
    BriefSection section{"CURING, STRIPPING, PROTECTION", {}};
    const AfterPlacing& after = pour.plan.after;
    section.items.push_back({"Moist curing {days} at least, the same way on every lift; no sheet "
                             "touches the face",
                             {quantity("days", {after.curing_d.value, Measure::age})}});
    if (const auto& strip_h = pour.wall.placing.strip_after_h) {
        section.items.push_back({"All faces are stripped at one age: {age}",
                                 {quantity("age", {*strip_h, Measure::duration})}});
    }
    section.items.push_back(stripping_limit({pour.wall, pour.plan, pour.asked, pour.tables}));
    const bool soffit = std::ranges::any_of(
        after.soffits, [&](const SoffitAge& age) { return is_poured(pour, age.soffit.part); });
    if (soffit) {
        section.items.push_back({"Props of soffits stay until strength tests and the engineer "
                                 "release them; nobody stands below",
                                 {}});
    }
    if (after.cold) {
        section.items.push_back(cold_rule(*after.cold));
    }
    return section;
}

} // namespace boardmark::core
