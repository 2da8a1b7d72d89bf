#pragma once

#include <boardmark/core/basis/typical_figure.hpp>

#include <vector>

namespace boardmark::core {

/// By what a core's strength is multiplied for its length over its diameter.
struct LengthFactor {
    double ratio;
    double factor;
    Source source;
};

/// How ACI 318 judges cores that were drilled where a strength test was low, and how ASTM C42 wants
/// them handled.
struct CoreRules {
    TypicalFigure cores;               ///< of each low test
    TypicalFigure average_fraction;    ///< of the specified strength
    TypicalFigure single_fraction;     ///< likewise
    TypicalFigure rounded_fraction;    ///< that one answer counts as the first
    std::vector<LengthFactor> factors; ///< increasing ratios
    TypicalFigure least_ratio;         ///< length over diameter, capped
    TypicalFigure wanted_low_ratio;
    TypicalFigure wanted_high_ratio;
    TypicalFigure least_diameter_mm;
    TypicalFigure least_in_sizes; ///< diameter over the nominal size of the stone
    TypicalFigure bagged_h;       ///< within which a core is in its bag
    TypicalFigure wet_work_d;     ///< within which wet cutting and grinding ends
    TypicalFigure least_rest_d;   ///< from the last wetting to the test
    TypicalFigure latest_test_d;  ///< after drilling
    TypicalFigure off_joint_mm;   ///< from joints and edges
};

} // namespace boardmark::core
