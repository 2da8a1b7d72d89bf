#pragma once

#include "node.hpp"

#include <optional>

namespace boardmark::input {

/// The tree of a file that is written plainly, as almost every one is: keys and values by
/// indentation, lists and mappings in brackets, words without marks, quotes without escapes. It is
/// the tree that the YAML library builds of the text, in a twentieth of its time.
///
/// Nothing where anything else stands in the text, wrong or only rare: that is for the library to
/// read, and to tell what is wrong. So nothing is refused here.
std::optional<Node> plain_tree(const SourceText& source);

} // namespace boardmark::input
