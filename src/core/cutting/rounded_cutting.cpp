#include "rounded_cutting.hpp"

#include "cutting_search.hpp"
#include "greedy_cutting.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace boardmark::core {
namespace {

constexpr int few_pieces = 14; // that are searched whole in no time

/// The whole boards of each cut.
std::vector<CutAlike> whole_boards_of(const std::vector<SharedCut>& cuts) {
    std::vector<CutAlike> whole;
    for (const SharedCut& shared : cuts) {
        const int boards = static_cast<int>(std::floor(shared.boards + 1e-6));
        if (boards > 0) {
            whole.push_back(shared.cut);
            whole.back().boards = boards;
        }
    }
    return whole;
}

/// The cut that is wanted most, second most …
CutAlike wanted(std::vector<SharedCut> cuts, std::size_t choice) {
    std::ranges::stable_sort(cuts, std::greater{}, &SharedCut::boards);
    return cuts[std::min(choice, cuts.size() - 1)].cut;
}

/// A board holds no more pieces than are left.
void clip(CutAlike& cut, const Counts& left) {
    for (std::size_t of = 0; of < left.size(); ++of) {
        cut.holds[of] = std::min(cut.holds[of], left[of]);
    }
}

int pieces_in(const Counts& left) {
    int pieces = 0;
    for (const int count : left) {
        pieces += count;
    }
    return pieces;
}

/// Cuts so many boards of what is left, those that come out alike at once.
void take(const CutAlike& cut, Counts& left, std::vector<CutAlike>& plan) {
    for (int boards = cut.boards; boards > 0;) {
        CutAlike alike = cut;
        clip(alike, left);
        if (none_left(alike.holds)) {
            return;
        }
        alike.boards = std::min(boards, boards_alike(alike, left));
        boards -= alike.boards;
        take_off(alike, left);
        plan.push_back(std::move(alike));
    }
}

void append(std::vector<CutAlike> more, std::vector<CutAlike>& plan) {
    std::ranges::move(more, std::back_inserter(plan));
}

} // namespace

std::vector<CutAlike> rounded_cutting(const CuttingProblem& problem, Relaxation relaxation,
                                      std::size_t first_choice, Effort& effort) {
    std::vector<CutAlike> plan;
    Counts left = problem.asked;
    while (!effort.spent() && pieces_in(left) > few_pieces) {
        std::vector<CutAlike> taken = whole_boards_of(relaxation.cuts);
        if (taken.empty()) {
            taken.push_back(wanted(std::move(relaxation.cuts), first_choice));
            first_choice = 0;
        }
        for (const CutAlike& cut : taken) {
            take(cut, left, plan);
        }
        relaxation = relaxed(problem, left, effort);
    }
    std::vector<CutAlike> rest = greedy_cutting(problem, left);
    const Units cost = cost_of(rest, problem);
    SearchedCutting searched = searched_cutting(problem, left, cost, relaxation.least_cost);
    append(searched.plan.empty() ? std::move(rest) : std::move(searched.plan), plan);
    return plan;
}

} // namespace boardmark::core
