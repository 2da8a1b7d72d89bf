#pragma once

#include <boardmark/core/wall/wall.hpp>

#include <vector>

namespace boardmark::core {

/// Least dimensions of everything that is cast, by which it cools and heats, mm: of a battered run
/// that of its top and that of its bottom. At least one.
std::vector<double> least_dimensions_mm(const Wall& wall);

} // namespace boardmark::core
