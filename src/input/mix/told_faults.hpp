#pragma once

#include <boardmark/core/mix/complete_mix.hpp>

#include "mix_context.hpp"

namespace boardmark::input {

/// Tells the figures that the calculation misses, each at the material that lacks its key.
void tell_missing_figures(const MixContext& context, const core::Mix& mix);

/// Tells what the door of `core` refuses of a file in which nothing here has found an error.
void tell_remaining_faults(const MixContext& context, const core::Faults& faults);

} // namespace boardmark::input
