#include "../basis/phrases.hpp"
#include "../mix/high_range_reducer.hpp"
#include "../wall/form_forces.hpp"
#include "pour_case.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Argument number_of(const char* name, double count) {
    return quantity(name, {count, Measure::count});
}

/// What the mix's own reducer may do after the load left the plant.
Phrase redosing_rule(const PourCase& pour, const std::string& reducer) {
    const FinishTables& finish = pour.tables.finish;
    if (!pour.wall.placing.redosed_on_site) {
        return {"{reducer} is not added again: nobody has agreed on it ('placing.redosed_on_site')",
                {word("reducer", reducer)}};
    }
    return {"{reducer} is added again {times} times at most, as agreed before the pour; {turns} "
            "revolutions each time, then slump and air again",
            {word("reducer", reducer), number_of("times", finish.redosings.value),
             number_of("turns", finish.redose_revolutions.value)}};
}

Phrase insertions_rule(const VibrationPlan& plan, const VibrationRules& rules) {
    return {
        "Vibrator: straight in every {spacing} or closer, {least} to {most} s each, through the "
        "lift and {into} into the one below; out slowly; {off} off the face",
        {quantity("spacing", {plan.spacing_mm, Measure::length}), number_of("least", plan.least_s),
         number_of("most", plan.most_s),
         quantity("into", {rules.into_lift_below_mm.value, Measure::length}),
         quantity("off", {rules.off_the_face_mm.value, Measure::length})}};
}

} // namespace

BriefSection pour_water(const PourCase& pour) {
    BriefSection section{"WATER", {}};
    const auto reducers = high_range_reducers(pour.plan.proportions);
    section.items.push_back(
        {reducers.empty()
             ? "Only water that the ticket says was held back may be added, never more, before "
               "discharge begins; then mix, test the slump and write down how much"
             : "Only water that the ticket says was held back may be added, never more, before the "
               "reducer goes in; then mix, test the slump and write down how much",
         {}});
    section.items.push_back(
        {"The supplier's technician adds it; a load to which anybody else adds water goes back",
         {}});
    if (pour.card.limits.w_cm) {
        section.items.push_back({"w/cm at most {w_cm}, all water counted",
                                 {quantity("w_cm", {*pour.card.limits.w_cm, Measure::w_cm})}});
    }
    for (const Ingredient* reducer : reducers) {
        section.items.push_back(redosing_rule(pour, std::string{reducer->name}));
    }
    section.items.push_back(
        {"Forms are damp, without puddles; no water into hopper or hose or onto a lift", {}});
    return section;
}

BriefSection pour_hose(const PourCase& pour) {
    const CrewRules& crew = pour.tables.placing->crew;
    BriefSection section{"HOSE AND VIBRATORS", {}};
    section.items.push_back(
        {"The mortar that primes pump and hose, and what it mixes with, goes to "
         "waste, never into the form: it marks the face",
         {}});
    if (!pour.wall.placing.pumped_from_below) {
        section.items.push_back(
            {"End of the hose at most {fall} above the concrete; move it every {apart}: no "
             "concrete "
             "is pushed sideways",
             {quantity("fall", {crew.free_fall_mm.value / 1000, Measure::line_length}),
              quantity("apart", {crew.hose_apart_mm.value / 1000, Measure::line_length})}});
    }
    const bool parted = std::ranges::any_of(pour.card.parts, [](const PouredPart& part) {
        return part.forces && part.forces->rise.alone_m_h();
    });
    if (parted) {
        section.items.push_back({"Parts beside openings and steps are raised together, lift by "
                                 "lift: one that is filled by itself rises faster than the forms "
                                 "are looked at for",
                                 {}});
    }
    if (pour.wall.placing.self_consolidating) {
        section.items.push_back({"Self-consolidating: no vibrator in the form", {}});
        return section;
    }
    const auto vibrated = std::ranges::find_if(
        pour.card.parts, [](const PouredPart& part) { return part.run && part.run->vibration; });
    if (vibrated != pour.card.parts.end()) {
        section.items.push_back(
            insertions_rule(*vibrated->run->vibration, pour.tables.placing->vibration));
    }
    section.items.push_back({"{spare} more vibrator stands by; all are tried before the first load",
                             {number_of("spare", crew.spare_vibrators.value)}});
    return section;
}

std::vector<Phrase> pour_cautions(const PourCase& pour) {
    std::vector<Phrase> cautions{form_caution()};
    for (Phrase& uplift : uplift_cautions(pour.wall)) {
        cautions.push_back(std::move(uplift));
    }
    cautions.push_back({"Wet concrete burns skin and eyes: gloves, boots, eye protection; wash it "
                        "off at once, clean water at hand.",
                        {}});
    cautions.push_back({"Nobody in front of the hose's end while the pump starts or clears, nobody "
                        "below a form that fills.",
                        {}});
    if (pour.plan.proportions.estimate) {
        cautions.push_back(
            {"The mix is an ESTIMATE with usual figures of the aggregates: it must not be placed.",
             {}});
    }
    return cautions;
}

} // namespace boardmark::core
