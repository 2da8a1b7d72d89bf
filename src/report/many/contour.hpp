#pragma once

#include "../figure/plot.hpp"

#include <optional>
#include <vector>

namespace boardmark::report {

/// Values over two increasing or falling rows of places.
struct ContourGrid {
    std::vector<double> across = {};
    std::vector<double> upright = {};
    std::vector<std::optional<double>> values = {}; ///< the upright place changes first
};

/// A straight piece of a line of equal value.
struct ContourPiece {
    PlotPoint begin;
    PlotPoint end;
};

/// The line of one value, straight between the places of the grid: each cell is cut in two
/// triangles along one diagonal, so that no cell is ambiguous. A triangle with a corner that has no
/// value has no line.
std::vector<ContourPiece> contour(const ContourGrid& grid, double level);

} // namespace boardmark::report
