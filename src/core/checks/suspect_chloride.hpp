#pragma once

#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

/// An admixture that hastens setting, by its kind or its standard, and is not stated to be free of
/// chloride.
bool may_hold_calcium_chloride(const Ingredient& ingredient);

} // namespace boardmark::core
