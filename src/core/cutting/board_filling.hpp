#pragma once

#include "cutting_problem.hpp"

namespace boardmark::core {

/// The pieces that are worth most together in one board.
struct Filling {
    Units worth = 0;      ///< of the pieces that it holds
    Units most_worth = 0; ///< no filling is worth more; above `worth` where the search was cut off
    Counts holds;
};

/// A bounded knapsack, filled by branch and bound: lengths by worth per unit, most first; cut off
/// when the effort is spent.
///
/// @param worth of one piece of each length, ≥ 0
/// @param left most pieces of each length that one board may hold
Filling best_filling(const CuttingProblem& problem, const std::vector<Units>& worth,
                     const Counts& left, Units room, Effort& effort);

} // namespace boardmark::core
