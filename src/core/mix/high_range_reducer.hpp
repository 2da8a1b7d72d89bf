#pragma once

#include <boardmark/core/mix/proportions.hpp>

#include <vector>

namespace boardmark::core {

/// The high-range water reducers among the ingredients, dosed or not.
std::vector<const Ingredient*> high_range_reducers(const Proportions& proportions);

} // namespace boardmark::core
