#pragma once

#include <span>

namespace boardmark::core {

/// Parts of a variance that one input is the reason for, 0–1.
struct VarianceShares {
    double first_order; ///< by itself
    double total;       ///< with all it does together with others
};

/// Values of a function at two independent sets of samples and at the first set with one input
/// taken from the second. All three are equally long.
struct PairedValues {
    std::span<const double> first;
    std::span<const double> second;
    std::span<const double> first_with_input_of_second;
};

/// Estimates the shares. First order by A. Saltelli et al., Computer Physics Communications 181
/// (2010) 259, table 2 (b); total by M. J. W. Jansen, Computer Physics Communications 117 (1999)
/// 35, the same table (f); both from memory. Nothing of the variance: 0 and 0.
VarianceShares variance_shares(const PairedValues& values);

} // namespace boardmark::core
