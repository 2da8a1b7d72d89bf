#pragma once

#include <boardmark/core/wall_plan.hpp>

namespace boardmark::core {

/// Where concrete, air, wind and humidity are stated.
std::optional<Evaporation> evaporation_of(const WallPlacing& placing, const Tables& tables);

/// `placing.evaporation`: the rate against the one from which precautions are due.
Check evaporation_check(const Evaporation& found, const Proportions& proportions,
                        const Tables& tables);

} // namespace boardmark::core
