#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::text {

/// What stands before the first line and before the others.
struct Indent {
    std::string first;
    std::string other;
};

/// Breaks a text between words into lines that fit a width; a word that is wider is broken. The
/// text must be valid UTF-8.
std::vector<std::string> lines_of(std::string_view text, std::size_t width);

/// A paragraph that fits a width, with its line ends.
std::string wrapped(std::string_view text, const Indent& indent, std::size_t width);

/// A text of several lines with those that are wider than a width broken: under their last column
/// where they have columns, which two blanks part, else with an indent. The last line gets its end.
std::string fitted(std::string_view text, std::size_t width);

/// Columns that a text takes on a terminal, its colours not counted.
std::size_t shown_width(const std::string& text);

/// A text filled up with spaces to a width on the terminal.
std::string padded_right(const std::string& text, std::size_t width);
std::string padded_left(const std::string& text, std::size_t width);

} // namespace boardmark::text
