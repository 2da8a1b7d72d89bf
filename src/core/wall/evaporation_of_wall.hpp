#pragma once

#include <boardmark/core/wall/concrete_temperatures.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

namespace boardmark::core {

/// Where concrete, air, wind and humidity are known, each from either file. The concrete is the
/// warmer of the two, the wind the stronger, the humidity the lower; of their air the one from
/// which more evaporates.
std::optional<Evaporation>
evaporation_of(const Wall& wall, const ConcreteTemperatures& temperatures, const Tables& tables);

/// `placing.evaporation`: the rate against the one from which precautions are due; a `watch` where
/// the two files disagree about the weather.
Check evaporation_check(const Wall& wall, const Evaporation& found, const Proportions& proportions,
                        const Tables& tables);

} // namespace boardmark::core
