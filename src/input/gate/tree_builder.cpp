#include "tree_builder.hpp"

#include <boardmark/text/utf8.hpp>

#include <algorithm>

namespace boardmark::input {
namespace {

constexpr std::size_t deepest_nesting = 16;
constexpr std::size_t most_nodes = 10000;

char first_character(const SourceText& source, Spot spot) {
    const std::string_view line = source.line(spot.line);
    return spot.byte < line.size() ? line[spot.byte] : ' ';
}

bool begins_with_quote(const SourceText& source, Spot spot) {
    const char first = first_character(source, spot);
    return first == '"' || first == '\'';
}

[[noreturn]] void refuse_alias(const YAML::Mark& mark) {
    throw Refused{{spot_of(mark)}, "anchors and aliases are not supported", "write the value out"};
}

void refuse_anchor(const YAML::Mark& mark, YAML::anchor_t anchor) {
    if (anchor != YAML::NullAnchor) {
        refuse_alias(mark);
    }
}

void refuse_tag(const SourceText& source, Spot spot, const std::string& tag) {
    // The library calls quoted values and block text "!" as well.
    const bool written_as_tag = first_character(source, spot) == '!';
    if (written_as_tag || (!tag.empty() && tag != "?" && tag != "!")) {
        throw Refused{{spot}, "tags are not supported", "leave out the word after '!'"};
    }
}

void refuse_block_text(const SourceText& source, Spot spot) {
    const char first = first_character(source, spot);
    if (first == '|' || first == '>') {
        throw Refused{{spot}, "block text is not supported", "write the value on one line"};
    }
}

/// What a quoted value's escapes ("\n", "\e") make must be text on one line as well.
void refuse_escaped_bytes(Spot spot, const std::string& value) {
    const bool line_break = value.find_first_of("\t\n\r") != std::string::npos;
    if (line_break || text::first_invalid_byte(value) || text::first_control_character(value)) {
        throw Refused{{spot}, "the value holds a control character", "delete it"};
    }
}

} // namespace

Spot spot_of(const YAML::Mark& mark) {
    return {static_cast<std::size_t>(std::max(mark.line, 0)),
            static_cast<std::size_t>(std::max(mark.column, 0))};
}

Refused not_closed(const Node& opened) {
    return opened.kind == Node::Kind::list
               ? Refused{{opened.spot},
                         "a list that was opened with '[' is not closed",
                         "close it with ']'"}
               : Refused{{opened.spot},
                         "a mapping that was opened with '{' is not closed",
                         "close it with '}'"};
}

TreeBuilder::TreeBuilder(const SourceText& source)
    : source_(source) {}

const Node* TreeBuilder::innermost_flow_node() const {
    for (std::size_t i = open_.size(); i-- > 0;) {
        if (flow_[i]) {
            return &open_[i];
        }
    }
    return nullptr;
}

void TreeBuilder::OnDocumentStart(const YAML::Mark& mark) {
    if (documents_++ > 0) {
        throw Refused{{spot_of(mark)},
                      "a second document begins here; a file holds one mix",
                      "write each mix in a file of its own"};
    }
}

void TreeBuilder::OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) {
    refuse_anchor(mark, anchor);
    add(node(Node::Kind::empty, mark));
}

void TreeBuilder::OnAlias(const YAML::Mark& mark, YAML::anchor_t) {
    refuse_alias(mark);
}

void TreeBuilder::OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                           const std::string& value) {
    Node scalar = node(Node::Kind::scalar, mark);
    refuse_anchor(mark, anchor);
    refuse_tag(source_, scalar.spot, tag);
    refuse_block_text(source_, scalar.spot);
    scalar.scalar = value;
    scalar.quoted = begins_with_quote(source_, scalar.spot);
    scalar.length = length_on_line(scalar);
    refuse_escaped_bytes(scalar.spot, value);
    if (!scalar.quoted && value == "<<") {
        throw Refused{scalar.underline(), "merge keys are not supported", "write the values out"};
    }
    add(std::move(scalar));
}

void TreeBuilder::OnSequenceStart(const YAML::Mark& mark, const std::string& tag,
                                  YAML::anchor_t anchor, YAML::EmitterStyle::value style) {
    refuse_anchor(mark, anchor);
    refuse_tag(source_, spot_of(mark), tag);
    open(node(Node::Kind::list, mark), style);
}

void TreeBuilder::OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                             YAML::EmitterStyle::value style) {
    refuse_anchor(mark, anchor);
    refuse_tag(source_, spot_of(mark), tag);
    open(node(Node::Kind::mapping, mark), style);
}

Node TreeBuilder::node(Node::Kind kind, const YAML::Mark& mark) {
    if (++nodes_ > most_nodes) {
        throw Refused{{spot_of(mark)},
                      "the file has more than " + std::to_string(most_nodes) + " values"};
    }
    Node made;
    made.kind = kind;
    made.source = &source_;
    made.spot = spot_of(mark);
    return made;
}

/// Bytes of a scalar on its line. One that runs on over the next lines is refused: it is how an
/// unclosed quote swallows the keys that follow.
std::size_t TreeBuilder::length_on_line(const Node& scalar) const {
    if (scalar.quoted) {
        const std::size_t length = source_.quoted_length(scalar.spot);
        if (length == 0) {
            throw Refused{{scalar.spot},
                          "the quote opened at line " + std::to_string(scalar.spot.line + 1) +
                              " is not closed on that line",
                          std::string{"close it with "} + first_character(source_, scalar.spot)};
        }
        return length;
    }
    const std::string_view rest = source_.line(scalar.spot.line).substr(scalar.spot.byte);
    if (!rest.starts_with(scalar.scalar)) {
        throw runs_on(scalar.spot);
    }
    return scalar.scalar.size();
}

/// Why a plain value does not end on its line.
Refused TreeBuilder::runs_on(Spot spot) const {
    if (const Node* unclosed = innermost_flow_node()) {
        return not_closed(*unclosed);
    }
    const std::string_view line = source_.line(spot.line);
    const std::string_view next = source_.line(spot.line + 1);
    const std::size_t indent = line.find_first_not_of(' ');
    const std::size_t next_indent = next.find_first_not_of(' ');
    if (next_indent != std::string_view::npos && next_indent > indent &&
        next.find(": ") != std::string_view::npos) {
        return {{{spot.line + 1, next_indent}},
                "this line is indented deeper than the line above",
                "indent it like the keys beside it"};
    }
    return {{spot, line.size() - std::min(spot.byte, line.size())},
            "the value runs on over the next line",
            "write it on one line; a colon is followed by a space"};
}

void TreeBuilder::open(Node opened, YAML::EmitterStyle::value style) {
    if (open_.size() >= deepest_nesting) {
        throw Refused{{opened.spot},
                      "the file is nested too deeply (more than " +
                          std::to_string(deepest_nesting) + " levels)"};
    }
    constexpr std::size_t usual_keys = 8; // of a section or a material
    if (opened.kind == Node::Kind::mapping) {
        opened.entries.reserve(usual_keys);
    }
    open_.push_back(std::move(opened));
    flow_.push_back(style == YAML::EmitterStyle::Flow);
    keys_.emplace_back();
}

void TreeBuilder::close() {
    Node done = std::move(open_.back());
    open_.pop_back();
    flow_.pop_back();
    keys_.pop_back();
    add(std::move(done));
}

/// A finished value goes into the innermost open list or mapping: there as a key, then its value.
void TreeBuilder::add(Node done) {
    if (open_.empty()) {
        root_ = std::move(done);
        return;
    }
    Node& parent = open_.back();
    if (parent.kind == Node::Kind::list) {
        parent.items.push_back(std::move(done));
        return;
    }
    std::optional<Node>& key = keys_.back();
    if (!key) {
        if (done.kind != Node::Kind::scalar) {
            throw Refused{{done.spot},
                          "a key is a single word, not " + std::string{describe(done.kind)}};
        }
        key = std::move(done);
        return;
    }
    parent.entries.push_back({std::move(*key), std::move(done)});
    key.reset();
}

} // namespace boardmark::input
