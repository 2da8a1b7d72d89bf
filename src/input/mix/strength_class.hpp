#pragma once

#include "mix_context.hpp"

#include <optional>
#include <string>

namespace boardmark::input {

/// Replaces `strength: C30/37` by the strength that the class names, so that it is read like any
/// other, and gives the class. Nothing where a quantity stands there.
std::optional<core::StrengthName> take_strength_class(Node& root, const Vocabulary& words);

/// The specified strength, its specimen and its class. Tells a class that is not known, and a
/// strength of cubes where only one of cylinders can be worked with.
void read_strength(const MixContext& context, core::Requirements& requirements);

} // namespace boardmark::input
