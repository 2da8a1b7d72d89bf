#pragma once

#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/weather/mixture_temperature.hpp>

namespace boardmark::core {

/// Heat of 1 m3, or the keys without which it is not known. Admixtures are left out: they are less
/// than a hundredth of the mass.
MixtureTemperature heat_of(const Proportions& proportions, const BatchedWater& water);

/// Whether it is aggregate below the freezing point of water.
bool is_frozen(const Ingredient& ingredient);

} // namespace boardmark::core
