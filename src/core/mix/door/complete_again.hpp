#pragma once

#include <boardmark/core/mix/complete_mix.hpp>

namespace boardmark::core {

/// A mix that was made out of complete ones, as a complete one again: studies and trials change
/// figures of a mix and mean to leave its own range with some, a slump that flows or a water
/// without its reducer. Proven again is what such an edit can break: that every figure which the
/// calculation reads is there and is a finite number of the right sign.
///
/// Unresolved names the first figure that is not.
Outcome<CompleteMix> complete_again(Mix edited, const Tables& tables);
Outcome<CompleteSubmittedMix> complete_again(SubmittedMix edited);

} // namespace boardmark::core
