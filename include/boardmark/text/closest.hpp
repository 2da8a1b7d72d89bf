#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace boardmark::text {

/// The candidate that a mistyped word most likely stands for: at most two letters inserted, left
/// out, changed or swapped, and fewer than half of the word. Nothing where no candidate is near.
std::optional<std::string_view> closest(std::string_view word,
                                        std::span<const std::string_view> candidates);

} // namespace boardmark::text
