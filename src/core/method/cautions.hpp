#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>

namespace boardmark::core {

struct Tables;

/// Adds what must stand beside every set of proportions, and what this one calls for.
void caution(const Requirements& requirements, Proportions& proportions, const Tables& tables);

/// What stands beside every strength and amount.
Phrase general_caution();

} // namespace boardmark::core
