#pragma once

#include <boardmark/core/wall/bar_size.hpp>

#include <vector>

namespace boardmark::reference {

/// The sizes of bars of both systems, US ones first.
std::vector<core::BarSize> bar_sizes();

} // namespace boardmark::reference
