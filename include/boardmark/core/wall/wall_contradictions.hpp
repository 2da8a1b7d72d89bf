#pragma once

#include <boardmark/core/wall/wall.hpp>

#include <optional>

namespace boardmark::core {

// What the parts of a wall contradict of each other. The reader tells it at the key, the door of a
// wall by the field.

/// The thinnest run that has a thickness, or nothing.
std::optional<double> thinnest_mm(const WallWork& wall);

/// The same of runs and planters, on whose forms ties stand and whose joints are grooved.
std::optional<double> thinnest_formed_mm(const WallWork& wall);

/// A wall cannot be thinner at its foot than at its top.
bool is_thinner_at_foot(const WallRun& run);

/// A footing is at least as wide as what stands on it.
bool is_narrower_than_wall(const Footing& footing, const WallRun& run);

/// Cones stand on both sides, and between them stays a tie.
bool cones_meet(const Ties& ties, const WallWork& wall);

/// A tie has one load.
bool has_two_loads(const Ties& ties);

/// A groove weakens the wall; it must not cut it in two.
bool cuts_wall_in_two(const JointWishes& joints, const WallWork& wall);

/// Bars that touch at their spacing, from centre to centre.
bool touch(const BarGrid& grid);

/// An area that no bar of this diameter has, within a tenth: ribs and inch sizes differ by less.
bool is_area_of_another(const BarGrid& grid);

/// The bars of every layer with the cover on both sides do not go into the thinnest run.
bool do_not_fit(const Reinforcement& bars, const WallWork& wall);

/// What the boards take from the cover leaves none.
bool lie_bare(const Reinforcement& bars, const WallWork& wall);

} // namespace boardmark::core
