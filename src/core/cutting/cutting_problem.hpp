#pragma once

#include <boardmark/core/cutting/cutting_plan.hpp>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace boardmark::core {

using Counts = std::vector<int>; ///< of each length of the problem

/// Lengths in whole units of 0.1 µm: what fits, what is bought and what no plan can beat are exact.
using Units = std::int64_t;

/// Pieces that are asked for and boards that are sold.
struct CuttingProblem {
    std::vector<double> length_m; ///< of the pieces, decreasing
    std::vector<Units> takes;     ///< of a board: the piece with its saw cut
    Counts asked;                 ///< of each length, > 0
    std::vector<double> stock_m;  ///< increasing
    std::vector<Units> costs;     ///< of a board: its length
    std::vector<Units> room;      ///< in a board: its length and one saw cut
};

/// Like lengths together, none of no length.
///
/// @param stock_m at least one, the longest not shorter than the longest piece
CuttingProblem cutting_problem(std::vector<Pieces> pieces, std::vector<double> stock_m,
                               double saw_cut_m);

/// Boards of one stock length that are cut in one way.
struct CutAlike {
    std::size_t stock;
    Counts holds; ///< of each length, in one board
    int boards = 1;
};

/// Steps of work that may still be done: the same on any machine, so that an order has one plan.
struct Effort {
    std::int64_t steps;

    bool spent() const { return steps <= 0; }
};

/// What the boards cost.
Units cost_of(const std::vector<CutAlike>& cut, const CuttingProblem& problem);

/// What is left of the pieces without these boards; none below zero.
void take_off(const CutAlike& cut, Counts& left);

/// How many boards can be cut so from what is left; each holds some piece.
int boards_alike(const CutAlike& cut, const Counts& left);

/// Nothing is left.
bool none_left(const Counts& left);

} // namespace boardmark::core
