#include "gate.hpp"

#include <boardmark/text/utf8.hpp>

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <sstream>

namespace boardmark::input {
namespace {

constexpr std::size_t deepest_nesting = 16;
constexpr std::size_t most_nodes = 10000;

/// Ends the reading: what the gate found wrong.
struct Refused {
    Underline where;
    std::string message;
    std::string advice = "";
};

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

/// Turns the events of the YAML library into a tree, refusing what this format does not have.
class TreeBuilder : public YAML::EventHandler {
public:
    explicit TreeBuilder(const SourceText& source)
        : source_(source) {}

    Node take_root() { return std::move(root_); }

    /// The innermost list or mapping that was opened with a bracket and is still open, or nullptr.
    const Node* innermost_flow_node() const {
        for (std::size_t i = open_.size(); i-- > 0;) {
            if (flow_[i]) {
                return &open_[i];
            }
        }
        return nullptr;
    }

    void OnDocumentStart(const YAML::Mark& mark) override {
        if (documents_++ > 0) {
            throw Refused{{spot_of(mark)},
                          "a second document begins here; a file holds one mix",
                          "write each mix in a file of its own"};
        }
    }
    void OnDocumentEnd() override {}

    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        refuse_anchor(mark, anchor);
        add(node(Node::Kind::empty, mark));
    }

    void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override { refuse_alias(mark); }

    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  const std::string& value) override {
        refuse_anchor(mark, anchor);
        refuse_tag(mark, tag);
        refuse_block_text(mark);
        Node scalar = node(Node::Kind::scalar, mark);
        scalar.scalar = value;
        scalar.quoted = begins_with_quote(scalar.spot);
        scalar.length = length_on_line(scalar);
        refuse_escaped_bytes(mark, value);
        if (!scalar.quoted && value == "<<") {
            throw Refused{scalar.underline(), "merge keys are not supported",
                          "write the values out"};
        }
        add(std::move(scalar));
    }

    void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value style) override {
        open(Node::Kind::list, mark, tag, anchor, style);
    }
    void OnSequenceEnd() override { close(); }

    void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value style) override {
        open(Node::Kind::mapping, mark, tag, anchor, style);
    }
    void OnMapEnd() override { close(); }

private:
    Node node(Node::Kind kind, const YAML::Mark& mark) {
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

    void refuse_anchor(const YAML::Mark& mark, YAML::anchor_t anchor) {
        if (anchor != YAML::NullAnchor) {
            throw Refused{
                {spot_of(mark)}, "anchors and aliases are not supported", "write the value out"};
        }
    }

    /// What a quoted value's escapes ("\n", "\e") make must be text on one line as well.
    void refuse_escaped_bytes(const YAML::Mark& mark, const std::string& value) {
        const bool line_break = value.find_first_of("\t\n\r") != std::string::npos;
        if (line_break || text::first_invalid_byte(value) || text::first_control_character(value)) {
            throw Refused{{spot_of(mark)}, "the value holds a control character", "delete it"};
        }
    }

    [[noreturn]] void refuse_alias(const YAML::Mark& mark) {
        throw Refused{
            {spot_of(mark)}, "anchors and aliases are not supported", "write the value out"};
    }

    char first_character(Spot spot) const {
        const std::string_view line = source_.line(spot.line);
        return spot.byte < line.size() ? line[spot.byte] : ' ';
    }

    bool begins_with_quote(Spot spot) const {
        const char first = first_character(spot);
        return first == '"' || first == '\'';
    }

    void refuse_tag(const YAML::Mark& mark, const std::string& tag) {
        // The library calls quoted values and block text "!" as well.
        const Spot spot = spot_of(mark);
        const bool written_as_tag = first_character(spot) == '!';
        if (written_as_tag || (!tag.empty() && tag != "?" && tag != "!")) {
            throw Refused{{spot}, "tags are not supported", "leave out the word after '!'"};
        }
    }

    void refuse_block_text(const YAML::Mark& mark) {
        const char first = first_character(spot_of(mark));
        if (first == '|' || first == '>') {
            throw Refused{
                {spot_of(mark)}, "block text is not supported", "write the value on one line"};
        }
    }

    /// Bytes of a scalar on its line. One that runs on over the next lines is refused: it is how an
    /// unclosed quote swallows the keys that follow.
    std::size_t length_on_line(const Node& scalar) {
        if (scalar.quoted) {
            const std::size_t length = source_.quoted_length(scalar.spot);
            if (length == 0) {
                throw Refused{{scalar.spot},
                              "the quote opened at line " + std::to_string(scalar.spot.line + 1) +
                                  " is not closed on that line",
                              std::string{"close it with "} + first_character(scalar.spot)};
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
    Refused runs_on(Spot spot) const {
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

    void open(Node::Kind kind, const YAML::Mark& mark, const std::string& tag,
              YAML::anchor_t anchor, YAML::EmitterStyle::value style) {
        refuse_anchor(mark, anchor);
        refuse_tag(mark, tag);
        if (open_.size() >= deepest_nesting) {
            throw Refused{{spot_of(mark)},
                          "the file is nested too deeply (more than " +
                              std::to_string(deepest_nesting) + " levels)"};
        }
        open_.push_back(node(kind, mark));
        flow_.push_back(style == YAML::EmitterStyle::Flow);
        keys_.emplace_back();
    }

    void close() {
        Node done = std::move(open_.back());
        open_.pop_back();
        flow_.pop_back();
        keys_.pop_back();
        add(std::move(done));
    }

    /// A finished value goes into the innermost open list or mapping: there as a key, then its
    /// value.
    void add(Node done) {
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

    const SourceText& source_;
    Node root_;
    std::vector<Node> open_;
    std::vector<bool> flow_; ///< whether each open one was opened with a bracket
    std::vector<std::optional<Node>> keys_;
    std::size_t documents_ = 0;
    std::size_t nodes_ = 0;
};

void refuse_bytes(const SourceText& source) {
    const std::string& text = source.text();
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
        throw Refused{{}, "the file is UTF-16 or UTF-32, not UTF-8", "save it as UTF-8"};
    }
    if (text.find('\n') == std::string::npos && text.find('\r') != std::string::npos) {
        throw Refused{{},
                      "the lines end with a lone carriage return",
                      "save the file with the line ends of Unix or Windows"};
    }
    if (const auto byte = text::first_invalid_byte(text)) {
        throw Refused{
            {source.spot_of(*byte)}, "the text is not UTF-8 here", "save the file as UTF-8"};
    }
    if (const auto byte = text::first_control_character(text)) {
        throw Refused{{source.spot_of(*byte)}, "a control character stands here", "delete it"};
    }
}

void refuse_tabs(const SourceText& source) {
    for (std::size_t number = 0; number < source.line_count(); ++number) {
        const std::string_view line = source.line(number);
        const std::size_t text_at = line.find_first_not_of(" \t");
        const std::size_t tab_at = line.find('\t');
        if (text_at != std::string_view::npos && line[text_at] != '#' && tab_at < text_at) {
            throw Refused{{{number, tab_at}},
                          "line " + std::to_string(number + 1) + " is indented with a tab",
                          "use spaces"};
        }
    }
}

bool is_word(std::string_view text) {
    constexpr std::string_view letters =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-";
    return !text.empty() && text.find_first_not_of(letters) == std::string_view::npos;
}

/// The last line up to a place that reads `key:value`, with no space after the colon.
std::optional<Refused> missing_space(const SourceText& source, std::size_t last_line) {
    for (std::size_t back = 0; back <= last_line && back < 3; ++back) {
        const std::size_t number = last_line - back;
        const std::string_view line = source.line(number);
        const std::size_t start = line.find_first_not_of(' ');
        const std::size_t colon = line.find(':');
        if (start == std::string_view::npos || colon == std::string_view::npos ||
            colon + 1 >= line.size() || line[colon + 1] == ' ' ||
            !is_word(line.substr(start, colon - start))) {
            continue;
        }
        const std::string key{line.substr(start, colon - start)};
        return Refused{{{number, start}, line.size() - start, colon - start},
                       "a space is missing after '" + key + ":'",
                       "write '" + key + ": " + std::string{line.substr(colon + 1)} + "'"};
    }
    return std::nullopt;
}

/// A line up to a place on which text follows a closing quote.
std::optional<Refused> text_after_quote(const SourceText& source, std::size_t last_line) {
    for (std::size_t back = 0; back <= last_line && back < 2; ++back) {
        const std::size_t number = last_line - back;
        const std::string_view line = source.line(number);
        const std::size_t colon = line.find(": ");
        const std::size_t quote =
            colon == std::string_view::npos ? colon : line.find_first_not_of(' ', colon + 1);
        if (quote == std::string_view::npos || (line[quote] != '"' && line[quote] != '\'')) {
            continue;
        }
        const std::size_t length = source.quoted_length({number, quote});
        const std::size_t after = line.find_first_not_of(' ', quote + length);
        if (length > 0 && after != std::string_view::npos && line[after] != '#') {
            return Refused{{{number, quote}, line.size() - quote, after - quote},
                           "text follows the closing quote",
                           "put all of it between quotes, of the other kind if need be"};
        }
    }
    return std::nullopt;
}

/// The YAML library's complaint in the words of this program.
Refused translated(const SourceText& source, const YAML::ParserException& fault,
                   const Node* innermost_flow) {
    const Spot spot = spot_of(fault.mark);
    if (const auto hint = missing_space(source, std::min(spot.line, source.line_count()))) {
        return *hint;
    }
    if (const auto hint = text_after_quote(source, std::min(spot.line, source.line_count()))) {
        return *hint;
    }
    const std::string_view complaint = fault.msg;
    const auto says = [&](std::string_view words) {
        return complaint.find(words) != std::string_view::npos;
    };
    if (says("anchor") || says("alias")) {
        return {{spot}, "anchors and aliases are not supported", "write the value out"};
    }
    if (innermost_flow && says("flow")) {
        return not_closed(*innermost_flow);
    }
    constexpr std::size_t longest_key = 1024; // where the YAML library stops looking for the colon
    if (says("illegal map value") && spot.byte > longest_key) {
        return {{{spot.line, 0}}, "a name is too long", "give it a short name"};
    }
    if (says("illegal map value")) {
        return {
            {spot}, "a colon and a space stand inside this value", "put the text between quotes"};
    }
    if (says("unknown token")) {
        return {{spot}, "no value begins with this character", "put the text between quotes"};
    }
    if (says("end of map not found")) {
        return {{spot},
                "this line does not belong to the mapping above",
                "indent it like the keys beside it, and write 'key: value'"};
    }
    if (says("illegal EOF in scalar")) {
        return {{spot}, "a quote is never closed", "close it on its line"};
    }
    if (says("tab")) {
        return {{spot}, "a tab stands where spaces belong", "use spaces"};
    }
    return {{spot}, "this is not YAML: " + std::string{complaint}};
}

Node parsed(const SourceText& source) {
    std::istringstream stream{source.text()};
    TreeBuilder builder{source};
    try {
        YAML::Parser parser{stream};
        if (!parser.HandleNextDocument(builder)) {
            throw Refused{{}, "the file is empty", "copy a file of the examples and change it"};
        }
        Node root = builder.take_root();
        parser.HandleNextDocument(builder);
        return root;
    } catch (const YAML::ParserException& fault) {
        throw translated(source, fault, builder.innermost_flow_node());
    }
}

} // namespace

std::optional<Node> pass_gate(const SourceText& source, Diagnostics& diagnostics) {
    try {
        if (source.text().size() > largest_file) {
            throw Refused{{}, "the file is larger than 1 MiB; a mix file has a few kilobytes"};
        }
        refuse_bytes(source);
        refuse_tabs(source);
        return parsed(source);
    } catch (const Refused& refused) {
        Diagnostic diagnostic = source.diagnostic(refused.where, refused.message, refused.advice);
        const bool whole_file = source.text().size() > largest_file || source.line_count() == 0;
        if (whole_file) {
            diagnostic.line = 0;
            diagnostic.excerpt.clear();
        }
        diagnostics.push_back(std::move(diagnostic));
        return std::nullopt;
    }
}

} // namespace boardmark::input
