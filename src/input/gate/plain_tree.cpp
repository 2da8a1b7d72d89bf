#include "plain_tree.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

namespace boardmark::input {
namespace {

constexpr std::size_t deepest = 12;       // the gate refuses from 16
constexpr std::size_t most_values = 5000; // the gate refuses from 10 000
constexpr std::size_t longest_plain_line =
    1000; // the library looks 1024 characters far for a colon

bool is_letter_or_digit(char character) {
    return (character >= '0' && character <= '9') || (character >= 'a' && character <= 'z') ||
           (character >= 'A' && character <= 'Z');
}

/// Marks that mean themselves inside a word without quotes, wherever it stands.
bool is_harmless(char character) {
    constexpr std::string_view marks = " ._-/%+()=;'";
    return is_letter_or_digit(character) || marks.find(character) != std::string_view::npos;
}

/// What the library reads as no value.
bool is_null(std::string_view word) {
    return word == "null" || word == "Null" || word == "NULL";
}

/// Reads one text from its first line to its last. A function that returns false has met what is
/// not plain; nothing of the tree is used then.
class PlainReader {
public:
    explicit PlainReader(const SourceText& source)
        : source_(source) {}

    std::optional<Node> read() {
        Node root;
        next_line();
        if (at_end_ || has_lone_carriage_return() || !read_mapping(root, indent(), 1) || !at_end_) {
            return std::nullopt;
        }
        return root;
    }

private:
    std::size_t indent() const { return at_; }
    bool ends(std::size_t at) const { return at >= line_.size(); }

    /// The library ends a line there, even in a comment.
    bool has_lone_carriage_return() const {
        for (std::size_t number = 0; number < source_.line_count(); ++number) {
            if (source_.line(number).find('\r') != std::string_view::npos) {
                return true;
            }
        }
        return false;
    }

    /// Whether nothing but a comment follows on the line.
    bool only_comment_follows(std::size_t at) const {
        const std::size_t text = line_.find_first_not_of(' ', at);
        return text == std::string_view::npos ||
               (line_[text] == '#' && (text == 0 || line_[text - 1] == ' '));
    }

    void go_to(std::size_t number) {
        number_ = number;
        line_ = source_.line(number);
        at_ = std::min(line_.find_first_not_of(' '), line_.size());
    }

    /// Goes to the next line with text, or to the end.
    void next_line() {
        for (std::size_t number = begun_ ? number_ + 1 : 0; number < source_.line_count();
             ++number) {
            begun_ = true;
            go_to(number);
            if (!ends(at_) && line_[at_] != '#') {
                return;
            }
        }
        at_end_ = true;
    }

    Node node(Node::Kind kind) {
        ++values_;
        Node made;
        made.kind = kind;
        made.source = &source_;
        made.spot = {number_, at_};
        return made;
    }

    /// A word that begins here, up to what ends it: `: `, a comment, the end of the line and, in
    /// brackets, what parts values there.
    bool read_word(Node& word, bool in_brackets) {
        const char first = ends(at_) ? ' ' : line_[at_];
        const char second = ends(at_ + 1) ? ' ' : line_[at_ + 1];
        const bool digit_follows = second >= '0' && second <= '9';
        if (!is_letter_or_digit(first) &&
            !((first == '-' || first == '+' || first == '.') && digit_follows)) {
            return false;
        }
        std::size_t end = at_;
        for (; !ends(end); ++end) {
            const char character = line_[end];
            const bool ends_here =
                (character == ':' && (ends(end + 1) || line_[end + 1] == ' ')) ||
                (character == '#' && line_[end - 1] == ' ') ||
                (in_brackets && (character == ',' || character == '}' || character == ']'));
            if (ends_here) {
                break;
            }
            if (!is_harmless(character) && (in_brackets || character != ',')) {
                return false;
            }
        }
        const std::size_t last = line_.find_last_not_of(' ', end - 1);
        const std::string_view text = line_.substr(at_, last + 1 - at_);
        word = node(Node::Kind::scalar);
        word.scalar = text;
        word.length = text.size();
        at_ = end;
        return !is_null(text);
    }

    bool read_quoted(Node& quoted) {
        const std::size_t end = line_.find(line_[at_], at_ + 1);
        const std::string_view text = line_.substr(at_ + 1, end - at_ - 1);
        const bool escapes =
            text.find('\\') != std::string_view::npos || // or the quote, doubled
            (end != std::string_view::npos && !ends(end + 1) && line_[end + 1] == line_[at_]);
        const bool strange = std::ranges::any_of(text, [](char character) {
            return static_cast<unsigned char>(character) < ' ' ||
                   static_cast<unsigned char>(character) > '~';
        });
        if (end == std::string_view::npos || escapes || strange) {
            return false;
        }
        quoted = node(Node::Kind::scalar);
        quoted.scalar = text;
        quoted.quoted = true;
        quoted.length = end + 1 - at_;
        at_ = end + 1;
        return true;
    }

    /// A key and the colon behind it.
    bool read_key(Node& key, bool in_brackets) {
        return read_word(key, in_brackets) && !ends(at_) && line_[at_] == ':' &&
               line_[at_ - 1] != ' ';
    }

    /// Blanks, and in brackets the ends of lines.
    bool skip_blanks_in_brackets(std::size_t deeper_than) {
        at_ = std::min(line_.find_first_not_of(' ', at_), line_.size());
        if (!ends(at_)) {
            return true;
        }
        if (number_ + 1 >= source_.line_count()) {
            return false;
        }
        go_to(number_ + 1);
        return !ends(at_) && at_ > deeper_than && line_.size() <= longest_plain_line;
    }

    bool read_value_in_brackets(Node& value, std::size_t parent_indent, std::size_t depth) {
        const char first = line_[at_];
        if (first == '{' || first == '[') {
            return read_brackets(value, parent_indent, depth + 1);
        }
        return first == '"' || first == '\'' ? read_quoted(value) : read_word(value, true);
    }

    bool read_brackets(Node& opened, std::size_t parent_indent, std::size_t depth) {
        const bool mapping = line_[at_] == '{';
        const char closing = mapping ? '}' : ']';
        opened = node(mapping ? Node::Kind::mapping : Node::Kind::list);
        if (depth > deepest) {
            return false;
        }
        do {
            ++at_; // the bracket, or the comma
            Node key;
            Node value;
            if (!skip_blanks_in_brackets(parent_indent) ||
                (mapping && (!read_key(key, true) || !skip_blanks_after_colon())) ||
                !read_value_in_brackets(value, parent_indent, depth) ||
                !skip_blanks_in_brackets(parent_indent)) {
                return false;
            }
            if (mapping) {
                opened.entries.push_back({std::move(key), std::move(value)});
            } else {
                opened.items.push_back(std::move(value));
            }
        } while (line_[at_] == ',');
        if (line_[at_] != closing) {
            return false;
        }
        ++at_;
        return true;
    }

    /// To the value on the same line.
    bool skip_blanks_after_colon() {
        const std::size_t text = line_.find_first_not_of(' ', at_ + 1);
        if (text == std::string_view::npos || text == at_ + 1 || line_[text] == '#') {
            return false;
        }
        at_ = text;
        return true;
    }

    /// What stands behind a key on its line, or below it; leaves the line of the key's mapping that
    /// follows to be read.
    bool read_value(Node& value, std::size_t key_indent, std::size_t depth) {
        if (only_comment_follows(at_ + 1)) { // a section
            next_line();
            return !at_end_ && indent() > key_indent && read_mapping(value, indent(), depth + 1);
        }
        if (!skip_blanks_after_colon()) {
            return false;
        }
        const char first = line_[at_];
        const bool sound = first == '{' || first == '['
                               ? read_brackets(value, key_indent, depth + 1)
                           : first == '"' || first == '\'' ? read_quoted(value)
                                                           : read_word(value, false);
        if (!sound || !only_comment_follows(at_)) {
            return false;
        }
        next_line();
        return at_end_ || indent() <= key_indent; // else the value would run on
    }

    bool read_mapping(Node& mapping, std::size_t own_indent, std::size_t depth) {
        constexpr std::size_t usual_keys = 8; // of a section or a material
        mapping = node(Node::Kind::mapping);
        mapping.entries.reserve(usual_keys);
        if (depth > deepest) {
            return false;
        }
        while (!at_end_ && indent() == own_indent) {
            Node key;
            Node value;
            if (line_.size() > longest_plain_line || !read_key(key, false) ||
                !read_value(value, own_indent, depth) || values_ > most_values) {
                return false;
            }
            mapping.entries.push_back({std::move(key), std::move(value)});
        }
        return at_end_ || indent() < own_indent;
    }

    const SourceText& source_;
    std::string_view line_;
    std::size_t number_ = 0; ///< of the line
    std::size_t at_ = 0;     ///< byte of the line; after a step to another line, its indentation
    std::size_t values_ = 0;
    bool begun_ = false;
    bool at_end_ = false;
};

} // namespace

std::optional<Node> plain_tree(const SourceText& source) {
    return PlainReader{source}.read();
}

} // namespace boardmark::input
