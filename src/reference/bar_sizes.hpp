#pragma once

#include <boardmark/core/basis/tables.hpp>

#include <vector>

namespace boardmark::reference {

/// The sizes of bars of both systems, US ones first.
std::vector<core::BarSize> bar_sizes();

} // namespace boardmark::reference
