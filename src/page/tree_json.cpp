#include "tree_json.hpp"

#include "../input/gate/gate.hpp"

#include <nlohmann/json.hpp>

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

Json json_of(const Node& node, const Units& units) {
    const std::size_t begin = units.byte_of(node.spot);
    Json json{{"at", units.at(begin)},
              {"to", units.at(begin + (node.kind == Node::Kind::scalar ? node.length : 0))},
              {"kind", word_of(node.kind)}};
    if (node.kind == Node::Kind::scalar) {
        json["text"] = node.scalar;
        json["quoted"] = node.quoted;
    }
    for (const Node& item : node.items) {
        json["items"].push_back(json_of(item, units));
        json["to"] = json["items"].back()["to"];
    }
    for (const input::Entry& entry : node.entries) {
        Json key = json_of(entry.key, units);
        Json value = json_of(entry.value, units);
        if (entry.value.kind == Node::Kind::empty) { // its own place is on the wrong line
            value["at"] = key["to"];
            value["to"] = key["to"];
        }
        json["to"] = value["to"];
        json["entries"].push_back({std::move(key), std::move(value)});
    }
    return json;
}

} // namespace

std::string tree_json(std::string text) {
    const Units units{text};
    const input::SourceText source{"", std::move(text)};
    input::Diagnostics diagnostics;
    const auto root = input::pass_gate(source, diagnostics);
    return root ? json_of(*root, units).dump(-1, ' ', false, Json::error_handler_t::replace)
                : "null";
}

} // namespace boardmark::page
