#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {

/// The widest line of a text report.
constexpr std::size_t page_width = 100;

/// What stands before the first line and before the others.
struct Indent {
    std::string first;
    std::string other;
};

/// Breaks a text between words into lines that fit a width.
std::vector<std::string> lines_of(std::string_view text, std::size_t width);

/// A paragraph that fits the page, with its line ends.
std::string wrapped(std::string_view text, const Indent& indent);

/// Columns that a text takes on a terminal, its colours not counted.
std::size_t shown_width(const std::string& text);

/// A text filled up with spaces to a width on the terminal.
std::string padded_right(const std::string& text, std::size_t width);
std::string padded_left(const std::string& text, std::size_t width);

} // namespace boardmark::report
