#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/checks/check.hpp>

namespace boardmark::core {

/// A value, the limit it is held against, and the precision to which that limit is printed.
struct Comparison {
    double value;
    double limit;
    double precision;
};

/// A value that rounds to the limit but exceeds it unrounded is a `watch`; what is not finite,
/// value or limit, is not checked.
Verdict at_most(Comparison comparison);
Verdict at_least(Comparison comparison);

/// How much a verdict asks for a reader's attention: fails, then not checked, watch, holds.
int severity(Verdict verdict);

/// The worse of two verdicts on one requirement.
Verdict worse(Verdict left, Verdict right);

constexpr double w_cm_precision = 0.01;
constexpr double percent_precision = 0.1;
constexpr double chloride_precision_percent = 0.01;
constexpr double chloride_precision_kg_m3 = 0.1; ///< of concrete, as codes print it

/// 10 psi in the US system, 0.1 MPa in SI.
double strength_precision_mpa(UnitSystem system);

/// Whole pounds to the cubic yard in the US system, whole kilograms to the cubic metre in SI.
double amount_precision_kg_m3(UnitSystem system);

/// Rates of rise: 0.1 ft/h in the US system, 0.05 m/h in SI.
double rise_precision_m_h(UnitSystem system);

} // namespace boardmark::core
