#pragma once

#include "cutting_relaxation.hpp"

namespace boardmark::core {

/// A plan of whole boards from one in parts: whole boards are taken first, then the cut of which
/// the largest part is wanted, and what is left is relaxed anew; when the effort is spent, the rest
/// is cut board by board.
///
/// @param first_choice where no whole board is wanted for the first time: of the cuts, the one
/// wanted most (0), second most (1) …; another choice may end in a better plan
std::vector<CutAlike> rounded_cutting(const CuttingProblem& problem, Relaxation relaxation,
                                      std::size_t first_choice, Effort& effort);

} // namespace boardmark::core
