#pragma once

#include <boardmark/core/wall/added_cost.hpp>

#include "../writing/flow.hpp"
#include "../writing/json_values.hpp"

#include <optional>

namespace boardmark::report {

/// Item by item and in all, low, likely and high.
Flow flow_of_added_cost(const core::AddedCost& added, core::UnitSystem system);

/// null where there is none.
Json json_of_added_cost(const std::optional<core::AddedCost>& added);

} // namespace boardmark::report
