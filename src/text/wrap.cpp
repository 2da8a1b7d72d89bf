#include <boardmark/text/utf8.hpp>
#include <boardmark/text/wrap.hpp>

#include <algorithm>
#include <optional>

namespace boardmark::text {
namespace {

/// The text without the escape sequences of colours, which take no room.
std::string without_colours(const std::string& text) {
    std::string plain;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '\x1b') {
            at = std::min(text.find('m', at), text.size());
        } else {
            plain += text[at];
        }
    }
    return plain;
}

/// Words with one blank between them and none around, that fit: they stand as they are.
bool is_one_line(std::string_view text, std::size_t width) {
    return !text.empty() && text.front() != ' ' && text.back() != ' ' &&
           text.find("  ") == text.npos && display_width(text) <= width;
}

std::string fill(const std::string& text, std::size_t width) {
    const std::size_t taken = shown_width(text);
    return std::string(taken < width ? width - taken : 0, ' ');
}

/// Where a line's last column begins: behind two blanks that stand after a word. Nothing where
/// there is none that leaves room for words.
std::optional<std::size_t> last_column(std::string_view line, std::size_t width) {
    constexpr std::size_t least_room = 24;
    const std::size_t word = line.find_first_not_of(' ');
    const std::size_t gap = line.find("  ", std::min(word, line.size()));
    const std::size_t column = line.find_first_not_of(' ', gap);
    const bool fits = gap != line.npos && column != line.npos &&
                      display_width(line.substr(0, column)) + least_room <= width;
    return fits ? std::optional{column} : std::nullopt;
}

/// Lines of a text of which the first has some columns taken.
std::vector<std::string> lines_behind(std::size_t head, std::string_view text, std::size_t width) {
    const std::size_t first_width = width - std::min(head, width - 1);
    if (is_one_line(text, first_width)) {
        return {std::string{text}};
    }
    std::vector<std::string> lines{""};
    std::size_t taken = 0; // columns of the last line
    std::size_t at = 0;
    const auto room = [&] { return lines.size() == 1 ? first_width : width; };
    while (at < text.size()) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        std::string_view word = text.substr(at, end - at);
        at = end + 1;
        if (word.empty()) {
            continue;
        }
        std::size_t wide = display_width(word);
        if (taken > 0 && taken + 1 + wide > room()) {
            lines.emplace_back();
            taken = 0;
        }
        while (wide > room()) { // a word wider than the page is broken
            lines.back() = beginning(word, room());
            word.remove_prefix(lines.back().size());
            lines.emplace_back();
            taken = 0;
            wide = display_width(word);
        }
        if (!lines.back().empty()) {
            lines.back() += ' ';
            ++taken;
        }
        lines.back() += word;
        taken += wide;
    }
    return lines;
}

std::string fitted_line(std::string_view line, std::size_t width) {
    if (shown_width(std::string{line}) <= width) {
        return std::string{line} + "\n";
    }
    const std::size_t word = std::min(line.find_first_not_of(' '), line.size());
    const auto column = last_column(line, width);
    const std::size_t begins = column.value_or(word);
    constexpr std::size_t hanging = 4;
    const std::string head{line.substr(0, begins)};
    const std::size_t taken = display_width(head);
    return wrapped(line.substr(begins), {head, std::string(column ? taken : taken + hanging, ' ')},
                   width);
}

} // namespace

std::size_t shown_width(const std::string& text) {
    const bool is_coloured = text.find('\x1b') != std::string::npos;
    return display_width(is_coloured ? without_colours(text) : text);
}

std::vector<std::string> lines_of(std::string_view text, std::size_t width) {
    return lines_behind(0, text, width);
}

std::string wrapped(std::string_view text, const Indent& indent, std::size_t width) {
    const std::size_t others = display_width(indent.other);
    const std::size_t first = shown_width(indent.first);
    std::string result;
    for (const std::string& line :
         lines_behind(first - std::min(first, others), text, width - others)) {
        result += (result.empty() ? indent.first : indent.other) + line + "\n";
    }
    return result;
}

std::string fitted(std::string_view text, std::size_t width) {
    std::string result;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        result += fitted_line(text.substr(0, end), width);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return result;
}

std::string padded_right(const std::string& text, std::size_t width) {
    return text + fill(text, width);
}

std::string padded_left(const std::string& text, std::size_t width) {
    return fill(text, width) + text;
}

} // namespace boardmark::text
