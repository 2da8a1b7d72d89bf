#pragma once

#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

struct Tables;

/// By how much the middle of a thick section grows hotter than it was placed, K: an estimate that
/// thin sections do not reach. A material whose heat is not known counts as portland cement.
double temperature_rise_k(const Proportions& proportions, const Tables& tables);

} // namespace boardmark::core
