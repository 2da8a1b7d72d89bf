#pragma once

#include "mix_context.hpp"

namespace boardmark::input {

/// Tells where 'kind' and 'standard' of a material contradict each other, or 'retards: no' stands
/// beside a standard that says the opposite: pressure on forms, strength and stripping go by what a
/// material really is.
void refuse_contradictions(const MixContext& context, const core::Material& material);

} // namespace boardmark::input
