#pragma once

#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>

namespace boardmark::core {

struct Tables;

/// Where a mixture is too cold or too hot, the water's temperature or the ice that mends it, as a
/// step; where neither can, a caution that says what they reach.
void advise_temperature(const Requirements& requirements, const MixtureTemperature& temperature,
                        const Tables& tables, Worksheet& worksheet);

} // namespace boardmark::core
