// Cutting plans against a general solver of integer programs, which is given every way to cut a
// board.

#include <boardmark/core/cutting/cutting_plan.hpp>

#include <catch2/catch.hpp>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <functional>
#include <random>
#include <string>

using namespace boardmark;

namespace {

constexpr double foot_m = 0.3048;

struct Order {
    std::vector<core::Pieces> pieces;
    std::vector<double> stock_m;
    double saw_cut_mm;
};

Order drawn(unsigned seed) {
    std::mt19937 draw{seed};
    const auto below = [&](unsigned end) { return static_cast<int>(draw() % end); };
    Order order{{}, {8 * foot_m, 12 * foot_m, 16 * foot_m}, below(2) == 0 ? 0.0 : 3.0};
    const int lengths = 3 + below(7);
    for (int number = 0; number < lengths; ++number) {
        // No two alike, so that every length has a row of its own.
        order.pieces.push_back({1.1 + 0.31 * number + 0.001 * below(300), 1 + below(14)});
    }
    return order;
}

/// Every way to cut a board that leaves no room for another piece.
void each_way(const Order& order, double stock_m,
              const std::function<void(const std::vector<int>&)>& take) {
    const double saw_cut_m = order.saw_cut_mm / 1000;
    std::vector<int> holds(order.pieces.size(), 0);
    const std::function<void(std::size_t, double)> fill = [&](std::size_t of, double room_m) {
        if (of == holds.size()) {
            for (const core::Pieces& piece : order.pieces) {
                if (piece.length_m + saw_cut_m <= room_m) {
                    return;
                }
            }
            take(holds);
            return;
        }
        const double takes_m = order.pieces[of].length_m + saw_cut_m;
        for (int count = 0; count * takes_m <= room_m; ++count) {
            holds[of] = count;
            fill(of + 1, room_m - count * takes_m);
        }
        holds[of] = 0;
    };
    fill(0, stock_m + saw_cut_m + 1e-7);
}

/// The integer program in the solver's text form.
std::string program_of(const Order& order) {
    std::string cost;
    std::vector<std::string> rows(order.pieces.size());
    std::string whole;
    int way = 0;
    for (const double stock_m : order.stock_m) {
        each_way(order, stock_m, [&](const std::vector<int>& holds) {
            const std::string name = " x" + std::to_string(++way);
            cost += " + " + std::to_string(std::lround(stock_m / foot_m)) + name + "\n";
            whole += name + "\n";
            for (std::size_t of = 0; of < holds.size(); ++of) {
                if (holds[of] > 0) {
                    rows[of] += " + " + std::to_string(holds[of]) + name + "\n";
                }
            }
        });
    }
    std::string text = "Minimize\n bought:\n" + cost + "Subject To\n";
    for (std::size_t of = 0; of < rows.size(); ++of) {
        text += " piece" + std::to_string(of) + ":\n" + rows[of] +
                " >= " + std::to_string(order.pieces[of].count) + "\n";
    }
    return text + "General\n" + whole + "End\n";
}

/// The least stock in feet by the solver.
double by_solver(const Order& order) {
    std::string folder = "/tmp/cutting-oracle-XXXXXX";
    REQUIRE(mkdtemp(folder.data()) != nullptr);
    std::ofstream{folder + "/order.lp"} << program_of(order);
    const std::string command = "cd " + folder +
                                " && cbc order.lp -ratioGap 0 -allowableGap 0 -seconds 60 -solve"
                                " -solution found >printed";
    const int failed = std::system(command.c_str()); // NOLINT: no text of a user in it
    std::string state;
    std::getline(std::ifstream{folder + "/found"}, state);
    std::system(("rm -r " + folder).c_str()); // NOLINT
    INFO(state);
    REQUIRE(failed == 0);
    REQUIRE(state.rfind("Optimal", 0) == 0);
    return std::stod(state.substr(state.rfind(' ')));
}

} // namespace

TEST_CASE("a general solver finds no cheaper cutting plan") {
    const unsigned seed = GENERATE(range(0U, 24U));
    const Order order = drawn(seed);
    const core::CuttingPlan plan = core::cut(order.pieces, order.stock_m, order.saw_cut_mm);
    const double least_m = by_solver(order) * foot_m;
    CAPTURE(seed, plan.proven, plan.bought_m, plan.lower_bound_m, least_m);
    CHECK(plan.lower_bound_m <= least_m + 1e-6);
    CHECK(plan.bought_m >= least_m - 1e-6);
    CHECK(plan.bought_m <= least_m + 4 * foot_m + 1e-6); // one step of the stock lengths
    if (plan.proven) {
        CHECK(plan.bought_m <= least_m + 1e-6);
    }
}
