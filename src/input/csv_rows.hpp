#pragma once

#include <boardmark/input/diagnostic.hpp>

#include "node.hpp"

#include <optional>
#include <vector>

namespace boardmark::input {

/// A row of cells, each a scalar with its place. Spaces around a cell are dropped.
using CsvRow = std::vector<Node>;

/// The rows of a CSV file (RFC 4180), empty lines left out. A cell ends on its line. Nothing where
/// a quote is not closed or the text is not plain UTF-8; then a diagnostic tells where.
std::optional<std::vector<CsvRow>> read_csv(const SourceText& source, Diagnostics& diagnostics);

} // namespace boardmark::input
