#include <boardmark/core/wall/run_shape.hpp>

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// The height where a sloping top passes a station; beyond the last one it is level.
double sloping_height_m(const WallRun& run, double station_m) {
    const auto next = std::ranges::upper_bound(run.heights, station_m, {}, &HeightAt::station_m);
    if (next == run.heights.begin() || next == run.heights.end()) {
        return next == run.heights.end() ? run.heights.back().height_m
                                         : run.heights.front().height_m;
    }
    const HeightAt& before = *(next - 1);
    return std::lerp(before.height_m, next->height_m,
                     (station_m - before.station_m) / (next->station_m - before.station_m));
}

/// Whether two lengths along one line share more than an edge.
bool share(double from, double to, double other_from, double other_to) {
    return from < other_to - shape_tolerance_m && other_from < to - shape_tolerance_m;
}

bool concrete_stays_between(const Opening& one, const Opening& other, const WallRun& run) {
    return run.shows == ShownFaces::both && one.depth_mm && other.depth_mm &&
           *one.depth_mm + *other.depth_mm < run.thickness_mm;
}

/// How often a measure goes into another.
double times_in(double whole_m, double one_mm) {
    return std::floor((whole_m + shape_tolerance_m) / (one_mm / 1000));
}

/// Of one side of the wall.
double side_m2(const WallRun& run) {
    double sum_m2 = 0;
    for (auto at = run.heights.begin(); at != run.heights.end(); ++at) {
        const bool is_last = at + 1 == run.heights.end();
        const double end_m = is_last ? run.length_m : (at + 1)->station_m;
        const double end_height_m =
            is_last || run.top != Top::sloping ? at->height_m : (at + 1)->height_m;
        sum_m2 += (end_m - at->station_m) * (at->height_m + end_height_m) / 2;
    }
    return sum_m2;
}

/// How many of the two sides of a wall its openings of one kind cut, at the least: niches of
/// opposite faces may stand back to back.
double sides_cut(const Opening& opening, const WallRun& run) {
    return opening.depth_mm && run.shows == ShownFaces::both ? 1 : 2;
}

/// The length of both sides that the openings around a height take, by their stated sills.
double taken_at_m(double height_m, const std::vector<Opening>& openings, const WallRun& run) {
    double sum_m = 0;
    for (const Opening& opening : openings) {
        if (opening.sill_m && *opening.sill_m <= height_m &&
            height_m < upper_edge_m(opening) - shape_tolerance_m) {
            sum_m += opening.count * opening.width_mm / 1000 * sides_cut(opening, run);
        }
    }
    return sum_m;
}

} // namespace

double least_height_m(const WallRun& run, double from_m, double to_m) {
    double least = greatest_height_m(run);
    if (run.top == Top::sloping) {
        least = std::min(sloping_height_m(run, from_m), sloping_height_m(run, to_m));
    }
    for (auto at = run.heights.begin(); at != run.heights.end(); ++at) {
        const bool is_last = at + 1 == run.heights.end();
        const double end_m = is_last ? run.length_m : (at + 1)->station_m;
        const bool stepped = run.top != Top::sloping;
        const bool touched = stepped ? at->station_m < to_m - shape_tolerance_m &&
                                           (end_m > from_m + shape_tolerance_m || is_last)
                                     : at->station_m > from_m && at->station_m < to_m;
        least = touched ? std::min(least, at->height_m) : least;
    }
    return least;
}

double thickness_at_mm(const WallRun& run, double height_m) {
    const double part = std::clamp(height_m / greatest_height_m(run), 0.0, 1.0);
    return std::lerp(run.bottom_thickness_mm, run.thickness_mm, part);
}

double upper_edge_m(const Opening& opening) {
    return opening.sill_m.value_or(0) + opening.height_mm / 1000;
}

bool is_longer_than_run(const Opening& opening, const WallRun& run) {
    return opening.width_mm / 1000 > run.length_m + shape_tolerance_m;
}

bool is_higher_than_run(const Opening& opening, const WallRun& run) {
    return upper_edge_m(opening) > greatest_height_m(run) + shape_tolerance_m;
}

bool cuts_through(const Opening& opening, const WallRun& run) {
    constexpr double tolerance_mm = 1000 * shape_tolerance_m;
    return opening.depth_mm &&
           *opening.depth_mm >= thickness_at_mm(run, upper_edge_m(opening)) - tolerance_mm;
}

bool ends_beyond_run(const Opening& opening, double at_m, const WallRun& run) {
    return at_m + opening.width_mm / 1000 > run.length_m + shape_tolerance_m;
}

bool is_higher_than_run_at(const Opening& opening, double at_m, const WallRun& run) {
    const double to_m = at_m + opening.width_mm / 1000;
    return upper_edge_m(opening) > least_height_m(run, at_m, to_m) + shape_tolerance_m;
}

bool are_more_than_fit(const Opening& opening, const WallRun& run) {
    const double beside = times_in(run.length_m, opening.width_mm);
    const double above = opening.sill_m ? 1 : times_in(greatest_height_m(run), opening.height_mm);
    const double faces = concrete_stays_between(opening, opening, run) ? 2 : 1;
    return opening.count > beside * above * faces;
}

bool are_together_more_than_fit(const std::vector<Opening>& openings, const WallRun& run) {
    double cut_m2 = 0;
    for (const Opening& opening : openings) {
        cut_m2 += opening.count * opening.width_mm / 1000 * opening.height_mm / 1000 *
                  sides_cut(opening, run);
    }
    const double sides = 2;
    return cut_m2 > sides * side_m2(run) + shape_tolerance_m ||
           std::ranges::any_of(openings, [&](const Opening& lowest) {
               return lowest.sill_m && taken_at_m(*lowest.sill_m, openings, run) >
                                           sides * run.length_m + shape_tolerance_m;
           });
}

bool overlap(const OpeningAt& one, const OpeningAt& other, const WallRun& run) {
    const bool same = one.opening == other.opening;
    const bool heights_known = one.opening->sill_m && other.opening->sill_m;
    if (!share(one.from_m, one.to_m(), other.from_m, other.to_m()) || (!same && !heights_known) ||
        concrete_stays_between(*one.opening, *other.opening, run)) {
        return false;
    }
    return same || share(*one.opening->sill_m, upper_edge_m(*one.opening), *other.opening->sill_m,
                         upper_edge_m(*other.opening));
}

bool any_overlap(const WallRun& run) {
    std::vector<OpeningAt> places;
    for (const Opening& opening : run.openings) {
        for (const double at_m : opening.at_m) {
            places.push_back({&opening, at_m});
        }
    }
    std::ranges::sort(places, {}, &OpeningAt::from_m);
    for (std::size_t one = 0; one < places.size(); ++one) {
        for (std::size_t other = one + 1;
             other < places.size() && places[other].from_m < places[one].to_m(); ++other) {
            if (overlap(places[one], places[other], run)) {
                return true;
            }
        }
    }
    return false;
}

} // namespace boardmark::core
