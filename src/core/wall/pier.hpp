#pragma once

#include <boardmark/core/wall/form_case.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <optional>

namespace boardmark::core {

/// The shortest part of a run that stands by itself, higher than it is long and thick: between
/// openings through the wall, between steps of its top, between either and an end; and of a bent
/// run its longest leg, whatever the height. Where bends or openings have no place, a part as short
/// as they may leave.
std::optional<PierPlan> shortest_pier(const WallRun& run);

/// The least plan area of a part that a crew may fill by itself, m2: between openings of the whole
/// height, or higher than it is long and thick as above. Beside an opening without a place it may
/// be as short as it is thick. Nothing where the run is filled as one.
std::optional<double> smallest_part_m2(const WallRun& run);

} // namespace boardmark::core
