#include "layout_checks.hpp"

#include <boardmark/core/checks/check_id.hpp>
#include <boardmark/core/layout/visible_part.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/course.hpp>
#include <boardmark/core/wall/coursing.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../wall/wall_checks.hpp"
#include "board_ends.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double mm_in_metre = 1000;

Argument on_face(const char* name, double metres) {
    return quantity(name, {mm_in_metre * metres, Measure::length});
}

Argument along(const char* name, double metres) {
    return quantity(name, {metres, Measure::line_length});
}

/// A part, its faces and the rules.
struct CheckedPart {
    const Wall& wall;
    const WallPlan& plan;
    const PracticeTables& practice;
    std::string name;
    std::vector<const Elevation*> faces;
};

Check least(CheckId id, std::optional<double> metres, const TypicalFigure& rule, double least_mm) {
    return {.id = id,
            .verdict = Verdict::holds,
            .value = metres ? std::optional{mm_in_metre * *metres} : std::nullopt,
            .limit = Limit{.low = least_mm, .high = std::nullopt},
            .measure = Measure::length,
            .requirement = "look of the face",
            .source = rule.source};
}

/// The heights that make a cut course whole, and what shares it out.
void tell_cure(const CheckedPart& part, const Elevation& face, const Sliver& sliver, Check& check) {
    const CoursesFrom from = part.wall.layout.courses_from;
    if (sliver.stands) {
        check.message.text += "; panels of whole boards have none";
        return;
    }
    const double top_m = from == CoursesFrom::top ? face.height_m : sliver.z_m + sliver.width_m;
    const CourseFit fit = fit_courses(top_m, part.wall.boards->course_mm);
    if (fit.whole_above_m) {
        check.message.text += fit.whole_below_m ? "; whole courses end at {below} or {above}"
                                                : "; whole courses end at {above}";
        check.message.arguments.push_back(on_face("above", *fit.whole_above_m));
        if (fit.whole_below_m) {
            check.message.arguments.push_back(on_face("below", *fit.whole_below_m));
        }
    }
    if (from != CoursesFrom::both) {
        check.message.text += ", or 'layout: {both}' splits the cut between top and bottom";
        check.message.arguments.push_back(word("both", "{courses_from: both}"));
    }
}

/// Whether a course runs out to nothing below a sloping top: the slope crosses its lower edge.
bool runs_out(const Elevation& face, const LaidBoard& board) {
    const auto top = top_of(face);
    return !board.stands &&
           std::ranges::adjacent_find(top, [&](const DrawnPoint& one, const DrawnPoint& next) {
               const auto [low_m, high_m] = std::minmax(one.z_m, next.z_m);
               return !same(one.x_m, next.x_m) && below(low_m, board.z_m) &&
                      below(board.z_m, high_m);
           }) != top.end();
}

Check sliver_check(const CheckedPart& part) {
    const double least_mm =
        part.wall.boards->course_mm * part.practice.cut_course_percent.value / 100;
    std::optional<double> narrowest_m;
    bool any_runs_out = false;
    const Sliver* worst = nullptr;
    const Elevation* worst_face = nullptr;
    for (const Elevation* face : part.faces) {
        for (const LaidBoard& board : face->boards) {
            const bool ends_thin = runs_out(*face, board);
            any_runs_out = any_runs_out || ends_thin;
            if (!ends_thin || !below(mm_in_metre * board.width_m, least_mm)) {
                narrowest_m = std::min(narrowest_m.value_or(board.width_m), board.width_m);
            }
        }
        for (const Sliver& sliver : face->slivers) {
            narrowest_m = std::min(narrowest_m.value_or(sliver.width_m), sliver.width_m);
            if (!worst || sliver.width_m < worst->width_m) {
                worst = &sliver;
                worst_face = face;
            }
        }
    }
    Check check =
        least(check_ids::layout_sliver, narrowest_m, part.practice.cut_course_percent, least_mm);
    check.message = {"the narrowest course or board shows {narrowest}, at least {least}",
                     {on_face("narrowest", narrowest_m.value_or(0)),
                      quantity("least", {least_mm, Measure::length})}};
    if (any_runs_out) {
        check.message.text +=
            "; courses that run out to nothing under a sloping top are not counted";
    }
    if (worst) {
        check.verdict = Verdict::watch;
        check.message.text = std::string{"a cut "} + (worst->stands ? "board" : "course") +
                             " shows {narrowest}, less than {least}: it looks like a mistake";
        tell_cure(part, *worst_face, *worst, check);
    }
    return check;
}

/// A lift of whole courses, not higher than lifts are now.
std::optional<double> lift_of_courses_m(const CheckedPart& part, double lift_m) {
    const double course_m = part.wall.boards->course_mm / mm_in_metre;
    const double most_m = part.wall.placing.lift_m.value_or(lift_m);
    const double courses = std::floor(most_m / course_m + relative_rounding);
    return courses < 1 ? std::nullopt : std::optional{courses * course_m};
}

std::optional<Check> lift_check(const CheckedPart& part) {
    const Elevation& face = *part.faces.front();
    if (face.lifts_m.empty() || part.wall.boards->direction == BoardDirection::vertical) {
        return std::nullopt;
    }
    const TypicalFigure& rule = part.practice.lift_line_off_joint_mm;
    const auto joints_m =
        board_joints_m(face.height_m, *part.wall.boards, part.wall.layout.courses_from);
    double furthest_m = 0;
    double at_m = face.lifts_m.front();
    for (const double lift_m : face.lifts_m) {
        double off_m = face.height_m;
        for (const double joint_m : joints_m) {
            off_m = std::min(off_m, std::abs(joint_m - lift_m));
        }
        if (off_m > furthest_m) {
            furthest_m = off_m;
            at_m = lift_m;
        }
    }
    Check check{.id = check_ids::layout_lift_off_board_joint,
                .verdict = Verdict::holds,
                .value = mm_in_metre * furthest_m,
                .limit = Limit{.low = std::nullopt, .high = rule.value},
                .measure = Measure::length,
                .requirement = "look of the face",
                .source = rule.source,
                .message = {"each line between lifts hides in a joint between boards", {}}};
    if (!above(mm_in_metre * furthest_m, rule.value)) {
        return check;
    }
    check.verdict = Verdict::watch;
    if (joints_m.empty()) {
        check.message = {"the line between lifts at {at} crosses the one board of this height; "
                         "'layout: {lifts}' casts it in one lift",
                         {on_face("at", at_m), word("lifts", "{lifts: on board joints}")}};
        return check;
    }
    check.message = {"the line between lifts at {at} misses the joints between boards by {off} and "
                     "crosses a board",
                     {on_face("at", at_m), on_face("off", furthest_m)}};
    if (const auto lift_m = lift_of_courses_m(part, face.lifts_m.front())) {
        check.message.text += "; lifts of {lift} meet one";
        check.message.arguments.push_back(on_face("lift", *lift_m));
    }
    check.message.text += "; 'layout: {lifts}' makes them meet one";
    check.message.arguments.push_back(word("lifts", "{lifts: on board joints}"));
    return check;
}

std::vector<double> contraction_m(const Elevation& face) {
    std::vector<double> stations_m;
    for (const FaceJoint& joint : face.joints) {
        if (joint.kind == FaceJointKind::contraction) {
            stations_m.push_back(joint.x_m);
        }
    }
    return stations_m;
}

/// What of a run nobody said the station of, so that joints and boards may lie elsewhere; empty:
/// nothing.
std::string unplaced(const CheckedPart& part) {
    const auto run = std::ranges::find(part.wall.runs, part.name, &WallRun::name);
    if (run == part.wall.runs.end()) {
        return "";
    }
    for (const Opening& opening : run->openings) {
        if (opening.at_m.empty()) {
            return opening.name;
        }
    }
    return run->corners > 0 && run->corners_at.empty() ? "corners" : "";
}

/// What would bring joints to a face that has none, if it were placed: openings through a run have
/// a joint each, corners shift all. Empty: nothing.
std::string unplaced_joints_of(const CheckedPart& part) {
    const bool has_joints = std::ranges::any_of(
        part.faces, [](const Elevation* face) { return !contraction_m(*face).empty(); });
    const auto run = std::ranges::find(part.wall.runs, part.name, &WallRun::name);
    if (has_joints || run == part.wall.runs.end()) {
        return "";
    }
    for (const Opening& opening : run->openings) {
        if (!opening.depth_mm && opening.at_m.empty()) {
            return opening.name;
        }
    }
    return run->corners > 0 && run->corners_at.empty() ? "corners" : "";
}

/// No joint is known, and there may be one: nothing where all is placed.
std::optional<Check> of_unplaced_joints(const CheckedPart& part, CheckId id, Measure measure,
                                        const Source& source) {
    const std::string name = unplaced_joints_of(part);
    if (name.empty()) {
        return std::nullopt;
    }
    return Check{.id = id,
                 .verdict = Verdict::not_checked,
                 .measure = measure,
                 .requirement = "look of the face",
                 .source = source,
                 .message = {"the place of '{unplaced}' along the wall is not stated, and a "
                             "contraction joint may follow from it",
                             {word("unplaced", name)}}};
}

/// What holds on assumed places only is to be watched.
Check on_known_places(const CheckedPart& part, Check check) {
    const std::string name = unplaced(part);
    if (!name.empty() && check.verdict == Verdict::holds) {
        check.verdict = Verdict::watch;
        check.message.text +=
            "; the place of '{unplaced}' along the wall is not stated, so this is "
            "assumed";
        check.message.arguments.push_back(word("unplaced", name));
    }
    return check;
}

/// Courses of one board each, as far as is known: where a bend or a joint is not known to be,
/// boards may end after all.
std::optional<Check> unknown_stagger(const CheckedPart& part) {
    const std::string name = unplaced(part);
    if (name.empty() || part.wall.boards->direction != BoardDirection::horizontal) {
        return std::nullopt;
    }
    return Check{
        .id = check_ids::layout_stagger,
        .verdict = Verdict::not_checked,
        .measure = Measure::length,
        .requirement = "look of the face",
        .source = part.practice.board_end_stagger_mm.source,
        .message = {"the place of '{unplaced}' along the wall is not stated, and boards may "
                    "end there",
                    {word("unplaced", name)}}};
}

std::optional<Check> stagger_check(const CheckedPart& part) {
    const TypicalFigure& rule = part.practice.board_end_stagger_mm;
    std::optional<double> least_m;
    for (const Elevation* face : part.faces) {
        if (const auto apart_m = least_stagger_m(*face)) {
            least_m = std::min(least_m.value_or(*apart_m), *apart_m);
        }
    }
    if (!least_m) {
        return unknown_stagger(part); // each course between joints is one board
    }
    Check check = least(check_ids::layout_stagger, least_m, rule, rule.value);
    const bool near = below(mm_in_metre * *least_m, rule.value);
    check.verdict = near ? Verdict::watch : Verdict::holds;
    check.message = {
        "board ends are {apart} from those of the two courses next to them, at least {least}",
        {on_face("apart", *least_m), quantity("least", {rule.value, Measure::length})}};
    if (near) {
        check.message.text +=
            ": the stock lengths leave no room for it; longer boards or closer joints would";
    }
    return check;
}

std::optional<Check> joint_check(const CheckedPart& part) {
    const Elevation& face = *part.faces.front();
    const auto joints_m = contraction_m(face);
    const Source source{"common practice, no source", Confidence::common_practice};
    if (face.openings.empty()) {
        return std::nullopt;
    }
    if (joints_m.empty()) {
        return of_unplaced_joints(part, check_ids::layout_joint_in_opening, Measure::count, source);
    }
    Check check{.id = check_ids::layout_joint_in_opening,
                .verdict = Verdict::holds,
                .measure = Measure::count,
                .requirement = "look of the face",
                .source = source};
    double crossed = 0;
    const DrawnOpening* first = nullptr;
    double at_m = 0;
    for (const DrawnOpening& opening : face.openings) {
        for (const double joint_m : joints_m) {
            if (above(joint_m, opening.x_m) && below(joint_m, opening.x_m + opening.width_m)) {
                crossed += 1;
                at_m = first ? at_m : joint_m;
                first = first ? first : &opening;
            }
        }
    }
    check.value = crossed;
    check.limit = Limit{.low = std::nullopt, .high = 0};
    check.message = {"no contraction joint runs through an opening or a niche", {}};
    if (first) {
        check.verdict = Verdict::watch;
        check.message = {"the contraction joint at {at} runs through '{opening}'; move the "
                         "opening, or state 'joints.spacing'",
                         {along("at", at_m), word("opening", first->name)}};
    }
    return check;
}

/// Where joints have no ties to keep away from: nobody stated the ties, or none is needed; or no
/// joint is known.
std::optional<Check> without_ties(const CheckedPart& part) {
    const bool has_joints = std::ranges::any_of(
        part.faces, [](const Elevation* face) { return !contraction_m(*face).empty(); });
    if (!has_joints) {
        return of_unplaced_joints(part, check_ids::layout_tie_in_joint, Measure::length,
                                  part.practice.tie_beside_joint_mm.source);
    }
    if (part.wall.ties) {
        return std::nullopt;
    }
    return Check{
        .id = check_ids::layout_tie_in_joint,
        .verdict = Verdict::not_checked,
        .measure = Measure::length,
        .requirement = "look of the face",
        .source = part.practice.tie_beside_joint_mm.source,
        .message = {"'ties' is not stated: it is not known whether one is in a joint", {}}};
}

std::optional<Check> tie_check_of(const CheckedPart& part) {
    const TypicalFigure& rule = part.practice.tie_beside_joint_mm;
    std::optional<double> nearest_m;
    double at_m = 0;
    double near = 0;
    // Both faces of a run have the same ties; a planter's faces each have their own.
    for (const Elevation* face : part.faces) {
        if (face->face == Face::back && part.faces.size() == 2) {
            continue;
        }
        for (const double joint_m : contraction_m(*face)) {
            for (const DrawnTie& tie : face->ties) {
                const double apart_m = std::abs(tie.x_m - joint_m);
                near += below(mm_in_metre * apart_m, rule.value) ? 1 : 0;
                if (!nearest_m || apart_m < *nearest_m) {
                    nearest_m = apart_m;
                    at_m = joint_m;
                }
            }
        }
    }
    if (!nearest_m) {
        return without_ties(part);
    }
    Check check = least(check_ids::layout_tie_in_joint, nearest_m, rule, rule.value);
    check.message = {
        "the nearest tie is {apart} from a contraction joint, at least {least}",
        {on_face("apart", *nearest_m), quantity("least", {rule.value, Measure::length})}};
    if (near > 0) {
        check.verdict = Verdict::watch;
        check.message = {
            std::string{
                near > 1
                    ? "{near} ties are nearer than {least} to a contraction joint, one of them "
                    : "a tie is nearer than {least} to a contraction joint, "} +
                "{apart} from the joint at {at}: its hole opens into the groove; another "
                "'ties.across' moves the columns",
            {quantity("near", {near, Measure::count}),
             quantity("least", {rule.value, Measure::length}), on_face("apart", *nearest_m),
             along("at", at_m)}};
    }
    return check;
}

/// The boards leave their print on a face for which the mix was never looked at.
Check without_finish() {
    return {
        .id = check_ids::finish_stated,
        .verdict = Verdict::not_checked,
        .requirement = "look of the face",
        .message = {"the mix does not state 'requirements: {finish}': its paste, fines, bleeding "
                    "and slump were not looked at for the face that the boards print",
                    {word("finish", "{finish: board-marked}")}}};
}

/// A board-marked face whose boards nobody stated.
Check without_boards(const PracticeTables& practice) {
    return {.id = check_ids::layout_sliver,
            .verdict = Verdict::not_checked,
            .measure = Measure::length,
            .requirement = "look of the face",
            .source = practice.cut_course_percent.source,
            .message = {"'boards' is not stated: it is not known how narrow a cut course gets, "
                        "whether lifts end in a joint between boards and how far board ends are "
                        "apart",
                        {}}};
}

} // namespace

std::vector<Check> layout_checks(const Wall& wall, const WallPlan& plan,
                                 const PracticeTables& practice) {
    std::vector<Check> checks;
    if (wall.boards && !requirements_of(wall.mix).board_marked) {
        checks.push_back(without_finish());
    }
    for (const WallSection& section : plan.layout.sections) {
        CheckedPart part{wall, plan, practice, section.part, {}};
        for (const Elevation& elevation : plan.layout.elevations) {
            if (elevation.part == section.part) {
                part.faces.push_back(&elevation);
            }
        }
        const auto add = [&](std::optional<Check> check) {
            if (check) {
                checks.push_back(of_wall(section.part, std::move(*check)));
            }
        };
        const auto add_on_places = [&](std::optional<Check> check) {
            if (check) {
                add(on_known_places(part, std::move(*check)));
            }
        };
        if (wall.boards) {
            // Boards that stand are cut at joints, courses at the top.
            const bool stand = wall.boards->direction == BoardDirection::vertical;
            stand ? add_on_places(sliver_check(part)) : add(sliver_check(part));
            add_on_places(stagger_check(part));
            add(lift_check(part));
        } else if (requirements_of(wall.mix).board_marked) {
            add(without_boards(practice));
        }
        add_on_places(joint_check(part));
        add_on_places(tie_check_of(part));
    }
    return checks;
}

} // namespace boardmark::core
