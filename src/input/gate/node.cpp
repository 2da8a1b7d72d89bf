#include "node.hpp"

#include <algorithm>

namespace boardmark::input {

const Entry* Node::find(std::string_view key) const {
    const auto found =
        std::ranges::find_if(entries, [&](const Entry& entry) { return entry.key.scalar == key; });
    return found == entries.end() ? nullptr : &*found;
}

std::string_view describe(Node::Kind kind) {
    switch (kind) {
    case Node::Kind::empty:
        return "no value";
    case Node::Kind::scalar:
        return "a single value";
    case Node::Kind::list:
        return "a list";
    case Node::Kind::mapping:
        return "a mapping";
    }
    return "";
}

} // namespace boardmark::input
