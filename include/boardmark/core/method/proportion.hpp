#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

struct Tables;

/// Proportions 1 m3 of concrete by the method of the tables.
///
/// Unresolved where no mix follows: a table does not reach, the volumes leave no room for the fine
/// aggregate, or the liquid of the admixtures exceeds the mixing water.
///
/// @param tables of the mix's own code and method: reference::tables_for(mix). Those of another
/// code or method, such as reference::tables(system), judge it by limits that are not its own.
Outcome<Proportions> proportion(const CompleteMix& mix, const Tables& tables);

/// The same figures without a word: worksheet and cautions stay empty, and nothing is allocated
/// once `proportions` has held a mix of as many ingredients, but for the keys that a temperature
/// lacks. For many mixes at once.
///
/// @param proportions  is used again: what it held is gone
/// @returns why no mix follows; nothing where one does
std::optional<Unresolved> figures(const CompleteMix& mix, const Tables& tables,
                                  Proportions& proportions);

/// Takes submitted amounts as they are and sums them. Volumes stay absent where a relative density
/// that no usual figure can stand in for (an aggregate's) is missing.
///
/// Unresolved where the water is less than the admixtures' liquid that it is said to include.
Outcome<Proportions> accept(const CompleteSubmittedMix& mix, const Tables& tables);

/// Either of the two, by what the file holds.
Outcome<Proportions> proportions_of(const AnyCompleteMix& mix, const Tables& tables);

} // namespace boardmark::core
