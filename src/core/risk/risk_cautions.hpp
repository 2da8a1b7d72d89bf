#pragma once

#include <boardmark/core/risk/risk.hpp>

#include <vector>

namespace boardmark::core {

/// What must be said beside the figures: what is assumed, what counts as exact, what is not in it.
std::vector<Phrase> cautions_of(const Risk& risk, const Requirements& requirements);

} // namespace boardmark::core
