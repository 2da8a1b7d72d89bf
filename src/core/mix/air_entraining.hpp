#pragma once

#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

/// Whether an ingredient entrains air: an admixture for it, or a cement whose designation says so.
bool can_entrain_air(const Proportions& proportions);

} // namespace boardmark::core
