#include "tree_json.hpp"

#include "../input/gate/gate.hpp"

#include <nlohmann/json.hpp>

#include <optional>
#include <vector>

namespace boardmark::page {
namespace {

using Json = nlohmann::ordered_json;
using input::Node;

/// How many UTF-16 units stand before each byte of a text.
class Units {
public:
    explicit Units(std::string_view text) {
        std::size_t units = 0;
        before_.reserve(text.size() + 1);
        line_begins_.push_back(0);
        for (std::size_t i = 0; i < text.size(); ++i) {
            before_.push_back(units);
            const auto byte = static_cast<unsigned char>(text[i]);
            const bool continues = (byte & 0xC0U) == 0x80U;
            const bool takes_two = byte >= 0xF0U;
            units += continues ? 0 : takes_two ? 2 : 1;
            if (text[i] == '\n') {
                line_begins_.push_back(i + 1);
            }
        }
        before_.push_back(units);
    }

    std::size_t byte_of(input::Spot spot) const {
        return line_begins_.at(std::min(spot.line, line_begins_.size() - 1)) + spot.byte;
    }
    std::size_t at(std::size_t byte) const {
        return before_.at(std::min(byte, before_.size() - 1));
    }

private:
    std::vector<std::size_t> before_;
    std::vector<std::size_t> line_begins_;
};

std::string_view word_of(Node::Kind kind) {
    switch (kind) {
    case Node::Kind::empty:
        return "empty";
    case Node::Kind::scalar:
        return "scalar";
    case Node::Kind::list:
        return "list";
    case Node::Kind::mapping:
        break;
    }
    return "mapping";
}

/// A part of the tree, with its end once more for the part that holds it.
struct Told {
    Json json;
    std::size_t to;
};

// What stands in braces is made into lists before it is an object, in each node of a text that
// somebody types.
Told told_of(const Node& node, const Units& units, std::optional<std::size_t> place = {}) {
    const std::size_t begin = units.byte_of(node.spot);
    Told told{Json::object(), place.value_or(units.at(
                                  begin + (node.kind == Node::Kind::scalar ? node.length : 0)))};
    constexpr std::size_t most_fields = 5;
    told.json.get_ref<Json::object_t&>().reserve(most_fields);
    told.json["at"] = place.value_or(units.at(begin));
    told.json["kind"] = word_of(node.kind);
    if (node.kind == Node::Kind::scalar) {
        told.json["text"] = node.scalar;
        told.json["quoted"] = node.quoted;
    }
    for (const Node& item : node.items) {
        Told part = told_of(item, units);
        told.json["items"].push_back(std::move(part.json));
        told.to = part.to;
    }
    for (const input::Entry& entry : node.entries) {
        Told key = told_of(entry.key, units);
        const bool is_empty =
            entry.value.kind == Node::Kind::empty; // its own place is on the wrong line
        Told value = told_of(entry.value, units, is_empty ? std::optional{key.to} : std::nullopt);
        told.to = value.to;
        Json pair = Json::array();
        pair.push_back(std::move(key.json));
        pair.push_back(std::move(value.json));
        told.json["entries"].push_back(std::move(pair));
    }
    told.json["to"] = told.to;
    return told;
}

} // namespace

std::string tree_json(std::string text) {
    const Units units{text};
    const input::SourceText source{"", std::move(text)};
    input::Diagnostics diagnostics;
    const auto root = input::pass_gate(source, diagnostics);
    return root ? told_of(*root, units).json.dump(-1, ' ', false, Json::error_handler_t::replace)
                : "null";
}

} // namespace boardmark::page
