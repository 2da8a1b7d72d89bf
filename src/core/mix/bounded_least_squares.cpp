#include "bounded_least_squares.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>

namespace boardmark::core {
namespace {

using Vector = std::vector<double>;
using Matrix = std::vector<Vector>;

/// The part of the squares of the unknowns, of the largest curvature.
constexpr double equalizing = 1e-11;

/// Solves a regular system by elimination with pivoting.
Vector solved(Matrix system, Vector right) {
    const std::size_t count = right.size();
    for (std::size_t column = 0; column < count; ++column) {
        std::size_t pivot = column;
        for (std::size_t line = column + 1; line < count; ++line) {
            if (std::abs(system[line][column]) > std::abs(system[pivot][column])) {
                pivot = line;
            }
        }
        std::swap(system[column], system[pivot]);
        std::swap(right[column], right[pivot]);
        for (std::size_t line = column + 1; line < count; ++line) {
            const double factor = system[line][column] / system[column][column];
            for (std::size_t i = column; i < count; ++i) {
                system[line][i] -= factor * system[column][i];
            }
            right[line] -= factor * right[column];
        }
    }
    for (std::size_t line = count; line-- > 0;) {
        for (std::size_t i = line + 1; i < count; ++i) {
            right[line] -= system[line][i] * right[i];
        }
        right[line] /= system[line][line];
    }
    return right;
}

enum class Place { free, low, high };

class Search {
public:
    Search(const std::vector<LeastSquaresRow>& rows, const std::vector<BoundedUnknown>& unknowns)
        : unknowns_{unknowns}
        , curvature_(unknowns.size(), Vector(unknowns.size(), 0))
        , slope_(unknowns.size(), 0)
        , places_(unknowns.size(), Place::free) {
        for (const BoundedUnknown& unknown : unknowns) {
            values_.push_back(unknown.start);
        }
        for (const LeastSquaresRow& row : rows) {
            add(row);
        }
        double largest = 0;
        for (std::size_t i = 0; i < unknowns.size(); ++i) {
            largest = std::max(largest, curvature_[i][i]);
        }
        for (std::size_t i = 0; i < unknowns.size(); ++i) {
            curvature_[i][i] += equalizing * largest;
        }
        tolerance_ = 1e-3 * equalizing * largest;
    }

    Vector find() {
        // Far more than any problem takes; a guard against a loop by rounding.
        const std::size_t most_steps = 100 + 50 * unknowns_.size();
        for (std::size_t step = 0; step < most_steps; ++step) {
            if (!advance() && !leave_a_bound()) {
                return values_;
            }
        }
        return values_;
    }

private:
    void add(const LeastSquaresRow& row) {
        const Vector& coefficients = row.coefficients;
        for (std::size_t i = 0; i < coefficients.size(); ++i) {
            for (std::size_t j = 0; j < coefficients.size(); ++j) {
                curvature_[i][j] += row.weight * coefficients[i] * coefficients[j];
            }
            slope_[i] -= row.weight * coefficients[i] * row.value;
        }
    }

    double slope_at(std::size_t i) const {
        double slope = slope_[i];
        for (std::size_t j = 0; j < values_.size(); ++j) {
            slope += curvature_[i][j] * values_[j];
        }
        return slope;
    }

    std::vector<std::size_t> free_ones() const {
        std::vector<std::size_t> free;
        for (std::size_t i = 0; i < places_.size(); ++i) {
            if (places_[i] == Place::free) {
                free.push_back(i);
            }
        }
        return free;
    }

    /// Moves the free unknowns to their best values, or to the first bound on the way there.
    /// Returns whether a bound stopped them.
    bool advance() {
        const auto free = free_ones();
        if (free.empty()) {
            return false;
        }
        const bool sums = std::ranges::any_of(free, [&](auto i) { return unknowns_[i].in_sum; });
        const std::size_t count = free.size() + (sums ? 1 : 0);
        Matrix system(count, Vector(count, 0));
        Vector right(count, 0);
        for (std::size_t line = 0; line < free.size(); ++line) {
            for (std::size_t i = 0; i < free.size(); ++i) {
                system[line][i] = curvature_[free[line]][free[i]];
            }
            if (sums && unknowns_[free[line]].in_sum) {
                system[line][free.size()] = system[free.size()][line] = 1;
            }
            right[line] = -slope_at(free[line]);
        }
        const Vector step = solved(std::move(system), std::move(right));
        sum_pull_ = sums ? step.back() : 0;
        return take(step, free);
    }

    bool take(const Vector& step, const std::vector<std::size_t>& free) {
        double part = 1;
        std::optional<std::size_t> stopping;
        for (std::size_t i = 0; i < free.size(); ++i) {
            const BoundedUnknown& unknown = unknowns_[free[i]];
            const double bound = step[i] < 0 ? unknown.low : unknown.high;
            const double room = bound - values_[free[i]];
            if (step[i] != 0 && std::isfinite(room) && room / step[i] < part) {
                part = std::max(room / step[i], 0.0);
                stopping = i;
            }
        }
        for (std::size_t i = 0; i < free.size(); ++i) {
            values_[free[i]] += part * step[i];
        }
        if (!stopping) {
            return false;
        }
        const std::size_t stopped = free[*stopping];
        places_[stopped] = step[*stopping] < 0 ? Place::low : Place::high;
        values_[stopped] = step[*stopping] < 0 ? unknowns_[stopped].low : unknowns_[stopped].high;
        return true;
    }

    /// Frees the unknown at a bound whose leaving lowers the sum of squares most. Returns whether
    /// there is one.
    bool leave_a_bound() {
        std::optional<std::size_t> leaving;
        double most = tolerance_;
        for (std::size_t i = 0; i < places_.size(); ++i) {
            if (places_[i] == Place::free) {
                continue;
            }
            const double slope = slope_at(i) + (unknowns_[i].in_sum ? sum_pull_ : 0);
            const double gain = places_[i] == Place::low ? -slope : slope;
            if (gain > most) {
                most = gain;
                leaving = i;
            }
        }
        if (leaving) {
            places_[*leaving] = Place::free;
        }
        return leaving.has_value();
    }

    const std::vector<BoundedUnknown>& unknowns_;
    Matrix curvature_;
    Vector slope_;
    Vector values_;
    std::vector<Place> places_;
    double sum_pull_ = 0; ///< of the kept sum on each unknown that is part of it
    double tolerance_ = 0;
};

} // namespace

std::vector<double> bounded_least_squares(const std::vector<LeastSquaresRow>& rows,
                                          const std::vector<BoundedUnknown>& unknowns) {
    assert(std::ranges::all_of(unknowns, [](const BoundedUnknown& one) {
        return one.start >= one.low && one.start <= one.high;
    }));
    return Search{rows, unknowns}.find();
}

} // namespace boardmark::core
