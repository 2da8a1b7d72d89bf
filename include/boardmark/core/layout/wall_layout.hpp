#pragma once

#include <boardmark/core/layout/elevation.hpp>
#include <boardmark/core/layout/wall_section.hpp>

#include <vector>

namespace boardmark::core {

/// The walls of a file as plain geometry, m: what a drawing shows and nothing else.
struct WallLayout {
    std::vector<Elevation>
        elevations; ///< of faces that show, in the order of the file, front first
    std::vector<WallSection> sections; ///< of runs, planters, benches
};

} // namespace boardmark::core
