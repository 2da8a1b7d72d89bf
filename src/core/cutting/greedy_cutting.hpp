#pragma once

#include "cutting_problem.hpp"

namespace boardmark::core {

/// Board by board: the longest piece left, then the longest that still fit, in the stock length
/// that is used best; boards alike at once.
std::vector<CutAlike> greedy_cutting(const CuttingProblem& problem, Counts left);

} // namespace boardmark::core
