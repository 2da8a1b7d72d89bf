#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include "../gate/node.hpp"

#include <optional>
#include <vector>

namespace boardmark::input {

/// The cells of one line of a CSV file, each a scalar with its place. Throws Refused.
std::vector<Node> cells_of(const SourceText& source, std::size_t number);

/// The cells without the blanks around them, which a typist leaves and nobody sees; one that holds
/// nothing else is empty. What stands in quotes stays as it is.
std::vector<Node> without_blanks(std::vector<Node> row);

/// Reads a CSV file (RFC 4180, UTF-8) row by row. A row stands on one line; blank lines are passed
/// over. Every cell is a scalar with its place; blanks around it belong to it.
class CsvReader {
public:
    /// Looks at the file as a whole: one that is too large or no text has no rows, and a diagnostic
    /// tells why.
    CsvReader(const SourceText& source, Diagnostics& diagnostics);

    /// The next row that can be read; of those that cannot, diagnostics tell why. Nothing at the
    /// end of the file.
    std::optional<std::vector<Node>> next();

private:
    const SourceText& source_;
    Diagnostics& diagnostics_;
    std::size_t line_ = 0; ///< from 0
};

} // namespace boardmark::input
