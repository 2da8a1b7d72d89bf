#pragma once

#include "../gate/files.hpp"
#include "mix_context.hpp"

#include <optional>

namespace boardmark::input {

/// Takes the value of `requirements.strength_curve: from FILE` out of a tree; read_own_line reads
/// it.
std::optional<Node> take_results(Node& root);

/// The line through the results of the file that a value names, at the strength age of the mix.
/// Nothing where none is named, and where a fault has been told.
std::optional<core::OwnLine> read_own_line(const MixContext& context,
                                           const std::optional<Node>& asked, Files& files);

} // namespace boardmark::input
