#include "board_filling.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

class FillingSearch {
public:
    FillingSearch(const CuttingProblem& problem, const std::vector<Units>& worth,
                  const Counts& left, Effort& effort)
        : m_takes{problem.takes}
        , m_worth{worth}
        , m_left{left}
        , m_effort{effort}
        , m_holds(worth.size(), 0) {
        for (std::size_t of = 0; of < worth.size(); ++of) {
            if (worth[of] > 0 && left[of] > 0) {
                m_order.push_back(of);
            }
        }
        std::ranges::stable_sort(
            m_order, [&](std::size_t a, std::size_t b) { return density(a) > density(b); });
    }

    Filling run(Units room) && {
        m_best.holds = m_holds;
        fill(0, room, 0);
        m_best.most_worth = m_effort.spent() ? at_most(0, room) : m_best.worth;
        return std::move(m_best);
    }

private:
    double density(std::size_t of) const {
        return static_cast<double>(m_worth[of]) / static_cast<double>(m_takes[of]);
    }

    /// What the room is worth if pieces could be split: the next length fills it.
    Units at_most(std::size_t place, Units room) const {
        return place == m_order.size()
                   ? 0
                   : static_cast<Units>(
                         std::ceil(density(m_order[place]) * static_cast<double>(room) + 1e-3));
    }

    void fill(std::size_t place, Units room, Units worth) {
        if (worth > m_best.worth) {
            m_best.worth = worth;
            m_best.holds = m_holds;
        }
        --m_effort.steps;
        if (m_effort.spent() || place == m_order.size() ||
            worth + at_most(place, room) <= m_best.worth) {
            return;
        }
        const std::size_t of = m_order[place];
        const int most = static_cast<int>(std::min<Units>(room / m_takes[of], m_left[of]));
        for (int count = most; count >= 0; --count) {
            m_holds[of] = count;
            fill(place + 1, room - count * m_takes[of], worth + count * m_worth[of]);
        }
        m_holds[of] = 0;
    }

    const std::vector<Units>& m_takes;
    const std::vector<Units>& m_worth;
    const Counts& m_left;
    Effort& m_effort;
    std::vector<std::size_t> m_order; ///< lengths, the densest first
    Counts m_holds;
    Filling m_best;
};

} // namespace

Filling best_filling(const CuttingProblem& problem, const std::vector<Units>& worth,
                     const Counts& left, Units room, Effort& effort) {
    return FillingSearch{problem, worth, left, effort}.run(room);
}

} // namespace boardmark::core
