#pragma once

#include <boardmark/core/wall/tie_layout.hpp>

#include "profile.hpp"

#include <vector>

namespace boardmark::core {

/// A straight form and what stands in it.
struct TieForm {
    Profile profile;
    std::vector<FaceBox> openings; ///< through the wall
    Ties ties;
    double floor_m = 0; ///< rows are measured from here; the form begins at 0
};

/// What one column holds along the wall: the stated spacing, half to each side. Of no height.
FaceBox strip_along(const TieForm& form, double station_m);

/// Where a row crosses a column.
struct TieCrossing {
    enum class At { tie, opening, above_the_top };
    At at;
    TiePlace tie; ///< what stands there, or would stand there
};

/// One column of ties from the bottom up.
struct TieColumn {
    double station_m;
    double held_m; ///< the highest concrete that it holds, above the bottom
    std::vector<TieCrossing> crossings;
};
TieColumn tie_column(const TieForm& form, double station_m);

/// Gives the form of ties left out to their neighbours. False where some has no neighbour.
bool hand_over(const TieForm& form, std::vector<TieColumn>& columns);

} // namespace boardmark::core
