#include "cutting_relaxation.hpp"

#include "board_filling.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace boardmark::core {
namespace {

constexpr double hair = 1e-9;
constexpr Units worth_saving = 16; // less is rounding

/// One column of the program: a way to cut, or a piece that is cut beyond what is asked.
struct Column {
    CutAlike cut; ///< empty for a piece too many
    std::size_t of = 0;
    double cost = 0;
};

/// A board of one length alone, the stock that is cheapest for each piece.
CutAlike of_one_length(const CuttingProblem& problem, const Counts& left, std::size_t of) {
    CutAlike best{.stock = 0, .holds = {}};
    double least = 0;
    for (std::size_t stock = 0; stock < problem.room.size(); ++stock) {
        const auto fits =
            static_cast<int>(std::min<Units>(problem.room[stock] / problem.takes[of], left[of]));
        if (fits == 0) {
            continue;
        }
        const double cost = static_cast<double>(problem.costs[stock]) / fits;
        if (best.holds.empty() || cost < least) {
            least = cost;
            best.stock = stock;
            best.holds.assign(left.size(), 0);
            best.holds[of] = fits;
        }
    }
    return best;
}

/// The program in the form of the revised simplex method, its inverse kept whole.
class CuttingProgram {
public:
    CuttingProgram(const CuttingProblem& problem, const Counts& left, Effort& effort)
        : m_problem{problem}
        , m_left{left}
        , m_effort{effort} {
        for (std::size_t of = 0; of < left.size(); ++of) {
            if (left[of] > 0) {
                m_rows.push_back(of);
            }
        }
        const std::size_t rows = m_rows.size();
        m_inverse.assign(rows * rows, 0);
        for (std::size_t row = 0; row < rows; ++row) {
            CutAlike alone = of_one_length(problem, left, m_rows[row]);
            const double holds = alone.holds[m_rows[row]];
            const auto cost = static_cast<double>(problem.costs[alone.stock]);
            m_basis.push_back({std::move(alone), m_rows[row], cost});
            m_inverse[row * rows + row] = 1 / holds;
            m_amounts.push_back(left[m_rows[row]] / holds);
        }
    }

    Relaxation run() && {
        Relaxation relaxation;
        while (!m_effort.spent()) {
            find_worths();
            if (const auto of = cut_too_often()) {
                enter({.cut = {.stock = 0, .holds = {}}, .of = *of});
                continue;
            }
            Column column = best_cut();
            relaxation.least_cost = std::max(relaxation.least_cost, m_bound);
            if (m_saves <= worth_saving) {
                break;
            }
            enter(std::move(column));
        }
        for (std::size_t row = 0; row < m_rows.size(); ++row) {
            if (!m_basis[row].cut.holds.empty() && m_amounts[row] > hair) {
                relaxation.cuts.push_back({m_basis[row].cut, m_amounts[row]});
            }
        }
        return relaxation;
    }

private:
    double& inverse(std::size_t row, std::size_t column) {
        return m_inverse[row * m_rows.size() + column];
    }

    /// What one more piece of each length would cost.
    void find_worths() {
        const std::size_t rows = m_rows.size();
        m_worths.assign(rows, 0);
        for (std::size_t row = 0; row < rows; ++row) {
            if (m_basis[row].cost == 0) {
                continue;
            }
            for (std::size_t column = 0; column < rows; ++column) {
                m_worths[column] += m_basis[row].cost * inverse(row, column);
            }
        }
    }

    /// The row of a length of which it pays to cut more than is asked.
    std::optional<std::size_t> cut_too_often() const {
        const auto least = std::ranges::min_element(m_worths);
        return *least < -1.0 ? std::optional{static_cast<std::size_t>(least - m_worths.begin())}
                             : std::nullopt;
    }

    /// The way to cut that saves most; the bound of these worths.
    Column best_cut() {
        std::vector<Units> worth(m_left.size(), 0);
        for (std::size_t row = 0; row < m_rows.size(); ++row) {
            worth[m_rows[row]] = std::max<Units>(0, std::llround(std::floor(m_worths[row])));
        }
        Column best{};
        double overpaid = 1; // by the stock that the worths overrate most
        m_saves = 0;
        for (std::size_t stock = 0; stock < m_problem.room.size(); ++stock) {
            Filling filling =
                best_filling(m_problem, worth, m_left, m_problem.room[stock], m_effort);
            const Units cost = m_problem.costs[stock];
            overpaid = std::max(overpaid, static_cast<double>(filling.most_worth) /
                                              static_cast<double>(cost));
            if (filling.worth - cost > m_saves) {
                m_saves = filling.worth - cost;
                best = {{stock, std::move(filling.holds)}, 0, static_cast<double>(cost)};
            }
        }
        m_bound = proven(worth, overpaid);
        return best;
    }

    /// The pieces' worth, scaled so that no board holds more than it costs: checked again in whole
    /// numbers.
    Units proven(std::vector<Units> worth, double overpaid) {
        if (overpaid > 1) {
            for (Units& of : worth) {
                of = static_cast<Units>(static_cast<double>(of) / overpaid);
            }
            for (std::size_t stock = 0; stock < m_problem.room.size(); ++stock) {
                if (best_filling(m_problem, worth, m_left, m_problem.room[stock], m_effort)
                        .most_worth > m_problem.costs[stock]) {
                    return 0;
                }
            }
        }
        Units total = 0;
        for (std::size_t of = 0; of < worth.size(); ++of) {
            total += m_left[of] * worth[of];
        }
        return total;
    }

    std::vector<double> in_basis(const Column& column) {
        const std::size_t rows = m_rows.size();
        std::vector<double> direction(rows, 0);
        for (std::size_t row = 0; row < rows; ++row) {
            if (column.cut.holds.empty()) {
                direction[row] = -inverse(row, column.of);
                continue;
            }
            for (std::size_t of = 0; of < rows; ++of) {
                const int holds = column.cut.holds[m_rows[of]];
                if (holds > 0) {
                    direction[row] += inverse(row, of) * holds;
                }
            }
        }
        return direction;
    }

    void enter(Column column) {
        const std::size_t rows = m_rows.size();
        m_effort.steps -= static_cast<std::int64_t>(rows * rows / 8 + 1);
        const std::vector<double> direction = in_basis(column);
        std::size_t leaves = rows;
        double least = 0;
        for (std::size_t row = 0; row < rows; ++row) {
            if (direction[row] <= hair) {
                continue;
            }
            const double ratio = m_amounts[row] / direction[row];
            if (leaves == rows || ratio < least - hair ||
                (ratio < least + hair && direction[row] > direction[leaves])) {
                least = ratio;
                leaves = row;
            }
        }
        if (leaves == rows) {
            return; // no length is left to buy less of: rounding alone brings this about
        }
        const double pivot = direction[leaves];
        for (std::size_t of = 0; of < rows; ++of) {
            inverse(leaves, of) /= pivot;
        }
        m_amounts[leaves] = std::max(0.0, m_amounts[leaves] / pivot);
        for (std::size_t row = 0; row < rows; ++row) {
            if (row == leaves || direction[row] == 0) {
                continue;
            }
            for (std::size_t of = 0; of < rows; ++of) {
                inverse(row, of) -= direction[row] * inverse(leaves, of);
            }
            m_amounts[row] = std::max(0.0, m_amounts[row] - direction[row] * m_amounts[leaves]);
        }
        m_basis[leaves] = std::move(column);
    }

    const CuttingProblem& m_problem;
    const Counts& m_left;
    Effort& m_effort;
    std::vector<std::size_t> m_rows; ///< lengths of which pieces are left
    std::vector<Column> m_basis;
    std::vector<double> m_inverse;
    std::vector<double> m_amounts; ///< of the columns in the basis
    std::vector<double> m_worths;  ///< of a piece of each row
    Units m_saves = 0;
    Units m_bound = 0;
};

} // namespace

Relaxation relaxed(const CuttingProblem& problem, const Counts& left, Effort& effort) {
    if (none_left(left)) {
        return {};
    }
    return CuttingProgram{problem, left, effort}.run();
}

} // namespace boardmark::core
