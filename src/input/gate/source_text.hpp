#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::input {

/// A place in a file: line from 0 and byte of the line.
struct Spot {
    std::size_t line = 0;
    std::size_t byte = 0;
};

/// What a diagnostic underlines.
struct Underline {
    Spot at;
    std::size_t bytes = 1; ///< how much is underlined
    std::size_t caret = 0; ///< byte of it that carries the caret
};

/// The text of one file with its name, as it was read.
class SourceText {
public:
    /// @param first_line  number in the file of the first line of the text, from 0
    SourceText(std::string file, std::string text, std::size_t first_line = 0);
    // Lines point into the text.
    SourceText(const SourceText&) = delete;
    SourceText& operator=(const SourceText&) = delete;

    const std::string& file() const { return file_; }
    const std::string& text() const { return text_; }
    std::size_t line_count() const { return lines_.size(); }
    /// The line of that number in the file.
    std::string_view line(std::size_t number) const;

    /// The spot of a byte of the whole text.
    Spot spot_of(std::size_t byte) const;

    /// How many bytes the value that begins at a spot takes on its line: a quoted one with its
    /// quotes (0 where the quote is not closed on the line), a plain one as long as it is.
    std::size_t quoted_length(Spot spot) const;

    Diagnostic diagnostic(Underline where, std::string message, std::string advice) const;

private:
    std::string file_;
    std::string text_;
    std::size_t first_line_;
    std::vector<std::string_view> lines_;
};

} // namespace boardmark::input
