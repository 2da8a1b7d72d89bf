#pragma once

#include <boardmark/core/study/comparison.hpp>

#include <vector>

namespace boardmark::core {

struct Tables;

/// Where the figures of a column come from that was proportioned and evaluated: water and w/cm by
/// its own steps, strength, slump, heat.
std::vector<Step> reasons_of(const ComparedMix& column, const Tables& tables);

} // namespace boardmark::core
