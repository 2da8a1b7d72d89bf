#include <boardmark/core/wall/run_shape.hpp>
#include <boardmark/core/wall/wall_contradictions.hpp>

#include "../../basis/tolerance.hpp"
#include "wall_faults.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr double end_tolerance_m = 1e-6; ///< rounding of stations that were added up

void find_height_faults(const WallRun& run, const FaultList& list) {
    if (run.heights.empty()) {
        list.missing(Field::run_heights, "a run is as high as it says");
        return;
    }
    double before_m = -1;
    for (const HeightAt& height : run.heights) {
        list.hold(Field::run_heights, height.station_m, nothing_or_more);
        list.hold(Field::run_heights, height.height_m, above_nothing);
        if (!(height.station_m > before_m)) {
            list.impossible(Field::run_heights, "has stations that do not increase");
        }
        before_m = height.station_m;
    }
    if (run.heights.front().station_m != 0) {
        list.impossible(Field::run_heights, "does not begin at station 0");
    }
    if (run.heights.back().station_m > run.length_m + end_tolerance_m) {
        list.impossible(Field::run_heights, "has a station beyond the end of the run");
    }
    if (run.top == Top::level && run.heights.size() > 1) {
        list.impossible(Field::run_heights, "changes though the top is level");
    }
}

void find_corner_faults(const WallRun& run, const FaultList& list) {
    list.hold(Field::run_corners, run.corners, {.low = 0, .high = 1000});
    if (!run.corners_at.empty() && run.corners != static_cast<int>(run.corners_at.size())) {
        list.impossible(Field::run_corners, "names other bends than are counted");
    }
    double before_m = -1;
    for (const Corner& corner : run.corners_at) {
        list.hold(Field::run_corners, corner.station_m,
                  {.low = 0, .high = run.length_m + end_tolerance_m});
        list.hold(Field::run_corners, corner.turn_deg,
                  {.low = 0, .high = 180, .low_itself = false});
        if (!(corner.station_m > before_m)) {
            list.impossible(Field::run_corners, "has stations that do not increase");
        }
        before_m = corner.station_m;
    }
}

void find_opening_faults(const Opening& opening, const WallRun& run, const FaultList& list) {
    list.hold(Field::opening, opening.width_mm, above_nothing);
    list.hold(Field::opening, opening.height_mm, above_nothing);
    list.hold(Field::opening, opening.depth_mm, above_nothing);
    list.hold(Field::opening, opening.sill_m, nothing_or_more);
    list.hold(Field::opening, opening.count, {.low = 1, .high = 1e6});
    if (!opening.at_m.empty() && opening.count != static_cast<int>(opening.at_m.size())) {
        list.impossible(Field::opening, "stands at other places than are counted");
    }
    for (const double at_m : opening.at_m) {
        list.hold(Field::opening, at_m, {.low = 0, .high = run.length_m});
    }
}

/// Whether an opening can be held against its run: each has the measures of one.
bool have_measures(const Opening& opening, const WallRun& run) {
    return is_some(opening.width_mm) && is_some(opening.height_mm) && is_some(run.length_m) &&
           is_some(run.thickness_mm) && is_some(run.bottom_thickness_mm) && !run.heights.empty() &&
           std::ranges::all_of(run.heights,
                               [](const HeightAt& at) { return is_some(at.height_m); });
}

/// What of an opening its run has no room for.
void hold_against_run(const Opening& opening, const WallRun& run, const FaultList& list) {
    if (is_longer_than_run(opening, run)) {
        list.impossible(Field::opening, "is wider than the run is long");
    }
    if (is_higher_than_run(opening, run)) {
        list.impossible(Field::opening, "reaches above the top of the run");
    }
    if (cuts_through(opening, run)) {
        list.impossible(Field::opening, "is no niche: it is as deep as the run is thick there");
    }
    if (opening.at_m.empty() && are_more_than_fit(opening, run)) {
        list.impossible(Field::opening, "is counted more often than the run has room for");
    }
    for (const double at_m : opening.at_m) {
        if (ends_beyond_run(opening, at_m, run)) {
            list.impossible(Field::opening, "ends beyond the end of the run");
        } else if (is_higher_than_run_at(opening, at_m, run)) {
            list.impossible(Field::opening, "reaches above the top of the run at its station");
        }
    }
}

void find_openings_faults(const WallRun& run, const FaultList& list) {
    bool sound = true;
    for (const Opening& opening : run.openings) {
        find_opening_faults(opening, run, list);
        if (have_measures(opening, run)) {
            hold_against_run(opening, run, list);
        } else {
            sound = false;
        }
    }
    if (sound && any_overlap(run)) {
        list.impossible(Field::opening, "overlaps another one");
    } else if (sound && are_together_more_than_fit(run.openings, run)) {
        list.impossible(Field::opening, "has no room beside the others, at no place");
    }
}

} // namespace

void find_run_faults(const WallRun& run, const FaultList& list) {
    list.hold(Field::run_length, run.length_m, above_nothing);
    list.hold(Field::run_thickness, run.thickness_mm, above_nothing);
    list.hold(Field::run_thickness, run.bottom_thickness_mm, above_nothing);
    list.hold(Field::part_output, run.output_m3_h, above_nothing);
    if (is_thinner_at_foot(run)) {
        list.impossible(Field::run_thickness, "is less at the foot than at the top");
    }
    find_height_faults(run, list);
    find_corner_faults(run, list);
    if (run.footing) {
        list.hold(Field::footing, run.footing->width_mm, above_nothing);
        list.hold(Field::footing, run.footing->depth_mm, above_nothing);
        list.hold(Field::footing, run.footing->cover_mm, nothing_or_more);
        if (is_narrower_than_wall(*run.footing, run)) {
            list.impossible(Field::footing, "is narrower than the wall that stands on it");
        }
    }
    find_openings_faults(run, list);
}

} // namespace boardmark::core
