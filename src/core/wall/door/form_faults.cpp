#include <boardmark/core/wall/wall_contradictions.hpp>

#include "wall_faults.hpp"

namespace boardmark::core {
namespace {

void find_board_faults(const Boards& boards, const FaultList& list) {
    list.hold(Field::board_face, boards.face_width_mm, above_nothing);
    list.hold(Field::board_thickness, boards.thickness_mm, above_nothing);
    list.hold(Field::board_course, boards.course_mm, above_nothing);
    list.hold(Field::board_saw_cut, boards.saw_cut_mm, nothing_or_more);
    list.hold(Field::board_spoiled, boards.spoiled_percent, {.low = 0, .high = 99});
    list.hold(Field::board_uses, boards.uses, {.low = 1, .high = 1e6});
    list.hold(Field::board_relief, boards.relief_mm, nothing_or_more);
    if (boards.stock_m.empty()) {
        list.missing(Field::board_stock, "boards are cut from what the yard sells");
    }
    double before_m = 0;
    for (const double length_m : boards.stock_m) {
        list.hold(Field::board_stock, length_m, above_nothing);
        if (!(length_m > before_m)) {
            list.impossible(Field::board_stock, "has lengths that do not increase");
        }
        before_m = length_m;
    }
}

void find_tie_faults(const Ties& ties, const FaultList& list) {
    list.hold(Field::tie_spacing, ties.across_mm, above_nothing);
    list.hold(Field::tie_spacing, ties.up_mm, above_nothing);
    list.hold(Field::tie_spacing, ties.first_mm, nothing_or_more);
    list.hold(Field::tie_load, ties.working_load_kn, above_nothing);
    list.hold(Field::tie_load, ties.breaking_load_kn, above_nothing);
    list.hold(Field::tie_cone, ties.cone_mm, nothing_or_more);
}

void find_grid_faults(const std::optional<BarGrid>& grid, const FaultList& list) {
    if (grid) {
        list.hold(Field::bars, grid->bar_mm, above_nothing);
        list.hold(Field::bars, grid->area_mm2, above_nothing);
        list.hold(Field::bars, grid->spacing_mm, above_nothing);
        if (touch(*grid)) {
            list.impossible(Field::bars, "touch at their spacing");
        }
        if (is_area_of_another(*grid)) {
            list.impossible(Field::bars, "have an area that is none of their diameter");
        }
    }
}

/// What forms and bars have no room for.
void find_room_faults(const WallWork& work, const FaultList& list) {
    if (work.ties && cones_meet(*work.ties, work)) {
        list.impossible(Field::tie_cone, "is half as long as the thinnest wall is thick, or more");
    }
    if (work.ties && has_two_loads(*work.ties)) {
        list.impossible(Field::tie_load, "is stated as a working load and as a breaking load");
    }
    if (cuts_wall_in_two(work.joints, work)) {
        list.impossible(Field::joints, "have a groove that cuts through the thinnest wall");
    }
    if (work.reinforcement && do_not_fit(*work.reinforcement, work)) {
        list.impossible(Field::bars, "do not fit into the thinnest run with their cover");
    }
    if (work.reinforcement && lie_bare(*work.reinforcement, work)) {
        list.impossible(Field::bars, "lie bare: the relief of the boards takes their cover");
    }
}

} // namespace

void find_form_faults(const WallWork& work, const FaultList& list) {
    if (work.boards) {
        find_board_faults(*work.boards, list);
    }
    if (work.ties) {
        find_tie_faults(*work.ties, list);
    }
    if (work.edges) {
        list.hold(Field::edges, work.edges->size_mm, nothing_or_more);
    }
    list.hold(Field::joints, work.joints.spacing_m, above_nothing);
    list.hold(Field::joints, work.joints.groove_mm, above_nothing);
    if (work.reinforcement) {
        find_grid_faults(work.reinforcement->vertical, list);
        find_grid_faults(work.reinforcement->horizontal, list);
        list.hold(Field::bars, work.reinforcement->layers, {.low = 1, .high = 2});
        list.hold(Field::bars, work.reinforcement->cover_mm, nothing_or_more);
        list.hold(Field::bars, work.reinforcement->yield_strength_mpa, above_nothing);
    }
    find_room_faults(work, list);
}

} // namespace boardmark::core
