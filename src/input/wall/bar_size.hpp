#pragma once

#include <boardmark/core/wall/bar_size.hpp>

#include "../values/section.hpp"

#include <vector>

namespace boardmark::input {

/// Reads `bar: No. 4` or `bar: 16 mm` by the sizes that are made. Nullptr where the key is missing
/// or names none; then its fault is told.
const core::BarSize* read_bar(const Section& section, const std::vector<core::BarSize>& sizes);

} // namespace boardmark::input
