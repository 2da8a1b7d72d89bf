#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::input {

enum class Severity { error, warning };

/// Something wrong at a place of a file, and what to write instead.
struct Diagnostic {
    std::string file;
    std::size_t line = 0;   ///< from 1; 0 where it concerns the file as a whole
    std::size_t column = 0; ///< from 1, in characters
    Severity severity = Severity::error;
    std::string message;
    std::string excerpt;        ///< the line as it stands in the file
    std::size_t underlined = 1; ///< how many characters are underlined from the column on
    std::size_t caret = 0;      ///< which of them carries the caret
    std::string advice;         ///< may be empty
};

/// All that was found in one run, in file order.
using Diagnostics = std::vector<Diagnostic>;

bool has_errors(const Diagnostics& diagnostics);

/// The diagnostics as text for a terminal: each with its line and a caret, at most 20 of them, then
/// a sentence that counts the errors, names their files and ends with what follows from them. Text
/// from a file is made harmless. With a width, at least 60, no line is wider; without one each
/// message is one line, as programs expect it.
std::string render(const Diagnostics& diagnostics,
                   std::string_view consequence = "nothing was calculated",
                   std::optional<std::size_t> width = std::nullopt);

/// One of them, without such a sentence.
std::string render_one(const Diagnostic& diagnostic,
                       std::optional<std::size_t> width = std::nullopt);

} // namespace boardmark::input
