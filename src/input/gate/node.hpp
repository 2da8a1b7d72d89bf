#pragma once

#include "source_text.hpp"

#include <string>
#include <vector>

namespace boardmark::input {

struct Entry;

/// A value of a YAML file with its place. Nodes are plain data: no aliases, no tags.
struct Node {
    enum class Kind { empty, scalar, list, mapping };

    Kind kind = Kind::empty;
    const SourceText* source = nullptr;
    Spot spot;
    std::size_t length = 1; ///< bytes of a scalar in the file, quotes included
    bool quoted = false;
    std::string scalar;
    std::vector<Node> items;
    std::vector<Entry> entries;

    /// The entry of a mapping with that key, or nullptr.
    const Entry* find(std::string_view key) const;

    Underline underline() const { return {spot, length, 0}; }
};

struct Entry {
    Node key; ///< a scalar
    Node value;
};

/// What a node is, in the words of a message: "a list", "a mapping".
std::string_view describe(Node::Kind kind);

} // namespace boardmark::input
