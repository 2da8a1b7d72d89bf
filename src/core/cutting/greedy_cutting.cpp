#include "greedy_cutting.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

CutAlike filled(const CuttingProblem& problem, const Counts& left, std::size_t stock) {
    CutAlike board{stock, Counts(left.size(), 0)};
    Units room = problem.room[stock];
    for (std::size_t of = 0; of < left.size(); ++of) {
        const auto fits = static_cast<int>(std::min<Units>(room / problem.takes[of], left[of]));
        board.holds[of] = fits;
        room -= fits * problem.takes[of];
    }
    return board;
}

double used_share(const CuttingProblem& problem, const CutAlike& board) {
    double used_m = 0;
    for (std::size_t of = 0; of < board.holds.size(); ++of) {
        used_m += board.holds[of] * problem.length_m[of];
    }
    return used_m / problem.stock_m[board.stock];
}

} // namespace

std::vector<CutAlike> greedy_cutting(const CuttingProblem& problem, Counts left) {
    std::vector<CutAlike> plan;
    while (!none_left(left)) {
        const auto longest = static_cast<std::size_t>(
            std::ranges::find_if(left, [](int count) { return count > 0; }) - left.begin());
        CutAlike best{.stock = 0, .holds = {}};
        for (std::size_t stock = 0; stock < problem.room.size(); ++stock) {
            if (problem.room[stock] < problem.takes[longest]) {
                continue;
            }
            CutAlike board = filled(problem, left, stock);
            if (best.holds.empty() || used_share(problem, board) >= used_share(problem, best)) {
                best = std::move(board);
            }
        }
        best.boards = boards_alike(best, left);
        take_off(best, left);
        plan.push_back(std::move(best));
    }
    return plan;
}

} // namespace boardmark::core
