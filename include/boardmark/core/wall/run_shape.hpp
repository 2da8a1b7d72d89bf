#pragma once

#include <boardmark/core/wall/wall.hpp>

namespace boardmark::core {

/// Two lengths are told apart beyond this: what units lose in conversion is less.
constexpr double shape_tolerance_m = 1e-6;

/// The least height between two stations of a run that has heights.
double least_height_m(const WallRun& run, double from_m, double to_m);

/// The thickness at a height above the footing.
double thickness_at_mm(const WallRun& run, double height_m);

// What an opening contradicts of its run, which has a length, heights and a thickness. The reader
// tells it at the key, the door of a wall by the field.

/// Of the upper edge of an opening; without a sill it is taken to stand on the footing.
double upper_edge_m(const Opening& opening);

bool is_longer_than_run(const Opening& opening, const WallRun& run);
bool is_higher_than_run(const Opening& opening, const WallRun& run);

/// A niche that leaves nothing behind it.
bool cuts_through(const Opening& opening, const WallRun& run);

/// At a station of its left edge: beyond the end of the run, or above its top there.
bool ends_beyond_run(const Opening& opening, double at_m, const WallRun& run);
bool is_higher_than_run_at(const Opening& opening, double at_m, const WallRun& run);

/// More than fit beside and, where no sill is stated, above one another, on the faces that show.
bool are_more_than_fit(const Opening& opening, const WallRun& run);

/// All kinds together, wherever they stand: more than the faces have beside each other at some
/// height, by the sills that are stated, or more than the faces hold. It refuses what no place of
/// any of them could mend, and not all of that.
bool are_together_more_than_fit(const std::vector<Opening>& openings, const WallRun& run);

/// An opening at one of its stations.
struct OpeningAt {
    const Opening* opening;
    double from_m;

    double to_m() const { return from_m + opening->width_mm / 1000; }
};

/// Whether two openings share some of the wall. A sill that is not stated leaves it open for two
/// kinds of opening; niches of opposite faces may stand back to back where concrete stays between.
bool overlap(const OpeningAt& one, const OpeningAt& other, const WallRun& run);

/// Whether any two of the run's openings at their stations do.
bool any_overlap(const WallRun& run);

} // namespace boardmark::core
