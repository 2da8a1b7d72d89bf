#pragma once

#include "cutting_problem.hpp"

namespace boardmark::core {

/// What a search of all plans found.
struct SearchedCutting {
    std::vector<CutAlike> plan; ///< empty where nothing cheaper was found
    bool complete = false;      ///< every plan was looked at
};

/// Looks for a plan that costs less than `to_beat`: the longest piece left goes into a board of
/// each stock length, which is filled in every way that leaves no room for another piece. It is cut
/// off after a fixed number of steps, so that the same order has the same plan in bounded time on
/// any machine, and ends at a plan that costs `least`.
///
/// @param least no plan costs less
SearchedCutting searched_cutting(const CuttingProblem& problem, const Counts& left, Units to_beat,
                                 Units least);

} // namespace boardmark::core
