#include "wrap.hpp"

#include <boardmark/text/utf8.hpp>

#include <algorithm>

namespace boardmark::report {
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

std::string fill(const std::string& text, std::size_t width) {
    const std::size_t taken = shown_width(text);
    return std::string(taken < width ? width - taken : 0, ' ');
}

} // namespace

std::size_t shown_width(const std::string& text) {
    const bool is_coloured = text.find('\x1b') != std::string::npos;
    return text::display_width(is_coloured ? without_colours(text) : text);
}

std::vector<std::string> lines_of(std::string_view text, std::size_t width) {
    std::vector<std::string> lines{""};
    std::size_t taken = 0; // columns of the last line
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        std::string word{text.substr(at, end - at)};
        at = end + 1;
        if (word.empty()) {
            continue;
        }
        std::size_t wide = text::display_width(word);
        if (taken > 0 && taken + 1 + wide > width) {
            lines.emplace_back();
            taken = 0;
        }
        while (wide > width) { // a word wider than the page is broken
            const std::string part = text::beginning(word, width);
            word.erase(0, part.size());
            lines.back() = part;
            lines.emplace_back();
            taken = 0;
            wide = text::display_width(word);
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

std::string wrapped(std::string_view text, const Indent& indent) {
    std::string result;
    for (const std::string& line : lines_of(text, page_width - text::display_width(indent.other))) {
        result += (result.empty() ? indent.first : indent.other) + line + "\n";
    }
    return result;
}

std::string padded_right(const std::string& text, std::size_t width) {
    return text + fill(text, width);
}

std::string padded_left(const std::string& text, std::size_t width) {
    return fill(text, width) + text;
}

} // namespace boardmark::report
