#pragma once

#include <boardmark/core/wall/wall.hpp>

namespace boardmark::core {

/// From one height above the footing, or one station, to another.
struct Reach {
    double low_m;
    double high_m;
};

/// Concrete of a run between two heights, m3. An opening of unknown height takes nothing from it.
double concrete_between_m3(const WallRun& run, Reach heights);

/// The same of one planter: its walls, and its floor where it has one.
double concrete_between_m3(const Planter& planter, Reach heights);

} // namespace boardmark::core
