#include <boardmark/core/wall/run_shape.hpp>
#include <boardmark/core/wall/wall_contradictions.hpp>

#include "wall_sections.hpp"

#include <algorithm>

namespace boardmark::input {
namespace {

/// The greatest height of any wall, or nothing where one could not be read.
std::optional<double> highest_m(const core::WallWork& wall) {
    double highest = 0;
    for (const core::WallRun& run : wall.runs) {
        if (run.heights.empty()) {
            return std::nullopt;
        }
        highest = std::max(highest, core::greatest_height_m(run));
    }
    for (const core::Planter& planter : wall.planters) {
        highest = std::max(highest, planter.height_m);
    }
    return highest > 0 ? std::optional{highest} : std::nullopt;
}

std::vector<double> read_stock(const Section& section) {
    std::vector<double> stock_m;
    const Reading* stock = section.find("stock");
    if (!stock || !stock->sound) {
        return stock_m;
    }
    if (stock->items.empty()) {
        section.refuse("stock", " names no length", "give the lengths that the yard sells");
    }
    for (const Parsed& item : stock->items) {
        const double length_m = item.number / 1000;
        if (!stock_m.empty() && length_m <= stock_m.back()) {
            section.context().refuse(
                *item.node, dotted(section.path("stock")) + ": the lengths do not increase",
                "write each once, from the shortest to the longest");
        }
        stock_m.push_back(length_m);
    }
    return stock_m;
}

/// Held against each other and the walls: what cannot be built.
void hold_boards(const Section& section, const core::Boards& boards, const core::WallWork& wall) {
    const auto course_mm = section.number("course");
    if (course_mm && boards.direction == core::BoardDirection::horizontal &&
        *course_mm < boards.face_width_mm) {
        section.refuse("course", " is lower than the face of its board",
                       "a course is at least one board; leave it out where it is just that");
    }
    const auto highest = highest_m(wall);
    if (highest && boards.course_mm / 1000 > *highest + core::shape_tolerance_m) {
        section.refuse(course_mm ? "course" : "face_width", " is higher than every wall",
                       "check it against the heights");
    }
    if (section.number("relief") && section.number("thickness") &&
        boards.relief_mm > boards.thickness_mm) {
        section.refuse("relief", " is deeper than the boards are thick",
                       "a joint between boards reaches back to their backing at most");
    }
}

void read_boards(const FileContext& context, core::WallWork& wall) {
    const Section section{context, {"boards"}};
    if (!section.stands()) {
        return;
    }
    section.demand({"face_width", "thickness", "stock", "saw_cut"});
    core::Boards boards{.face_width_mm = section.number("face_width").value_or(0),
                        .thickness_mm = section.number("thickness").value_or(0),
                        .course_mm = 0,
                        .direction = section.text("direction") == "vertical"
                                         ? core::BoardDirection::vertical
                                         : core::BoardDirection::horizontal,
                        .stock_m = read_stock(section),
                        .saw_cut_mm = section.number("saw_cut").value_or(0),
                        .spoiled_percent = section.number("spoiled").value_or(0),
                        .uses = section.count("uses", 1),
                        .relief_mm = section.number("relief").value_or(0),
                        .treatment = section.text("treatment").value_or(""),
                        .relief_stated = section.number("relief").has_value()};
    boards.course_mm = section.number("course").value_or(boards.face_width_mm);
    if (section.number("face_width")) {
        hold_boards(section, boards, wall);
    }
    wall.boards = std::move(boards);
}

core::TieKind tie_kind(const std::optional<std::string>& written) {
    return written == "stainless steel" ? core::TieKind::stainless_steel
           : written == "glass fibre"   ? core::TieKind::glass_fibre
                                        : core::TieKind::mild_steel;
}

void hold_cones(const Section& section, const core::WallWork& wall) {
    if (core::cones_meet(*wall.ties, wall)) {
        section.refuse("cone", ": two of them are as long as the thinnest wall is thick",
                       "measure it from the face to the end of the tie");
    }
    if (section.value("plug") && wall.ties->plug == true && wall.ties->cone_mm.value_or(0) == 0) {
        section.refuse("plug", " is given without 'cone': there is no hole to close",
                       "add for example 'cone: 1 1/2 in', or delete it");
    }
}

void read_ties(const FileContext& context, core::WallWork& wall) {
    const Section section{context, {"ties"}};
    if (!section.stands()) {
        return;
    }
    section.demand({"kind", "across", "up"});
    wall.ties = core::Ties{.kind = tie_kind(section.text("kind")),
                           .across_mm = section.number("across").value_or(0),
                           .up_mm = section.number("up").value_or(0),
                           .working_load_kn = section.number("working_load"),
                           .breaking_load_kn = section.number("breaking_load"),
                           .first_mm = section.number("first"),
                           .cone_mm = section.number("cone")};
    if (section.value("plug")) {
        wall.ties->plug = section.flag("plug");
    }
    hold_cones(section, wall);
    if (core::has_two_loads(*wall.ties)) {
        section.refuse("breaking_load", " is given as well as 'working_load'; a tie has one",
                       "keep the working load; a breaking load is no load that a tie may carry");
    }
}

void read_edges(const FileContext& context, core::WallWork& wall) {
    const Section section{context, {"edges"}};
    if (!section.stands()) {
        return;
    }
    section.demand({"kind"});
    const auto kind = section.text("kind");
    wall.edges = core::Edges{.kind = kind == "tooled"  ? core::EdgeKind::tooled
                                     : kind == "sharp" ? core::EdgeKind::sharp
                                                       : core::EdgeKind::chamfered,
                             .size_mm = section.number("size").value_or(0)};
    if (kind == "sharp" && section.number("size")) {
        section.refuse("size", ": a sharp edge has none", "delete it, or write 'kind: chamfered'");
    } else if (kind && kind != "sharp") {
        section.demand({"size"});
    }
}

void read_layout(const FileContext& context, core::WallWork& wall) {
    const Section section{context, {"layout"}};
    const auto from = section.text("courses_from");
    wall.layout = {.courses_from = from == "top"    ? core::CoursesFrom::top
                                   : from == "both" ? core::CoursesFrom::both
                                                    : core::CoursesFrom::bottom,
                   .lifts = section.text("lifts") == "on board joints"
                                ? core::LiftLines::on_board_joints
                                : core::LiftLines::as_stated};
    const bool stands = wall.boards && wall.boards->direction == core::BoardDirection::vertical;
    for (const char* key : {"courses_from", "lifts"}) {
        if (section.value(key) && (!wall.boards || stands)) {
            section.refuse(key,
                           stands ? ": the boards stand, so there are no courses"
                                  : " is given without 'boards': there are no courses",
                           "delete it");
        }
    }
}

void read_joints(const FileContext& context, core::WallWork& wall) {
    const Section section{context, {"joints"}};
    wall.joints = {.spacing_m = section.metres("spacing"), .groove_mm = section.number("groove")};
    if (core::cuts_wall_in_two(wall.joints, wall)) {
        section.refuse("groove", " cuts through the thinnest wall",
                       "a groove weakens the wall; it must not cut it in two");
    }
}

} // namespace

void read_forms(const FileContext& context, core::WallWork& wall) {
    read_boards(context, wall);
    read_ties(context, wall);
    read_edges(context, wall);
    read_layout(context, wall);
    read_joints(context, wall);
}

} // namespace boardmark::input
