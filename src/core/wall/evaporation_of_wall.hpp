#pragma once

#include <boardmark/core/concrete_temperatures.hpp>
#include <boardmark/core/wall_plan.hpp>

namespace boardmark::core {

/// Where concrete, air, wind and humidity are known. The concrete is the warmer of the two files;
/// of their air the one from which more evaporates.
std::optional<Evaporation> evaporation_of(const WallPlacing& placing,
                                          const ConcreteTemperatures& temperatures,
                                          const Tables& tables);

/// `placing.evaporation`: the rate against the one from which precautions are due.
Check evaporation_check(const Evaporation& found, const Proportions& proportions,
                        const Tables& tables);

} // namespace boardmark::core
