#include "cutting_problem.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace boardmark::core {
namespace {

constexpr double units_per_m = 1e7;
constexpr double same_length_m = 1e-7; // unit conversion, not wood

/// Rounded down, so that equal parts of a board fit it again.
Units whole_units(double length_m) {
    return static_cast<Units>(std::floor(length_m * units_per_m + 1e-3));
}

std::vector<Pieces> longest_first(std::vector<Pieces> pieces) {
    std::ranges::stable_sort(pieces, std::greater{}, &Pieces::length_m);
    std::vector<Pieces> together;
    for (const Pieces& piece : pieces) {
        if (piece.count <= 0) {
            continue;
        }
        if (!together.empty() && together.back().length_m - piece.length_m < same_length_m) {
            together.back().count += piece.count;
        } else {
            together.push_back(piece);
        }
    }
    return together;
}

} // namespace

CuttingProblem cutting_problem(std::vector<Pieces> pieces, std::vector<double> stock_m,
                               double saw_cut_m) {
    CuttingProblem problem;
    std::ranges::sort(stock_m);
    for (const double sold_m : stock_m) {
        problem.costs.push_back(std::llround(sold_m * units_per_m));
        problem.room.push_back(std::llround((sold_m + saw_cut_m) * units_per_m));
    }
    problem.stock_m = std::move(stock_m);
    for (const Pieces& piece : longest_first(std::move(pieces))) {
        problem.length_m.push_back(piece.length_m);
        problem.takes.push_back(
            std::min(whole_units(piece.length_m + saw_cut_m), problem.room.back()));
        problem.asked.push_back(piece.count);
    }
    return problem;
}

Units cost_of(const std::vector<CutAlike>& cut, const CuttingProblem& problem) {
    Units cost = 0;
    for (const CutAlike& boards : cut) {
        cost += boards.boards * problem.costs[boards.stock];
    }
    return cost;
}

void take_off(const CutAlike& cut, Counts& left) {
    for (std::size_t of = 0; of < left.size(); ++of) {
        left[of] = std::max(0, left[of] - cut.boards * cut.holds[of]);
    }
}

int boards_alike(const CutAlike& cut, const Counts& left) {
    int most = 0;
    for (std::size_t of = 0; of < left.size(); ++of) {
        if (cut.holds[of] > 0) {
            const int whole = left[of] / cut.holds[of];
            most = most == 0 ? whole : std::min(most, whole);
        }
    }
    return most;
}

bool none_left(const Counts& left) {
    return std::ranges::all_of(left, [](int count) { return count == 0; });
}

} // namespace boardmark::core
