#include <boardmark/core/cutting/cutting_plan.hpp>

#include "cutting_relaxation.hpp"
#include "cutting_search.hpp"
#include "greedy_cutting.hpp"
#include "rounded_cutting.hpp"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <numeric>

namespace boardmark::core {
namespace {

constexpr std::size_t most_choices = 20;
constexpr std::int64_t relaxing_steps = 4'000'000; // of relaxing: some 40 ms

/// The pieces' own length, without saw cuts.
Units material(const CuttingProblem& problem) {
    const Units saw_cut = problem.room.front() - problem.costs.front();
    Units length = 0;
    for (std::size_t of = 0; of < problem.asked.size(); ++of) {
        length += problem.asked[of] * (problem.takes[of] - saw_cut - 1);
    }
    return length;
}

/// Up to a sum of stock lengths.
Units in_whole_boards(Units least, const CuttingProblem& problem) {
    Units step = 0;
    for (const Units cost : problem.costs) {
        step = std::gcd(step, cost);
    }
    return (least + step - 1) / step * step;
}

double in_metres(Units units) {
    return static_cast<double>(units) / 1e7;
}

CutBoard told(const CutAlike& cut, const CuttingProblem& problem) {
    CutBoard board{.stock_m = problem.stock_m[cut.stock], .pieces = {}, .count = cut.boards};
    for (std::size_t of = 0; of < cut.holds.size(); ++of) {
        if (cut.holds[of] > 0) {
            board.pieces.push_back({problem.length_m[of], cut.holds[of]});
        }
    }
    return board;
}

/// Boards cut alike stand together.
std::vector<CutAlike> together(const std::vector<CutAlike>& plan) {
    std::vector<CutAlike> merged;
    for (const CutAlike& cut : plan) {
        const auto alike = std::ranges::find_if(merged, [&](const CutAlike& other) {
            return other.stock == cut.stock && other.holds == cut.holds;
        });
        if (alike == merged.end()) {
            merged.push_back(cut);
        } else {
            alike->boards += cut.boards;
        }
    }
    return merged;
}

/// The cheapest plan found, and what no plan undercuts.
struct BestCutting {
    std::vector<CutAlike> plan;
    Units cost;
    Units least;

    bool proven() const { return cost <= least; }

    void offer(std::vector<CutAlike> other, const CuttingProblem& problem) {
        const Units other_cost = cost_of(other, problem);
        if (other_cost < cost) {
            plan = std::move(other);
            cost = other_cost;
        }
    }
};

BestCutting best_cutting(const CuttingProblem& problem) {
    BestCutting best{greedy_cutting(problem, problem.asked), 0, 0};
    best.cost = cost_of(best.plan, problem);
    Effort effort{relaxing_steps};
    Relaxation relaxation = relaxed(problem, problem.asked, effort);
    best.least = in_whole_boards(std::max(relaxation.least_cost, material(problem)), problem);
    for (std::size_t choice = 0;
         choice < most_choices && choice <= relaxation.cuts.size() && !best.proven(); ++choice) {
        best.offer(rounded_cutting(problem, relaxation, choice, effort), problem);
    }
    if (!best.proven()) {
        SearchedCutting searched = searched_cutting(problem, problem.asked, best.cost, best.least);
        if (!searched.plan.empty()) {
            best.offer(std::move(searched.plan), problem);
        }
        if (searched.complete) {
            best.least = best.cost;
        }
    }
    return best;
}

/// Memory and time of a plan grow with the square of its lengths.
constexpr std::size_t most_lengths = 1000;

/// Every so manieth length, so that each part has long ones and short ones.
CuttingPlan cut_in_parts(const CuttingProblem& problem, double saw_cut_mm) {
    CuttingPlan whole;
    const std::size_t parts = (problem.asked.size() + most_lengths - 1) / most_lengths;
    for (std::size_t part = 0; part < parts; ++part) {
        std::vector<Pieces> pieces;
        for (std::size_t of = part; of < problem.asked.size(); of += parts) {
            pieces.push_back({problem.length_m[of], problem.asked[of]});
        }
        CuttingPlan plan = cut(std::move(pieces), problem.stock_m, saw_cut_mm);
        std::ranges::move(plan.boards, std::back_inserter(whole.boards));
        whole.bought_m += plan.bought_m;
        whole.needed_m += plan.needed_m;
    }
    whole.parts = static_cast<int>(parts);
    whole.lower_bound_m = in_metres(in_whole_boards(material(problem), problem));
    whole.proven = whole.bought_m <= whole.lower_bound_m;
    return whole;
}

} // namespace

CuttingPlan cut(std::vector<Pieces> pieces, const std::vector<double>& stock_m, double saw_cut_mm) {
    assert(!stock_m.empty());
    const CuttingProblem problem = cutting_problem(std::move(pieces), stock_m, saw_cut_mm / 1000);
    CuttingPlan plan;
    plan.proven = true;
    if (problem.asked.empty()) {
        return plan;
    }
    assert(problem.length_m.front() <= problem.stock_m.back() + 1e-7);
    if (problem.asked.size() > most_lengths) {
        return cut_in_parts(problem, saw_cut_mm);
    }
    const BestCutting best = best_cutting(problem);
    for (const CutAlike& cut : together(best.plan)) {
        plan.boards.push_back(told(cut, problem));
        plan.bought_m += cut.boards * problem.stock_m[cut.stock];
    }
    for (std::size_t of = 0; of < problem.asked.size(); ++of) {
        plan.needed_m += problem.asked[of] * problem.length_m[of];
    }
    plan.proven = best.proven();
    plan.lower_bound_m = plan.proven ? plan.bought_m : in_metres(best.least);
    return plan;
}

} // namespace boardmark::core
