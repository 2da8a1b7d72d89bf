#pragma once

#include "cutting_problem.hpp"

namespace boardmark::core {

/// A way to cut a board and how many boards, parts of a board allowed.
struct SharedCut {
    CutAlike cut;
    double boards;
};

/// The least stock if boards could be bought in parts.
struct Relaxation {
    std::vector<SharedCut> cuts; ///< > 0
    Units least_cost = 0;        ///< no plan of whole boards costs less, checked in whole numbers
};

/// Column generation: a linear program over ways to cut a board, to which the way that saves most
/// is added until none saves anything, or the effort is spent. The bound holds in either
/// case: it is proven by the worth of the pieces, of which no board holds more than it costs.
///
/// The method: Gilmore, P. C. and Gomory, R. E., "A Linear Programming Approach to the
/// Cutting-Stock Problem", Operations Research 9 (1961), 849-859; the bound by scaling the worths:
/// Farley, A. A., Operations Research 38 (1990), 922-923. Both from memory.
///
/// @param left pieces of each length that are still to be cut
Relaxation relaxed(const CuttingProblem& problem, const Counts& left, Effort& effort);

} // namespace boardmark::core
