#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

/// Whether a binder or an aggregate takes up volume by a usual relative density, because none is
/// stated: what is judged by volumes is assumed then. Costs no allocation.
bool density_is_assumed(const Proportions& proportions);

/// Tells of which materials.
void append_assumed_densities(const Proportions& proportions, Phrase& message);

} // namespace boardmark::core
