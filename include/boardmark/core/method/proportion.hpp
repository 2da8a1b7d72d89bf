#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

struct Tables;

/// Proportions 1 m3 of concrete by the absolute-volume method of ACI 211.1-91.
///
/// @throws Unresolved where no mix follows: a table does not reach, the volumes leave no room for
///         the fine aggregate, or the liquid of the admixtures exceeds the mixing water.
Proportions proportion(const Mix& mix, const Tables& tables);

/// Takes submitted amounts as they are and sums them. Volumes stay absent where a relative density
/// that no usual figure can stand in for (an aggregate's) is missing.
///
/// @throws Unresolved where the water is less than the admixtures' liquid that it is said to
/// include.
Proportions accept(const SubmittedMix& mix, const Tables& tables);

/// Either of the two, by what the file holds.
Proportions proportions_of(const AnyMix& mix, const Tables& tables);

/// What is asked of the concrete, whichever kind of mix it is.
const Requirements& requirements_of(const AnyMix& mix);

} // namespace boardmark::core
