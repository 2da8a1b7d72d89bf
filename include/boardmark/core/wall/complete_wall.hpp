#pragma once

#include <boardmark/core/mix/complete.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <variant>

namespace boardmark::core {

/// A wall that can be planned.
using CompleteWall = Complete<Wall>;

/// The way of a wall into the computation: a complete one, or every fault of it, field by field.
///
/// What is demanded: numbers finite and in the range that their member states; at least one run,
/// planter or bench, each named once; heights that begin at station 0, increase and end within the
/// run; openings and corners on their run, none on another and no more than it has room for; no
/// foot thinner than the top; boards with a stock and a course; ties with their spacing and one
/// load, and bars of an area that is theirs; cones, grooves, bars and cover for which the thinnest
/// wall has room; a method of pressure that is known. Its mix has passed a door of its own.
std::variant<CompleteWall, Faults> complete(Wall wall);

/// All faults of a wall; none of a complete one.
Faults faults_of(const Wall& wall);

} // namespace boardmark::core
