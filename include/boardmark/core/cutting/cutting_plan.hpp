#pragma once

#include <vector>

namespace boardmark::core {

/// Pieces of one length.
struct Pieces {
    double length_m; ///< > 0, at most the longest stock length
    int count;       ///< ≥ 0
};

/// Boards that are bought in one length and cut in one way.
struct CutBoard {
    double stock_m;
    std::vector<Pieces> pieces; ///< of one board, longest first
    int count;
};

/// How to cut pieces out of stock lengths so that little is bought.
struct CuttingPlan {
    std::vector<CutBoard> boards;
    double bought_m = 0;
    double needed_m = 0;      ///< the pieces, without the saw cuts
    double lower_bound_m = 0; ///< no plan buys less
    bool proven = false;      ///< no plan buys less than this one
    int parts = 1;            ///< that were planned one by one: there are too many lengths for one
};

/// Least stock for some pieces: a greedy plan, a plan rounded from one in parts of boards, then a
/// search of all plans. Each is cut off after a fixed number of steps, so that the same order has
/// the same plan in bounded time on any machine. The plan in parts gives the bound: where the plan
/// is above it and the search was cut off, `proven` is false. Of more than 1000 lengths, parts are
/// planned each by itself.
///
/// @param stock_m lengths that are sold, at least one
/// @param saw_cut_mm lost between two pieces, ≥ 0; none at the ends of a board
CuttingPlan cut(std::vector<Pieces> pieces, const std::vector<double>& stock_m, double saw_cut_mm);

} // namespace boardmark::core
