#pragma once

#include <optional>

namespace boardmark::core {

/// Weather and haul on the day of placing, as far as they are stated.
struct PlacingConditions {
    std::optional<double> air_c = {};
    std::optional<double> wind_km_h = {};
    std::optional<double> humidity_percent = {};
    std::optional<double> haul_h = {}; ///< from mixing to placing
};

/// Water that is batched, as far as it is heated, cooled or replaced by ice.
struct BatchedWater {
    std::optional<double> temperature_c = {};
    double ice_kg_m3 = 0; ///< part of the mixing water
};

} // namespace boardmark::core
