#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

namespace boardmark::core {

/// What trucks unload into: runs and planters, then footings and benches. A part whose pace is not
/// known has no lifts.
std::vector<UnloadedPart> unloaded_parts(const Wall& wall, const Tables& tables);

/// An order that comes in trucks; nothing where their load is not stated.
std::optional<TruckedPour> trucked_pour(const Wall& wall, double order_m3,
                                        std::vector<UnloadedPart> parts);

/// The trucks of the pour, where their load and a rate of placing are stated.
std::optional<TruckPlan> trucks_of(const Wall& wall, const WallPlan& plan, const Tables& tables);

} // namespace boardmark::core
