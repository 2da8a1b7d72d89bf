#pragma once

#include <boardmark/core/wall/wall.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// Rows at one spacing, from the height of the lowest up to the top of the concrete.
struct EvenRows {
    double first_m;
    double spacing_m; ///< > 0
    double top_m;
};
std::vector<double> row_heights(EvenRows rows);

/// A tie: where it stands on the face, and what of the form it holds. Its strip reaches halfway to
/// the rows above and below, the lowest row's to the bottom, the highest row's to the top; along
/// the wall it holds the stated spacing, narrower as the columns may stand.
struct TiePlace {
    double station_m; ///< along the run; of a planter along the middle line of its walls
    double height_m;  ///< above the bottom of the form
    double depth_m;   ///< below the highest concrete that it holds
    double deepest_m; ///< depth of the lowest form that it holds
    double strip_m;   ///< height of form that its row holds
    double area_m2;   ///< of form that it holds, with what it takes over
    /// It also holds form whose own tie would stand inside an opening or above a step. All of that
    /// form is counted to each neighbour, the safe side.
    bool takes_over = false;
};

/// The ties of a run, or of one planter.
struct TieLayout {
    std::string name;                    ///< of the run or planter
    std::vector<double> stations_m = {}; ///< of the columns
    std::size_t rows = 0;                ///< in the highest column
    std::vector<TiePlace> ties = {};     ///< column by column, from the bottom up
    int left_out = 0;                    ///< inside openings through the wall
    bool all_held = true;             ///< otherwise some form has neither a tie nor a neighbour's
    bool on_assumed_openings = false; ///< an opening through the wall has no stated place
    /// Of the form that a tie next to a corner holds, over the stated spacing of columns: the outer
    /// face of a corner goes beyond the middle line. 0 without corners.
    double beside_corner = 0;
};

/// Columns in the least number of equal spaces not above `across`, half a space at each end; rows
/// at `first`, then every `up`, in each column as high as the concrete at its station. Without
/// `first` the lowest row stands at half of `up`, of a lower wall at half its height.
TieLayout tie_layout(const WallRun& run, const Ties& ties);

/// Of one planter, each of whose walls is such a form; its ties stand above the floor, and the
/// lowest row holds the outer form down to the bottom.
TieLayout tie_layout(const Planter& planter, const Ties& ties);

/// Of the run of that name, else of the planter.
TieLayout tie_layout(const Wall& wall, const std::string& name, const Ties& ties);

} // namespace boardmark::core
