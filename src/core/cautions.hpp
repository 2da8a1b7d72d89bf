#pragma once

#include <boardmark/core/phrase.hpp>
#include <boardmark/core/proportions.hpp>
#include <boardmark/core/requirements.hpp>
#include <boardmark/core/tables.hpp>

namespace boardmark::core {

/// Adds what must stand beside every set of proportions, and what this one calls for.
void caution(const Requirements& requirements, Proportions& proportions, const Tables& tables);

/// What stands beside every strength and amount.
Phrase general_caution();

} // namespace boardmark::core
