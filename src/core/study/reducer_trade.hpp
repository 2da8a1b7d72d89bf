#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

/// The price of the reducer against that of the binder that it saves, in a sentence: the mix
/// without it beside the one that saves binder by it.
Phrase trade_of(const Proportions& without, const Proportions& with);

} // namespace boardmark::core
