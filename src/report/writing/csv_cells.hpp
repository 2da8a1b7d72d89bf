#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {

/// A text cell: what a spreadsheet would run as a formula is made plain text; quoted by RFC 4180.
std::string csv_cell(std::string text);

/// A number, or an empty cell.
std::string csv_cell(std::optional<double> value);

/// A value of the inside unit of a dimension in another unit of it, or an empty cell.
std::string csv_cell_in(std::optional<double> inside, std::string_view unit);

/// What a reader of the rows alone must know, on every row.
std::string remark(const core::Proportions& proportions, const std::vector<core::Check>& checks);

/// A row with its line end. The cells are written as they are.
std::string csv_row(const std::vector<std::string>& cells);

} // namespace boardmark::report
