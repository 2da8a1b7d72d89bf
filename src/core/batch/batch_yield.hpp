#pragma once

#include <boardmark/core/batch/batch.hpp>

#include <optional>

namespace boardmark::core {

/// The ingredient of that name. Asserts that the mix has it.
const Ingredient& ingredient_named(const Proportions& proportions, std::string_view name);

/// The volume that the weights of a batch fill, with the air that the mix has. Nothing where a
/// volume of the mix is unknown.
std::optional<double> yield_m3(const Batch& batch, const Proportions& proportions);

/// The proportions of 1 m3 as the weights of a batch really make it.
Proportions as_weighed(const Proportions& proportions, const Batch& batch);

} // namespace boardmark::core
