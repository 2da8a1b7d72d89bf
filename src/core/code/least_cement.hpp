#pragma once

#include "counted_binder.hpp"
#include "demand.hpp"

namespace boardmark::core {

/// How a least cement is met.
enum class CementMet {
    by_cement,       ///< alone
    by_all,          ///< with the additions, all of which the code counts
    with_relief,     ///< less cement, as counted additions permit
    by_lower_figure, ///< the class's own lower figure for concrete with additions
    not_met,
};

struct LeastCement {
    double value_kg_m3; ///< what is held against the limit: cement, or all that the code counts
    double limit_kg_m3; ///< after relief
    Verdict verdict;
    CementMet met;
    const Source* relief_source = nullptr; ///< of the relief, whether it is enough or not
    double beside_kg_m3 = 0;               ///< what stands beside the cement by that rule
};

/// A binder held against the least cement that a class demands; the demand has a figure.
LeastCement hold_least_cement(const Demand& demand, const CountedBinder& binder,
                              const BinderRules& rules, bool reinforced);

/// The least binder of these shares that holds as much cement as a class demands, kg/m3.
///
/// @param per_100kg the binder's count per 100 kg of it
double least_binder_kg_m3(const Demand& demand, const CountedBinder& per_100kg,
                          const BinderRules& rules, bool reinforced);

} // namespace boardmark::core
