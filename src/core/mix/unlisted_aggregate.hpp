#pragma once

#include <boardmark/core/mix/proportions.hpp>

#include <string>

namespace boardmark::core {

/// Whether coarse and fine aggregate are listed: without one of them no sum over the materials is
/// whole.
bool lists_aggregates(const Proportions& proportions);

/// What a submittal lists none of: "fine aggregate"; empty where it lists both.
std::string unlisted_aggregate(const Proportions& proportions);

} // namespace boardmark::core
