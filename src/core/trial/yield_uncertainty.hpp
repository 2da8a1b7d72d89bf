#pragma once

#include <boardmark/core/trial/trial.hpp>
#include <boardmark/core/trial/yield.hpp>

namespace boardmark::core {

/// How far the yield may be off by the last digits written down alone, ± at 95 %: every reading may
/// be off by half its last digit, evenly, and they do not depend on each other.
double volume_uncertainty_m3(const Trial& trial, const Yield& yield);

} // namespace boardmark::core
