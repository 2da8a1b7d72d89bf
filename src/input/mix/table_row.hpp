#pragma once

#include <boardmark/input/mix/mix_table.hpp>

#include "../gate/source_text.hpp"
#include "table_columns.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace boardmark::input {

/// A line as it stands between its ends.
std::string without_line_end(std::string line);

/// The cells of a line. Throws Refused.
std::vector<Node> cells_of_row(const SourceText& line, std::size_t number);

/// What the cells of a row write, as it would stand in the file, by column; nothing where a cell is
/// empty or wrong. Nothing at all where the row cannot be told apart into its columns.
std::optional<std::vector<std::optional<Node>>> values_of_row(const SourceText& line,
                                                              std::size_t number,
                                                              std::span<const TableColumn> columns,
                                                              Diagnostics& told);

/// Writes a value below a section at the place that the names lead to.
void write_value(Node& section, std::span<const std::string> names, Node value);

} // namespace boardmark::input
