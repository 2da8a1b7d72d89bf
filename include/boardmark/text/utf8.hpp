#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace boardmark::text {

/// The byte where a text stops being UTF-8, or nothing where it is UTF-8 throughout.
std::optional<std::size_t> first_invalid_byte(std::string_view text);

/// The byte of the first control character other than tab, line feed and carriage return.
/// The text must be valid UTF-8.
std::optional<std::size_t> first_control_character(std::string_view text);

/// How many characters (code points) a text has. The text must be valid UTF-8.
std::size_t count_characters(std::string_view text);

/// How many columns a text takes on a terminal: wide characters two, combining marks none.
/// The text must be valid UTF-8.
std::size_t display_width(std::string_view text);

/// The longest beginning of a text that takes at most a width, and at least one character. The text
/// must be valid UTF-8.
std::string beginning(std::string_view text, std::size_t width);

/// The text with every character that steers a terminal (controls, bidirectional overrides, bytes
/// that are not UTF-8) written out as an escape such as `\u202E`.
std::string printable(std::string_view text);

/// The same, but line breaks and tabs stay: for a cell of a table, which keeps them.
std::string printable_lines(std::string_view text);

/// Valid JSON in which what would steer is written as an escape of JSON, such as `\u202e`: whoever
/// reads it gets the same values.
std::string printable_json(std::string_view json);

} // namespace boardmark::text
