#include "cutting_search.hpp"

#include <algorithm>
#include <numeric>

namespace boardmark::core {
namespace {

constexpr int most_steps = 100'000;      // below 30 ms
constexpr std::size_t most_boards = 400; // of a search: each is a few calls deep

class CuttingSearch {
public:
    CuttingSearch(const CuttingProblem& problem, const Counts& left, Units to_beat, Units least)
        : m_problem{problem}
        , m_left{left}
        , m_best{to_beat}
        , m_least{least} {
        for (const Units cost : problem.costs) {
            m_step = std::gcd(m_step, cost);
        }
    }

    SearchedCutting run() && {
        branch(0);
        return {std::move(m_plan), m_steps < most_steps || m_best <= m_least};
    }

private:
    /// No plan for the pieces left costs less: their length with saw cuts, or a board for each
    /// piece of which two do not fit one; in steps of the stock lengths' greatest common divisor.
    Units bound() const {
        Units filled = 0;
        Units single = 0;
        for (std::size_t of = 0; of < m_left.size(); ++of) {
            filled += m_left[of] * m_problem.takes[of];
            if (2 * m_problem.takes[of] > m_problem.room.back()) {
                single += m_left[of] * shortest_stock(of);
            }
        }
        // The shortest board has most room for what it costs: its saw cut comes with less length.
        const double paid = static_cast<double>(m_problem.costs.front()) /
                            static_cast<double>(m_problem.room.front());
        const Units most =
            std::max(single, static_cast<Units>(static_cast<double>(filled) * paid) - 1);
        return (most + m_step - 1) / m_step * m_step;
    }

    Units shortest_stock(std::size_t of) const {
        std::size_t stock = 0;
        while (m_problem.room[stock] < m_problem.takes[of]) {
            ++stock;
        }
        return m_problem.costs[stock];
    }

    bool finished(Units bought) {
        return ++m_steps >= most_steps || m_best <= m_least || bought + bound() >= m_best;
    }

    void branch(Units bought) {
        if (m_boards.size() > most_boards) {
            m_steps = most_steps;
        }
        if (finished(bought)) {
            return;
        }
        const auto longest = static_cast<std::size_t>(
            std::ranges::find_if(m_left, [](int count) { return count > 0; }) - m_left.begin());
        if (longest == m_left.size()) {
            m_plan = m_boards;
            m_best = bought;
            return;
        }
        for (std::size_t stock = m_problem.room.size(); stock-- > 0;) {
            const Units room = m_problem.room[stock] - m_problem.takes[longest];
            if (room < 0) {
                continue;
            }
            m_boards.push_back({stock, Counts(m_left.size(), 0)});
            m_boards.back().holds[longest] = 1;
            --m_left[longest];
            fill(longest, room, bought + m_problem.costs[stock]);
            ++m_left[longest];
            m_boards.pop_back();
        }
    }

    /// Every filling of the last board from the length `of` on.
    void fill(std::size_t of, Units room, Units bought) {
        if (m_steps >= most_steps) {
            return;
        }
        while (of < m_left.size() && (m_left[of] == 0 || m_problem.takes[of] > room)) {
            ++of;
        }
        if (of == m_left.size()) {
            if (!room_for_more(room)) {
                branch(bought);
            }
            return;
        }
        const Units takes = m_problem.takes[of];
        const auto most = static_cast<int>(std::min<Units>(room / takes, m_left[of]));
        for (int count = most; count >= 0; --count) {
            ++m_steps;
            m_boards.back().holds[of] += count;
            m_left[of] -= count;
            fill(of + 1, room - count * takes, bought);
            m_left[of] += count;
            m_boards.back().holds[of] -= count;
        }
    }

    bool room_for_more(Units room) const {
        for (std::size_t of = 0; of < m_left.size(); ++of) {
            if (m_left[of] > 0 && m_problem.takes[of] <= room) {
                return true;
            }
        }
        return false;
    }

    const CuttingProblem& m_problem;
    Counts m_left;
    std::vector<CutAlike> m_boards;
    std::vector<CutAlike> m_plan;
    Units m_best;
    Units m_least;
    Units m_step = 0; ///< every sum of stock lengths is a multiple of it
    int m_steps = 0;
};

} // namespace

SearchedCutting searched_cutting(const CuttingProblem& problem, const Counts& left, Units to_beat,
                                 Units least) {
    return CuttingSearch{problem, left, to_beat, least}.run();
}

} // namespace boardmark::core
