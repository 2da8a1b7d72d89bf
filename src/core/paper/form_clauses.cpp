#include <boardmark/core/forms/form_pressure.hpp>
#include <boardmark/core/forms/plumb.hpp>
#include <boardmark/core/wall/salt_at_face.hpp>

#include "../basis/conversions.hpp"
#include "../wall/form_forces.hpp"
#include "clause_list.hpp"
#include "clause_words.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr const char* form_materials = "MATERIALS";
constexpr const char* form_work = "WORK";

ClauseReason by_the_wall_file(std::string text) {
    return {{std::move(text), {}}, {"the wall file"}};
}

std::string tie_words(TieKind kind) {
    return kind == TieKind::mild_steel        ? "mild steel"
           : kind == TieKind::stainless_steel ? "stainless steel"
                                              : "glass fibre";
}

bool salt_reaches(const PaperCase& papers) {
    return salt_exposure(papers.asked, papers.tables.code).at_face == SaltAtFace::reaches;
}

void require_pressures(const PaperCase& papers, ClauseList& list) {
    for (const FormForces& forces : papers.plan->forces) {
        const FormPressure& governing = governing_pressure(forces);
        list.require({"{wall}: forms for at least {pressure} at the foot of {height}",
                      {word("wall", forces.wall),
                       no_less_than("pressure", {governing.kpa, Measure::pressure}),
                       as_metres("height", forces.height_m)}},
                     {{"pressure of the fresh concrete, for planning only", {}}, governing.source});
    }
    for (Phrase& held_for : pressures_hold_for(papers.plan->forces)) {
        list.require(std::move(held_for),
                     {{"faster, colder or wetter it presses harder", {}}, {"the wall file"}});
    }
    const bool by_formula = std::ranges::any_of(papers.plan->forces, [](const FormForces& forces) {
        return governing_pressure(forces).valid;
    });
    if (by_formula) {
        const FormFigure& deepest = papers.tables.forms->aci.deepest_vibration_m;
        list.require({"Vibrators reach no deeper than {depth} below the surface, none is on the "
                      "form",
                      {as_metres("depth", deepest.value)}},
                     {{"deeper they make it a liquid again", {}}, deepest.source});
    }
}

/// To the nominal face; what the joints between boards take is known only where it is stated.
void specify_cover(const Reinforcement& bars, const std::optional<Boards>& boards,
                   ClauseList& list) {
    if (!bars.cover_mm) {
        list.choose("",
                    {"Cover {choice} to the face; checked on every face before the forms are "
                     "closed",
                     {}},
                    {"reinforcement.cover",
                     {"a stated distance"},
                     {"the engineer states it; the joints between boards take from it", {}}},
                    trade_reason("bars near a face rust and stain it"));
    } else if (boards && boards->relief_stated) {
        list.require({"Cover {cover} to the nominal face, so at least {net} at the bottom of the "
                      "deepest board joint; checked on every face before the forms are closed",
                      {as_length("cover", *bars.cover_mm),
                       as_length("net", *bars.cover_mm - boards->relief_mm)}},
                     by_the_wall_file("'reinforcement.cover' less 'boards.relief'"));
    } else {
        list.require(
            {boards
                 ? "Cover {cover} to the nominal face, less the depth of the board joints; "
                   "checked on every face before the forms are closed"
                 : "Cover {cover} to the face; checked on every face before the forms are closed",
             {as_length("cover", *bars.cover_mm)}},
            by_the_wall_file("'reinforcement.cover'"));
    }
}

} // namespace

ClauseGroup clauses_of_reinforcement(const PaperCase& papers) {
    ClauseList list{form_materials, "reinforcement"};
    if (!papers.wall || !papers.wall->reinforcement) {
        return list.group();
    }
    const Reinforcement& bars = *papers.wall->reinforcement;
    list.require({"Bars by the engineer's drawings, yield strength {yield}",
                  {as_strength("yield", bars.yield_strength_mpa)}},
                 by_the_wall_file("'reinforcement.yield_strength'"));
    specify_cover(bars, papers.wall->boards, list);
    const char* wet = salt_reaches(papers) ? "salt reaches the faces: take stainless steel or "
                                             "concrete; plain and coated steel stains in the end"
                                           : "plain steel at a face rusts and stains";
    list.decide(
        papers.job, "bar_supports", {"Spacers and chairs at faces that show: {choice}", {}},
        {"", {"concrete of the same mix", "stainless steel", "plastic-tipped steel"}, {wet, {}}},
        trade_reason("their feet show in the face"));
    list.decide(papers.job, "tying_wire",
                {"Tying wire: {choice}; ends bent away from the forms, clippings out before "
                 "placing",
                 {}},
                {"", {"soft stainless steel", "black annealed"}, {wet, {}}},
                {{"an end of wire at the face is a rust spot", {}},
                 {"Concrete trade press (US) tying of bars"}});
    return list.group();
}

ClauseGroup clauses_of_formwork(const PaperCase& papers) {
    ClauseList list{form_materials, "forms"};
    if (!papers.wall || papers.plan->forces.empty()) {
        return list.group();
    }
    list.require({"A qualified person designs forms, ties, braces and props, and the drawings are "
                  "on the site before the first form stands",
                  {}},
                 trade_reason("forms that fail kill"));
    require_pressures(papers, list);
    if (!uplift_cautions(*papers.wall).empty()) {
        list.require({"Battered forms, box-outs and the inner form of a planter with a floor are "
                      "held down against the fresh concrete, which lifts them; ties alone do not "
                      "hold them",
                      {}},
                     trade_reason("a form that floats opens at its foot"));
    }
    list.require({"Forms are tight: no mortar leaves them; a leak is stopped from outside, and the "
                  "place is shown to the designer",
                  {}},
                 trade_reason("a leak leaves dark, sandy streaks"));
    return list.group();
}

ClauseGroup clauses_of_boards(const PaperCase& papers) {
    ClauseList list{form_materials, "boards"};
    if (!papers.wall || !papers.wall->boards) {
        return list.group();
    }
    const Boards& boards = *papers.wall->boards;
    list.require(
        {boards.direction == BoardDirection::horizontal
             ? "Boards with a face of {face}, {thickness} thick, laid level in courses "
               "of {course}, as drawn"
             : "Boards with a face of {face}, {thickness} thick, upright in courses of "
               "{course}, as drawn",
         {as_length("face", boards.face_width_mm), as_length("thickness", boards.thickness_mm),
          as_length("course", boards.course_mm)}},
        by_the_wall_file("'boards'"));
    list.choose(boards.treatment, {"Treatment of every board alike: {choice}", {}},
                {"boards.treatment",
                 {"wire-brushed, sealed on all sides", "rough-sawn, soaked in limewater and dried"},
                 {"new wood holds sugars that retard the face: seal, soak or age it, and try it on "
                  "the mock-up",
                  {}}},
                {{"boards that drink differently print differently", {}},
                 {"Concrete trade press (US) wood and colour"}});
    list.require({boards.uses == 1 ? "A board lines one form and no more"
                                   : "A board lines at most {uses} forms; boards of different use "
                                     "are not mixed in one face",
                  {as_count("uses", boards.uses)}},
                 by_the_wall_file("'boards.uses'"));
    if (boards.relief_stated) {
        list.require({"Joints between boards at most {relief} deep behind the nominal face; no "
                      "loose knot, no raised grain that locks into the concrete",
                      {as_length("relief", boards.relief_mm)}},
                     by_the_wall_file("'boards.relief': it takes from the cover"));
    } else {
        list.choose("",
                    {"Joints between boards at most {choice} deep behind the nominal face; no "
                     "loose knot, no raised grain that locks into the concrete",
                     {}},
                    {"boards.relief", {"a stated depth"}, {"it takes from the cover", {}}},
                    trade_reason("a deep joint thins the cover and breaks at stripping"));
    }
    return list.group();
}

ClauseGroup clauses_of_ties(const PaperCase& papers) {
    ClauseList list{form_materials, "ties"};
    if (!papers.wall || !papers.wall->ties) {
        return list.group();
    }
    const Ties& ties = *papers.wall->ties;
    list.require(
        {"Ties of {kind}, {across} along the wall at most and {up} up, the lowest row at "
         "{first}, each at its place on the drawing",
         {word("kind", tie_words(ties.kind)), as_length("across", ties.across_mm),
          as_length("up", ties.up_mm), as_length("first", ties.first_mm.value_or(ties.up_mm / 2))}},
        by_the_wall_file("'ties'"));
    double hardest_kn = 0;
    for (const FormForces& forces : papers.plan->forces) {
        hardest_kn = std::max(hardest_kn, hardest_tie_kn(forces).value_or(0));
    }
    if (hardest_kn > 0) {
        list.require({"Working load of a tie at least {load}, from its data sheet; a breaking load "
                      "is no working load",
                      {no_less_than("load", {hardest_kn, Measure::force})}},
                     by_the_wall_file("the hardest loaded tie of the plan, for planning only"));
    }
    const bool rusts = ties.kind == TieKind::mild_steel;
    const TypicalFigure& back = papers.rules(rusts ? "tie_metal_plain" : "tie_metal_stainless");
    if (ties.cone_mm) {
        list.require({"Their ends stay {cone} behind the face", {as_length("cone", *ties.cone_mm)}},
                     by_the_wall_file("'ties.cone'"));
    } else if (ties.kind != TieKind::glass_fibre) {
        list.choose("", {"Their metal stays {choice} behind the face", {}},
                    {"ties.cone",
                     {"a stated distance"},
                     {"at least {least} for {kind} ({source}); where salt comes, plain steel no "
                      "nearer than the bars",
                      {as_length("least", back.value), word("kind", tie_words(ties.kind)),
                       word("source", back.source.citation)}}},
                    {{"metal near the face rusts or shows", {}}, back.source});
    }
    const TypicalFigure& plug = papers.rules("plug_behind_face");
    list.decide(papers.job, "tie_holes", {"Holes of ties in faces that show: {choice}", {}},
                {"",
                 {"left open", "filled with patch mortar", "closed with a precast plug"},
                 {"a hole a little back looks intended: plug or mortar {back} behind the face; "
                  "open holes only where no metal is left in them",
                  {as_length("back", plug.value)}}},
                {{"a flush patch is seen for years", {}}, plug.source});
    return list.group();
}

ClauseGroup clauses_of_release_agent(const PaperCase& papers) {
    ClauseList list{form_materials, "release agent"};
    if (!papers.wall || !papers.wall->boards) {
        return list.group();
    }
    list.decide(
        papers.job, "release_agent",
        {"Release agent: {choice}; one product and one way of putting it on for all faces", {}},
        {"",
         {"a stain-free agent that the board treatment allows", "none, boards saturated"},
         {"try it on the mock-up with the treated boards: some sealers make one "
          "superfluous",
          {}}},
        trade_reason("too much of it makes pores and stains"));
    list.require({"Put on thin and even before the bars are placed, surplus wiped off; none on "
                  "bars, joints or the mock-up's neighbours",
                  {}},
                 {{"bars with oil do not bond", {}}, {"UFGS 03300N form release"}});
    return list.group();
}

ClauseGroup clauses_of_forms(const PaperCase& papers) {
    ClauseList list{form_work, "form erection"};
    if (!papers.wall || papers.plan->forces.empty()) {
        return list.group();
    }
    double height_m = 0;
    for (const FormForces& forces : papers.plan->forces) {
        height_m = std::max(height_m, forces.height_m);
    }
    const PlumbRules& rules = papers.tables.joints->plumb;
    if (const auto plumb = plumb_tolerance_mm(height_m * mm_in_m, false, rules)) {
        list.require(
            {"Out of plumb at most {plumb} over {height}; exposed edges and joint grooves "
             "at most {edge}",
             {as_length("plumb", *plumb), as_metres("height", height_m),
              as_length("edge",
                        plumb_tolerance_mm(height_m * mm_in_m, true, rules).value_or(*plumb))}},
            {{"tolerance of formed walls", {}}, rules.source});
    }
    if (papers.wall->edges && papers.wall->edges->kind != EdgeKind::sharp) {
        list.require(
            {papers.wall->edges->kind == EdgeKind::chamfered
                 ? "Edges that show are chamfered {size}, strips in one length where stock "
                   "allows"
                 : "Edges that show are tooled to {size}",
             {as_length("size", papers.wall->edges->size_mm)}},
            by_the_wall_file("'edges'"));
    }
    list.require({"Before closing: sawdust, clippings and water out, boards damp, bars and cover "
                  "checked and written down, places of ties and joints compared with the drawing",
                  {}},
                 trade_reason("what lies in the form is in the face"));
    list.require({"A named person watches forms, ties and braces while concrete is placed, and "
                  "stops it when anything moves; nobody stands below a form that fills",
                  {}},
                 trade_reason("forms that fail kill"));
    return list.group();
}

ClauseGroup clauses_of_joints(const PaperCase& papers) {
    ClauseList list{form_work, "joints"};
    if (!papers.wall) {
        return list.group();
    }
    for (const RunPlan& run : papers.plan->runs) {
        for (const double station_m : run.joints.positions_m) {
            list.require(
                {run.round_a_planter
                     ? "{wall}: contraction joint at {station} round its outside from a "
                       "corner, a length first; grooves of {groove}, both faces together"
                     : "{wall}: contraction joint at {station} from the start of the "
                       "wall; grooves of {groove}, both faces together",
                 {word("wall", run.wall), as_metres("station", station_m),
                  as_length("groove", run.joints.groove_mm)}},
                {{"a crack that is led is no fault", {}},
                 run.joints.spacings.empty() ? Source{} : run.joints.spacings.front().source});
        }
    }
    for (const WallRun& run : papers.wall->runs) {
        for (const Corner& corner : run.corners_at) {
            list.require({"{wall}: the corner at {station} is cast in one piece with both sides",
                          {word("wall", run.name), as_metres("station", corner.station_m)}},
                         trade_reason("a joint at a corner opens and leaks"));
        }
    }
    if (!papers.plan->runs.empty()) {
        list.require({"No other joint. Where placing must stop, it stops at a line between lifts, "
                      "level against a fixed strip; the engineer is told the same day",
                      {}},
                     trade_reason("an unplanned line stays in the face"));
    }
    return list.group();
}

} // namespace boardmark::core
