#include "compare.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// Differences below this come from unit conversion and binary fractions, not from the mix.
double rounding_of(double limit) { return 1e-9 * std::max(1.0, std::abs(limit)); }

double steps(double value, double precision) { return std::floor(value / precision + 0.5 + 1e-9); }

bool rounds_to_limit(Comparison comparison) {
    return steps(comparison.value, comparison.precision) ==
           steps(comparison.limit, comparison.precision);
}

} // namespace

Verdict at_most(Comparison comparison) {
    if (comparison.value <= comparison.limit + rounding_of(comparison.limit)) {
        return Verdict::holds;
    }
    return rounds_to_limit(comparison) ? Verdict::watch : Verdict::fails;
}

Verdict at_least(Comparison comparison) {
    if (comparison.value >= comparison.limit - rounding_of(comparison.limit)) {
        return Verdict::holds;
    }
    return rounds_to_limit(comparison) ? Verdict::watch : Verdict::fails;
}

int severity(Verdict verdict) {
    switch (verdict) {
    case Verdict::fails:
        return 3;
    case Verdict::not_checked:
        return 2;
    case Verdict::watch:
        return 1;
    case Verdict::holds:
        return 0;
    }
    return 0;
}

Verdict worse(Verdict left, Verdict right) {
    return severity(left) >= severity(right) ? left : right;
}

double strength_precision_mpa(UnitSystem system) {
    constexpr double ten_psi_mpa = 0.0689475729;
    return system == UnitSystem::us ? ten_psi_mpa : 0.1;
}

Verdict strength_at_least(double strength_mpa, const ClassLimits& limits, UnitSystem system) {
    const bool equals_twin = std::abs(strength_mpa - limits.min_strength_twin_mpa) <=
                             rounding_of(limits.min_strength_twin_mpa);
    if (equals_twin) {
        return Verdict::holds;
    }
    return at_least({strength_mpa, limits.min_strength_mpa, strength_precision_mpa(system)});
}

} // namespace boardmark::core
