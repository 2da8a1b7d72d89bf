#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

namespace boardmark::core {

/// The trucks of the pour, where their load and a rate of placing are stated.
std::optional<TruckPlan> trucks_of(const Wall& wall, const WallPlan& plan, const Tables& tables);

} // namespace boardmark::core
