#pragma once

#include "mix_context.hpp"

namespace boardmark::input {

/// Whether the aggregates of a mix are blended to a target.
bool has_blend(const MixContext& context);

/// Gives a mix the aggregates that are to be blended, each with some share: the figures that they
/// lack can be asked for.
void read_blended_aggregates(const MixContext& context, const Materials& materials, core::Mix& mix);

/// Blends them. Only where the file has no error so far.
void blend(const MixContext& context, core::Mix& mix);

} // namespace boardmark::input
