#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../method/cautions.hpp"
#include "panel_case.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool is_varied(const PanelCase& panels, const char* factor) {
    return std::ranges::count(panels.wishes().factors, factor, &PanelFactor::name) > 0;
}

bool is_shown(const PanelCase& panels, PanelFeature feature) {
    return std::ranges::any_of(panels.programme.room.features, [&](const FeatureRoom& one) {
        return one.feature == feature && one.fits;
    });
}

BriefSection casting_rules(const PanelCase& panels) {
    BriefSection section{"CASTING", {}};
    section.items.push_back(
        {"Everything that is no factor is alike on all panels and as on the wall: boards of one "
         "delivery, ties, crew, cure, form tightness, the place in the yard",
         {}});
    section.items.push_back(
        {"The order within a batch was drawn, so that what changes over the day falls on no "
         "factor: keep it, or write down why not",
         {}});
    section.items.push_back({"The panels stand as the wall does: cast upright, never flat", {}});
    section.items.push_back({"Only the number stands on a panel; who judges does not know what a "
                             "number means",
                             {}});
    if (!is_varied(panels, "strip_after")) {
        section.items.push_back({"All panels are stripped at one age, that of the wall", {}});
    }
    if (is_varied(panels, "mix")) {
        section.items.push_back({"A concrete and its batch are one: what the batch did besides "
                                 "stands in the effect of the mix",
                                 {}});
    }
    return section;
}

BriefSection record_rules(const PanelCase& panels) {
    BriefSection section{"WRITE DOWN", {}};
    section.items.push_back({"Of each batch: weights, moistures and all water; slump before and "
                             "after the reducer, air, density, temperature; time of the first "
                             "water; who mixed",
                             {}});
    section.items.push_back({"Of each panel: times of placing, lifts, vibrator and seconds at each "
                             "place; release agent and how much on how much form; moisture of the "
                             "boards, how often they were used",
                             {}});
    section.items.push_back({"Of the days: air, wind, sun and rain from casting to viewing; hour "
                             "of stripping; cure and when it ended",
                             {}});
    section.items.push_back({"Photographs square to the face with number, grey card and scale: at "
                             "stripping, dry at the viewing, wet, and after the first rain",
                             {}});
    if (is_shown(panels, PanelFeature::repair)) {
        section.items.push_back({"Of the repair: materials and shares, age, tools, cure", {}});
    }
    return section;
}

BriefSection viewing_rules(const PanelCase& panels) {
    const PanelViewing& viewing = panels.wishes().viewing;
    const TypicalFigure& least = panels.tables.panels->viewing_m;
    BriefSection section{"VIEWING", {}};
    if (viewing.distance_m) {
        section.items.push_back(
            {"From {distance}, for colour, marks and joints; voids are counted close to, in their "
             "square",
             {quantity("distance", {*viewing.distance_m, Measure::line_length})}});
        if (below(*viewing.distance_m, least.value)) {
            section.items.push_back(
                {"That is closer than the {least} at which precast faces are judged [{source}]: "
                 "more is seen, so say on paper what is still accepted",
                 {quantity("least", {least.value, Measure::line_length}),
                  word("source", least.source.citation)}});
        }
    } else {
        section.items.push_back(
            {"The distance is open: that of whoever will use the place; precast faces are judged "
             "from {least} or more [{source}]",
             {quantity("least", {least.value, Measure::line_length}),
              word("source", least.source.citation)}});
    }
    section.items.push_back(
        {viewing.light.empty()
             ? "In daylight by the unaided eye; never with light that grazes the face, which shows "
               "what nobody sees otherwise [{source}]"
             : "Light: {light}; by the unaided eye, never with light that grazes the face "
               "[{source}]",
         {word("light", viewing.light), word("source", least.source.citation)}});
    if (viewing.age_d) {
        section.items.push_back({"At {age}, the face dry, all panels on one day side by side",
                                 {quantity("age", {*viewing.age_d, Measure::age})}});
    } else {
        section.items.push_back({"Dry, all panels on one day side by side; the age is open, and "
                                 "colour goes on changing "
                                 "for months",
                                 {}});
    }
    if (!viewing.by.empty()) {
        section.items.push_back(
            {"By {who}; each scores alone, before anybody speaks", {word("who", viewing.by)}});
    } else {
        section.items.push_back(
            {"Each scores alone, before anybody speaks; one person has the last "
             "word [{source}]",
             {word("source", least.source.citation)}});
    }
    return section;
}

BriefSection mockup_rules(const PanelCase& panels) {
    BriefSection section{"SMALL PANELS AND THE MOCK-UP", {}};
    section.items.push_back({"Small panels choose: what colour, which boards, which agent. They "
                             "show no lift of full height, no hydrostatic head, no crew at full "
                             "pace",
                             {}});
    section.items.push_back(
        {"The mock-up proves: after the choice, with the wall's own crew, forms, "
         "trucks and pump, at full height; what fails there is changed and "
         "cast again before the wall",
         {}});
    section.items.push_back({"Repairs are tried on the mock-up, never first on the wall", {}});
    if (!panels.wishes().signed_by.empty()) {
        section.items.push_back(
            {"{who} signs which panel is chosen and how far the wall may differ from it, with "
             "number and place of the squares counted; both panels and sheet are kept until "
             "handover",
             {word("who", panels.wishes().signed_by)}});
    } else {
        section.items.push_back(
            {"Who signs which panel is chosen is open ('panels.signed_by')", {}});
    }
    return section;
}

} // namespace

std::vector<ScoreItem> score_items(const PanelCase& panels) {
    const PanelTables& tables = panels.tables.panels;
    const auto square = std::ranges::find(tables.fields, PanelFeature::face, &PanelField::feature);
    std::vector<ScoreItem> items{
        {"colour", {"as wished, 1 far off to 5 just so", {}}},
        {"even", {"colour over the panel, 1 blotched to 5 even", {}}},
        {"grain", {"print of boards and joints, 1 lost to 5 crisp", {}}},
        {"voids",
         {"those of {least} or more across in a square of {side}, count; and the largest",
          {quantity("least", {tables.least_void_mm.value, Measure::length}),
           quantity("side", {square->length_mm, Measure::length})}}},
        {"leaks", {"sand streaks and fins at board joints, count", {}}}};
    const auto add_if = [&](PanelFeature feature, const char* name, const char* how) {
        if (is_shown(panels, feature)) {
            items.push_back({name, {how, {}}});
        }
    };
    add_if(PanelFeature::tie, "tie", "hole or plug, 1 poor to 5 as wished");
    add_if(PanelFeature::corner, "corner", "edge full and straight, 1 to 5");
    add_if(PanelFeature::joint, "joint", "line and both sides alike, 1 to 5");
    add_if(PanelFeature::lift_line, "lift", "line between lifts, 1 marked to 5 not found");
    add_if(PanelFeature::box_out, "box-out", "edges full, no shadow below, 1 to 5");
    add_if(PanelFeature::repair, "repair", "dry, 1 seen at once to 5 not found");
    items.push_back({"whole", {"the panel as a wall, 1 refused to 5 wished for", {}}});
    return items;
}

std::vector<BriefSection> panel_rules(const PanelCase& panels) {
    return {casting_rules(panels), record_rules(panels), viewing_rules(panels),
            mockup_rules(panels)};
}

std::vector<Phrase> panel_cautions(const PanelCase& panels) {
    std::vector<Phrase> cautions;
    if (const auto mass_kg = panels.programme.panel_kg) {
        cautions.push_back({"A panel has {mass} and kills if it falls: braced from stripping on, "
                            "lifted only by anchors and at a strength that a qualified person "
                            "states; nobody stands beside one that is not held.",
                            {quantity("mass", {*mass_kg, Measure::mass})}});
    } else {
        cautions.push_back({"A panel of concrete kills if it falls: braced from stripping on, "
                            "lifted only by anchors and at a strength that a qualified person "
                            "states.",
                            {}});
    }
    cautions.push_back({"Wet concrete burns skin and eyes: gloves, boots, eye protection; wash it "
                        "off at once. Dust of dry cement and of cut concrete harms lungs.",
                        {}});
    if (!panels.wishes().allowance_percent) {
        cautions.push_back({"The volumes are those of the panels alone: 'panels.allowance' adds "
                            "what slump, air and specimens take and what sticks to the mixer.",
                            {}});
    }
    cautions.push_back({"A panel shows what its concrete did on its day; it proves no strength and "
                        "no durability. The mix's own checks stand below.",
                        {}});
    cautions.push_back(general_caution());
    return cautions;
}

} // namespace boardmark::core
