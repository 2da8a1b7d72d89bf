#pragma once

#include <cstddef>
#include <optional>
#include <string>

namespace boardmark::commands {

/// The narrowest and the widest line that a terminal is given.
constexpr std::size_t narrowest_page = 60;
constexpr std::size_t widest_page = 100;

/// Columns of the terminal behind a file descriptor, from 60 to 100: those of COLUMNS, as for POSIX
/// utilities, else those of its window. Nothing where it is no terminal or has no known width.
std::optional<std::size_t> terminal_width(int descriptor);

/// A text for standard error: on a terminal no line is wider than its window.
std::string for_standard_error(const std::string& text);

} // namespace boardmark::commands
