#pragma once

#include "concrete_between.hpp"

namespace boardmark::core {

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

/// The same of a planter: the ring of its walls.
double smallest_plan_m2(const Planter& planter);

} // namespace boardmark::core
