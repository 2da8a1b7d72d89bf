#include <boardmark/core/cutting/cutting_plan.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace boardmark::core {
namespace {

constexpr double hairline_m = 1e-7;        // unit conversion, not wood
constexpr int most_steps = 100'000;        // below 30 ms
constexpr std::size_t most_boards = 2'000; // in a search: each is a few calls deep

using Counts = std::vector<int>; // of each length

struct Board {
    double stock_m;
    Counts holds;
};

/// The search: the longest piece left goes into a board of each stock length, which is filled in
/// every way that leaves no room for another piece.
class Search {
public:
    Search(const std::vector<Pieces>& pieces, std::vector<double> stock_m, double saw_cut_m)
        : m_stock_m{std::move(stock_m)}
        , m_saw_cut_m{saw_cut_m} {
        for (const Pieces& piece : pieces) {
            m_length_m.push_back(piece.length_m);
            m_left.push_back(piece.count);
        }
        std::ranges::sort(m_stock_m);
        m_step_m = common_step_m();
    }

    CuttingPlan run() {
        CuttingPlan plan;
        const Counts all = m_left;
        plan.lower_bound_m = bound_m();
        greedy();
        m_left = all;
        branch(0);
        plan.bought_m = m_best_m;
        plan.proven = m_steps < most_steps || m_best_m <= plan.lower_bound_m + hairline_m;
        if (plan.proven) {
            plan.lower_bound_m = m_best_m;
        }
        for (const Board& board : m_best) {
            add(board, plan);
        }
        return plan;
    }

private:
    /// The greatest common divisor of the stock lengths, where all are whole tenths of a
    /// millimetre; else 0.
    double common_step_m() const {
        std::int64_t step = 0;
        for (const double stock_m : m_stock_m) {
            const double tenths = stock_m * 10'000;
            if (std::abs(tenths - std::round(tenths)) > 1e-6) {
                return 0;
            }
            step = std::gcd(step, std::llround(tenths));
        }
        return static_cast<double>(step) / 10'000;
    }

    /// No plan for the pieces left buys less: their length with saw cuts, or a board for each piece
    /// of which two do not fit one; in steps of the stock lengths' greatest common divisor.
    double bound_m() const {
        double filled_m = 0;
        double single_m = 0;
        for (std::size_t of = 0; of < m_left.size(); ++of) {
            filled_m += m_left[of] * (m_length_m[of] + m_saw_cut_m);
            if (2 * m_length_m[of] + m_saw_cut_m > m_stock_m.back() + hairline_m) {
                single_m += m_left[of] * shortest_stock_m(m_length_m[of]);
            }
        }
        // A board of length s holds at most s and one saw cut; the shortest gives most per metre.
        filled_m *= m_stock_m.front() / (m_stock_m.front() + m_saw_cut_m);
        const double least_m = std::max(filled_m, single_m);
        return m_step_m > 0 ? std::ceil((least_m - hairline_m) / m_step_m) * m_step_m : least_m;
    }

    double shortest_stock_m(double length_m) const {
        return *std::ranges::find_if(
            m_stock_m, [&](double stock_m) { return stock_m + hairline_m >= length_m; });
    }

    std::size_t longest_left() const {
        const auto found = std::ranges::find_if(m_left, [](int count) { return count > 0; });
        return static_cast<std::size_t>(found - m_left.begin());
    }

    /// A board for the longest piece left, then the longest that still fit.
    Board filled(double stock_m) const {
        Board board{stock_m, Counts(m_left.size(), 0)};
        double room_m = stock_m + m_saw_cut_m + hairline_m;
        for (std::size_t of = longest_left(); of < m_left.size(); ++of) {
            const double takes_m = m_length_m[of] + m_saw_cut_m;
            board.holds[of] = std::clamp(static_cast<int>(room_m / takes_m), 0, m_left[of]);
            room_m -= board.holds[of] * takes_m;
        }
        return board;
    }

    double used_share(const Board& board) const {
        double used_m = 0;
        for (std::size_t of = 0; of < m_length_m.size(); ++of) {
            used_m += board.holds[of] * m_length_m[of];
        }
        return used_m / board.stock_m;
    }

    /// Board by board, the stock length that is used best.
    void greedy() {
        double bought_m = 0;
        std::vector<Board> boards;
        while (longest_left() < m_left.size()) {
            Board best{0, {}};
            for (const double stock_m : m_stock_m) {
                if (stock_m + hairline_m < m_length_m[longest_left()]) {
                    continue;
                }
                Board board = filled(stock_m);
                if (best.holds.empty() || used_share(board) >= used_share(best)) {
                    best = std::move(board);
                }
            }
            take(best, -1);
            bought_m += best.stock_m;
            boards.push_back(std::move(best));
        }
        m_best = std::move(boards);
        m_best_m = bought_m;
    }

    void take(const Board& board, int sign) {
        for (std::size_t of = 0; of < m_left.size(); ++of) {
            m_left[of] += sign * board.holds[of];
        }
    }

    bool finished(double bought_m) {
        return ++m_steps >= most_steps || bought_m + bound_m() > m_best_m - hairline_m;
    }

    void branch(double bought_m) {
        if (m_boards.size() > most_boards) {
            m_steps = most_steps;
        }
        if (finished(bought_m)) {
            return;
        }
        const std::size_t longest = longest_left();
        if (longest == m_left.size()) {
            m_best = m_boards;
            m_best_m = bought_m;
            return;
        }
        for (auto stock = m_stock_m.rbegin(); stock != m_stock_m.rend(); ++stock) {
            const double room_m = *stock + m_saw_cut_m - (m_length_m[longest] + m_saw_cut_m);
            if (room_m + hairline_m < 0) {
                continue;
            }
            m_boards.push_back({*stock, Counts(m_left.size(), 0)});
            m_boards.back().holds[longest] = 1;
            --m_left[longest];
            fill(longest, room_m, bought_m + *stock);
            ++m_left[longest];
            m_boards.pop_back();
        }
    }

    /// Every filling of the last board from the length `of` on.
    void fill(std::size_t of, double room_m, double bought_m) {
        if (m_steps >= most_steps) {
            return;
        }
        while (of < m_left.size() &&
               (m_left[of] == 0 || m_length_m[of] + m_saw_cut_m > room_m + hairline_m)) {
            ++of;
        }
        if (of == m_left.size()) {
            if (!room_for_more(room_m)) {
                branch(bought_m);
            }
            return;
        }
        const double takes_m = m_length_m[of] + m_saw_cut_m;
        const int most =
            std::clamp(static_cast<int>((room_m + hairline_m) / takes_m), 0, m_left[of]);
        for (int count = most; count >= 0; --count) {
            ++m_steps;
            m_boards.back().holds[of] += count;
            m_left[of] -= count;
            fill(of + 1, room_m - count * takes_m, bought_m);
            m_left[of] += count;
            m_boards.back().holds[of] -= count;
        }
    }

    bool room_for_more(double room_m) const {
        for (std::size_t of = 0; of < m_left.size(); ++of) {
            if (m_left[of] > 0 && m_length_m[of] + m_saw_cut_m <= room_m + hairline_m) {
                return true;
            }
        }
        return false;
    }

    void add(const Board& board, CuttingPlan& plan) const {
        CutBoard cut{.stock_m = board.stock_m, .pieces = {}, .count = 1};
        for (std::size_t of = 0; of < m_length_m.size(); ++of) {
            if (board.holds[of] > 0) {
                cut.pieces.push_back({m_length_m[of], board.holds[of]});
                plan.needed_m += board.holds[of] * m_length_m[of];
            }
        }
        const auto same = std::ranges::find_if(plan.boards, [&](const CutBoard& other) {
            return other.stock_m == cut.stock_m &&
                   std::ranges::equal(other.pieces, cut.pieces,
                                      [](const Pieces& a, const Pieces& b) {
                                          return a.length_m == b.length_m && a.count == b.count;
                                      });
        });
        if (same == plan.boards.end()) {
            plan.boards.push_back(std::move(cut));
        } else {
            ++same->count;
        }
    }

    std::vector<double> m_length_m; ///< decreasing
    std::vector<double> m_stock_m;  ///< increasing
    double m_saw_cut_m;
    double m_step_m = 0; ///< every sum of stock lengths is a multiple of it
    Counts m_left;
    std::vector<Board> m_boards;
    std::vector<Board> m_best;
    double m_best_m = 0;
    int m_steps = 0;
};

/// Longest first, like lengths together, none of no length.
std::vector<Pieces> sorted(std::vector<Pieces> pieces) {
    std::ranges::stable_sort(pieces, std::greater{}, &Pieces::length_m);
    std::vector<Pieces> together;
    for (const Pieces& piece : pieces) {
        if (piece.count <= 0) {
            continue;
        }
        if (!together.empty() && together.back().length_m - piece.length_m < hairline_m) {
            together.back().count += piece.count;
        } else {
            together.push_back(piece);
        }
    }
    return together;
}

} // namespace

CuttingPlan cut(std::vector<Pieces> pieces, const std::vector<double>& stock_m, double saw_cut_mm) {
    assert(!stock_m.empty());
    const std::vector<Pieces> lengths = sorted(std::move(pieces));
    assert(lengths.empty() || lengths.front().length_m <= std::ranges::max(stock_m) + hairline_m);
    return Search{lengths, stock_m, saw_cut_mm / 1000}.run();
}

} // namespace boardmark::core
