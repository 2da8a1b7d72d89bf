#pragma once

#include <boardmark/core/wall.hpp>

namespace boardmark::core {

/// A length of height, above the footing.
struct HeightSpan {
    double low_m;
    double high_m;
};

/// The least plan area of a run over its height, m2: of a stepped run the tower's, of a battered
/// one the top's, beside openings what stands there. What is not known of an opening, its sill or
/// its place, is taken where the form is narrowest.
///
/// A sloping top runs out to nothing, and any output rises without bound in its last inch; but that
/// concrete presses with its own head only. Below a depth of `head_m` under the highest point the
/// area is taken as it is; above it the mean of that depth counts.
///
/// @param head_m > 0, the depth at which the head of concrete reaches a method's least pressure
double smallest_plan_m2(const WallRun& run, double head_m);

/// Concrete of a run between two heights, m3. An opening of unknown height takes nothing from it.
double concrete_between_m3(const WallRun& run, HeightSpan span);

/// The same of one planter: its walls, and its floor where it has one.
double smallest_plan_m2(const Planter& planter);
double concrete_between_m3(const Planter& planter, HeightSpan span);

} // namespace boardmark::core
