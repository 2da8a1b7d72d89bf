#include "tree_json.hpp"

#include "../input/gate/gate.hpp"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <utility>
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

/// A text as JSON writes it; what is not UTF-8 is replaced.
std::string quoted(const std::string& text) {
    return Json(text).dump(-1, ' ', false, Json::error_handler_t::replace);
}

/// Writes a tree as it goes through it: an object for each node of a text that somebody types would
/// be made only to be written.
class Writer {
public:
    explicit Writer(const Units& units)
        : units_{&units} {}

    /// Gives where the node ends.
    /// @param place  of a value that is not there: its own is on the wrong line
    std::size_t write(const Node& node, std::optional<std::size_t> place = {}) {
        const std::size_t begin = units_->byte_of(node.spot);
        const bool is_scalar = node.kind == Node::Kind::scalar;
        std::size_t to = place.value_or(units_->at(begin + (is_scalar ? node.length : 0)));
        put(R"({"at":)").put(place.value_or(units_->at(begin)));
        put(R"(,"kind":")").put(word_of(node.kind)).put("\"");
        if (is_scalar) {
            put(R"(,"text":)").put(quoted(node.scalar));
            put(R"(,"quoted":)").put(node.quoted ? "true" : "false");
        }
        write_all("items", node.items, [&](const Node& item) { to = write(item); });
        write_all("entries", node.entries, [&](const input::Entry& entry) {
            put("[");
            to = write(entry.key);
            put(",");
            const bool is_empty = entry.value.kind == Node::Kind::empty;
            to = write(entry.value, is_empty ? std::optional{to} : std::nullopt);
            put("]");
        });
        put(R"(,"to":)").put(to).put("}");
        return to;
    }

    std::string written() && { return std::move(written_); }

private:
    Writer& put(std::string_view words) {
        written_ += words;
        return *this;
    }
    Writer& put(std::size_t number) { return put(std::to_string(number)); }

    template <class Part, class Write>
    void write_all(std::string_view name, const std::vector<Part>& parts, Write write_one) {
        if (parts.empty()) {
            return;
        }
        put(R"(,")").put(name);
        std::string_view before = R"(":[)";
        for (const Part& part : parts) {
            put(before);
            write_one(part);
            before = ",";
        }
        put("]");
    }

    const Units* units_;
    std::string written_;
};

} // namespace

std::string tree_json(std::string text) {
    const Units units{text};
    const input::SourceText source{"", std::move(text)};
    input::Diagnostics diagnostics;
    const auto root = input::pass_gate(source, diagnostics);
    if (!root) {
        return "null";
    }
    Writer writer{units};
    writer.write(*root);
    return std::move(writer).written();
}

} // namespace boardmark::page
