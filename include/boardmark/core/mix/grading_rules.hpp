#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// How much of a fine aggregate may pass one sieve, percent by mass.
struct SieveLimits {
    std::string name; ///< "No. 8"
    double opening_mm;
    double low_percent;
    double high_percent;
};

/// What gradings are held against.
struct GradingRules {
    std::vector<SieveLimits> fine; ///< coarsest first
    Source fine_source;
    TypicalFigure most_between_percent; ///< of the limits' sieves, two that follow each other
    TypicalFigure density_exponent;     ///< of the maximum density line
};

} // namespace boardmark::core
