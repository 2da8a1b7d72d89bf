#include "compare.hpp"

#include "../basis/tolerance.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

bool rounds_to_limit(Comparison comparison) {
    const auto steps = [&](double value) {
        return std::floor(value / comparison.precision + 0.5 + relative_rounding);
    };
    return steps(comparison.value) == steps(comparison.limit);
}

/// What is no number is neither above nor below a limit.
bool is_comparable(Comparison comparison) {
    return std::isfinite(comparison.value) && std::isfinite(comparison.limit);
}

} // namespace

Verdict at_most(Comparison comparison) {
    if (!is_comparable(comparison)) {
        return Verdict::not_checked;
    }
    if (!above(comparison.value, comparison.limit)) {
        return Verdict::holds;
    }
    return rounds_to_limit(comparison) ? Verdict::watch : Verdict::fails;
}

Verdict at_least(Comparison comparison) {
    if (!is_comparable(comparison)) {
        return Verdict::not_checked;
    }
    if (!below(comparison.value, comparison.limit)) {
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

double amount_precision_kg_m3(UnitSystem system) {
    constexpr double pound_per_cubic_yard_kg_m3 = 0.5932764213;
    return system == UnitSystem::us ? pound_per_cubic_yard_kg_m3 : 1;
}

double rise_precision_m_h(UnitSystem system) {
    constexpr double tenth_of_a_foot_m = 0.03048;
    return system == UnitSystem::us ? tenth_of_a_foot_m : 0.05;
}

} // namespace boardmark::core
