#pragma once

#include <limits>
#include <vector>

namespace boardmark::core {

/// An unknown, and between which values it lies.
struct BoundedUnknown {
    double start; ///< the search begins here: within the bounds, and the sum of all as asked
    double low = 0;
    double high = std::numeric_limits<double>::infinity();
    bool in_sum = false; ///< whether it is part of the sum that stays as it is at the start
};

/// One equation to be met as nearly as the bounds allow: coefficients times unknowns = value.
struct LeastSquaresRow {
    std::vector<double> coefficients; ///< one for each unknown
    double value;
    double weight = 1; ///< of the square of what is missing
};

/// The unknowns for which the sum of the weighted squares is least, within their bounds, with their
/// sum kept. A small part of the squares of the unknowns themselves is added, so that of equally
/// good solutions there is one: that of the most equal unknowns.
///
/// An active-set method: unknowns stand at a bound or are free; the free ones go to their best
/// values as far as no bound stops them; at the best values, that bound is left which holds the sum
/// up most. It ends after finitely many steps, as each set of bounds has one best value and the sum
/// of squares falls.
std::vector<double> bounded_least_squares(const std::vector<LeastSquaresRow>& rows,
                                          const std::vector<BoundedUnknown>& unknowns);

} // namespace boardmark::core
