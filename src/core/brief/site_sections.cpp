#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "sections.hpp"

#include <algorithm>
#include <span>
#include <utility>

namespace boardmark::core {
namespace {

Argument length(std::string name, double mm) {
    return quantity(std::move(name), {mm, Measure::length});
}

Argument metres(std::string name, double m) {
    return quantity(std::move(name), {m, Measure::line_length});
}

Argument number(std::string name, double value) {
    return quantity(std::move(name), {value, Measure::count});
}

std::string name_of(TieKind kind) {
    return kind == TieKind::mild_steel        ? "mild steel"
           : kind == TieKind::stainless_steel ? "stainless steel"
                                              : "glass fibre";
}

Phrase edges_text(const Edges& edges) {
    const char* kind = edges.kind == EdgeKind::chamfered ? "chamfered"
                       : edges.kind == EdgeKind::tooled  ? "tooled"
                                                         : "sharp";
    if (edges.kind == EdgeKind::sharp) {
        return {"Edges: {kind}; protect them until handover", {word("kind", kind)}};
    }
    return {"Edges: {kind}, {size}", {word("kind", kind), length("size", edges.size_mm)}};
}

Phrase of_its_wall(const std::string& wall, Phrase phrase) {
    phrase.text = "{wall}: " + phrase.text;
    phrase.arguments.push_back(word("wall", wall));
    return phrase;
}

Phrase shown_on(const Mockup& mockup) {
    if (mockup.shows.empty()) {
        return {"It includes a tie, a board joint, a contraction joint, a lift line, a corner and "
                "the edge of a box-out where the wall has them, and a repair",
                {}};
    }
    std::vector<std::string> shown;
    for (const PanelFeature feature : mockup.shows) {
        shown.emplace_back(name_of(feature));
    }
    return {"It shows, the most important first: {shown}", {word("shown", joined(shown))}};
}

} // namespace

Phrase stripping_limit(const BriefCase& brief) {
    const AfterPlacing& after = brief.plan.after;
    const std::string& source = brief.tables.placing->curing.strip_strength_mpa.source.citation;
    const std::vector<Argument> needed{
        quantity("needed", {after.strip.needed_mpa, Measure::strength}), word("source", source)};
    const auto earliest_h = after.strip.earliest_h();
    if (!earliest_h) {
        return {"No rule says when a face may be stripped: strength tests decide, and the face "
                "needs {needed} [{source}]",
                needed};
    }
    Phrase limit{"Strip no face before {earliest} after placing, nor with less than {needed} "
                 "[{source}]; where a check says so, strength tests decide",
                 needed};
    limit.arguments.push_back(no_less_than("earliest", {*earliest_h, Measure::duration}));
    const WallPlacing& placing = brief.wall.placing;
    if (!placing.lowest_air_c && !(placing.held_at_c && placing.protected_until_h)) {
        limit.text += "; it assumes that the air stays as it is at placing, for 'lowest_air' is "
                      "not stated: later in colder nights";
    }
    return limit;
}

BriefSection brief_of_mockup(const BriefCase& brief) {
    BriefSection section{"THE MOCK-UP", {}};
    const auto& mockup = brief.wall.mockup;
    if (!mockup) {
        section.items.push_back({"None is described yet: see the questions", {}});
        return section;
    }
    if (mockup->length_m && mockup->height_m) {
        section.items.push_back(
            {"{number} panel of {length} by {height}",
             {number("number", mockup->number), metres("length", *mockup->length_m),
              metres("height", *mockup->height_m)}});
    }
    const std::string& season = brief.wall.placing.season;
    section.items.push_back({season.empty()
                                 ? "Of a production truckload, with the same boards, treatment, "
                                   "release agent, ties, crew and season as the wall"
                                 : "Of a production truckload, with the same boards, treatment, "
                                   "release agent, ties, crew and season as the wall: {season}",
                             {word("season", season)}});
    section.items.push_back(shown_on(*mockup));
    section.items.push_back({"Write down: slump before and after the reducer, air, temperature of "
                             "concrete and air, time since batching, lift height, stripping age",
                             {}});
    section.items.push_back({"Judge: range of colour, surface voids as mean and range of several "
                             "squares, leakage at board joints, sand streaks, print of the grain, "
                             "the patch",
                             {}});
    if (!mockup->viewed_from.empty()) {
        section.items.push_back({"Viewed from: {view}", {word("view", mockup->viewed_from)}});
    }
    if (!mockup->signed_by.empty()) {
        section.items.push_back({"Signed by {who}; kept as the reference until handover",
                                 {word("who", mockup->signed_by)}});
    }
    return section;
}

BriefSection brief_of_face(const BriefCase& brief) {
    BriefSection section{"BOARDS, TIES AND EDGES", {}};
    if (const auto& boards = brief.wall.boards) {
        section.items.push_back(
            {"Boards with a face of {face}, {thickness} thick, in courses of {course}; joints up "
             "to "
             "{relief} deep",
             {length("face", boards->face_width_mm), length("thickness", boards->thickness_mm),
              length("course", boards->course_mm), length("relief", boards->relief_mm)}});
        if (!boards->treatment.empty()) {
            section.items.push_back(
                {"Treatment: {treatment}", {word("treatment", boards->treatment)}});
        }
        section.items.push_back({boards->uses == 1
                                     ? "A board lines one form and no more"
                                     : "A board lines {uses} forms; boards of different age give "
                                       "different colour, so mix none",
                                 {number("uses", boards->uses)}});
    }
    if (const auto& ties = brief.wall.ties) {
        section.items.push_back(
            {"Ties of {kind}, {across} by {up}, the lowest row at {first}; their "
             "places are drawn on the board layout",
             {word("kind", name_of(ties->kind)), length("across", ties->across_mm),
              length("up", ties->up_mm),
              length("first", ties->first_mm.value_or(ties->up_mm / 2))}});
        if (ties->cone_mm) {
            section.items.push_back({ties->plug == true
                                         ? "The ties end {cone} behind the face; their holes are "
                                           "closed"
                                         : "The ties end {cone} behind the face",
                                     {length("cone", *ties->cone_mm)}});
        }
    }
    if (brief.wall.edges) {
        section.items.push_back(edges_text(*brief.wall.edges));
    }
    return section;
}

BriefSection brief_of_forms(const BriefCase& brief) {
    BriefSection section{"FORCES ON THE FORMS, for planning", {form_caution()}};
    const std::span<const FormForces> all = brief.plan.forces;
    for (const FormForces& forces : brief.plan.forces) {
        const FormPressure& governing = governing_pressure(forces);
        const PressureGovernor governor = governing.governed_by;
        const char* by = governor == PressureGovernor::formula ? "by its formula"
                         : governor == PressureGovernor::floor ? "its least pressure"
                         : governor == PressureGovernor::head  ? "the head of the concrete"
                                                               : "full liquid head";
        section.items.push_back({"{wall}, {height}: {pressure} by {method}, {by}",
                                 {word("wall", forces.wall), metres("height", forces.height_m),
                                  no_less_than("pressure", {governing.kpa, Measure::pressure}),
                                  word("method", governing.method), word("by", by)}});
        if (const auto hardest_kn = hardest_tie_kn(forces)) {
            section.items.push_back(
                {"{wall}: a tie carries up to {load}, to be compared with its working load; a "
                 "qualified person designs the formwork",
                 {word("wall", forces.wall), no_less_than("load", {*hardest_kn, Measure::force})}});
        }
        for (const Phrase& remark : forces.tie_remarks) {
            section.items.push_back(of_its_wall(forces.wall, remark));
        }
        for (const Phrase& why : governing.why) {
            const bool told = std::ranges::count(section.items, why.text, &Phrase::text) > 0;
            if (!told) {
                section.items.push_back(why);
            }
        }
    }
    for (const auto& phrases : {pressures_hold_for(all), highest_rises(all)}) {
        section.items.insert(section.items.end(), phrases.begin(), phrases.end());
    }
    return section;
}

BriefSection brief_of_placing(const BriefCase& brief) {
    BriefSection section{"PLACING, CURING, STRIPPING", {}};
    if (!brief.wall.placing.season.empty()) {
        section.items.push_back(
            {"Season of placing: {season}", {word("season", brief.wall.placing.season)}});
    }
    for (const RunPlan& run : brief.plan.runs) {
        section.items.push_back({run.lifts.lifts == 1 ? "{wall}: one lift of {lift}"
                                                      : "{wall}: {lifts} lifts of {lift}",
                                 {word("wall", run.wall), number("lifts", run.lifts.lifts),
                                  length("lift", 1000 * run.lifts.lift_m)}});
        if (run.vibration) {
            section.items.push_back(
                {"{wall}: vibrate every {spacing} or closer, {least} to {most} s each, straight "
                 "down through the lift into the one below, slowly out; keep the head off the "
                 "boards",
                 {word("wall", run.wall), length("spacing", run.vibration->spacing_mm),
                  number("least", run.vibration->least_s), number("most", run.vibration->most_s)}});
        }
    }
    if (const auto& trucks = brief.plan.trucks) {
        section.items.push_back(told(*trucks));
    }
    if (brief.wall.placing.concrete_c) {
        section.items.push_back(
            {"Concrete at {temperature} in the form",
             {quantity("temperature", {*brief.wall.placing.concrete_c, Measure::temperature})}});
    }
    section.items.push_back({"Moist curing {days} at least, the same way on every lift; no sheet "
                             "touches the face",
                             {quantity("days", {brief.plan.after.curing_d.value, Measure::age})}});
    if (brief.wall.placing.strip_after_h) {
        section.items.push_back(
            {"The forms of all faces are stripped at one age: {age}",
             {quantity("age", {*brief.wall.placing.strip_after_h, Measure::duration})}});
    }
    section.items.push_back(stripping_limit(brief));
    section.items.push_back({"No load gets water beyond what was held back and stands on its "
                             "ticket; a reducer is added again only as agreed beforehand, mixed "
                             "in, and slump and air tested after it",
                             {}});
    return section;
}

BriefSection brief_of_joints(const BriefCase& brief) {
    BriefSection section{"JOINTS AND STEEL", {}};
    for (const RunPlan& run : brief.plan.runs) {
        for (const double station_m : run.joints.positions_m) {
            section.items.push_back({run.round_a_planter
                                         ? "{wall}: contraction joint at {station} round its "
                                           "outside from a corner, a length first, grooves of "
                                           "{groove}, both faces together; corners in one piece"
                                         : "{wall}: contraction joint at {station}, grooves of "
                                           "{groove}, both faces together",
                                     {word("wall", run.wall), metres("station", station_m),
                                      length("groove", run.joints.groove_mm)}});
        }
        section.items.push_back(
            {"{wall}: minimum steel {vertical} vertical, {horizontal} horizontal, for cracks and "
             "shrinkage only; the licensed engineer designs the wall",
             {word("wall", run.wall),
              quantity("vertical", {run.least_steel.vertical_mm2_m, Measure::steel_area}),
              quantity("horizontal", {run.least_steel.horizontal_mm2_m, Measure::steel_area})}});
    }
    for (const WallRun& run : brief.wall.runs) {
        for (const Corner& corner : run.corners_at) {
            section.items.push_back(
                {"{wall}: the corner at {station} is cast in one piece with both sides; no joint "
                 "at it",
                 {word("wall", run.name), metres("station", corner.station_m)}});
        }
    }
    section.items.push_back({"Cover is measured from the bottom of the deepest board joint", {}});
    return section;
}

BriefSection brief_of_quantities(const BriefCase& brief) {
    const WallQuantities& found = brief.plan.quantities;
    BriefSection section{"QUANTITIES", {}};
    section.items.push_back(
        {"Concrete to order for the walls {order}, for the footings {footings}",
         {quantity("order", {found.order.order_m3, Measure::volume}),
          quantity("footings", {found.footing_order.order_m3, Measure::volume})}});
    section.items.push_back({"Formed faces {formed}, of which {shown} are exposed",
                             {quantity("formed", {found.total.form_face_m2, Measure::area}),
                              quantity("shown", {found.total.shown_m2, Measure::area})}});
    if (brief.wall.boards) {
        section.items.push_back({"Boards {count}, {length} in all",
                                 {number("count", brief.plan.boards.count),
                                  metres("length", brief.plan.boards.length_m)}});
    }
    if (brief.wall.ties) {
        section.items.push_back({"Ties {count}", {number("count", found.total.ties)}});
    }
    return section;
}

} // namespace boardmark::core
