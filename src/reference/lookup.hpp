#pragma once

#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/basis/unit_system.hpp>

#include "embedded_table.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::reference {

/// The table of that name. Asserts that data/ has it.
const EmbeddedTable& table(std::string_view name);

/// The row of that name and group. Asserts that the table has it.
const EmbeddedRow& row(const EmbeddedTable& table, std::string_view name,
                       std::string_view group = "");

/// The row of that name in any group, or nullptr.
const EmbeddedRow* find_row(const EmbeddedTable& table, std::string_view name);

/// The cell under a named column. Asserts that the table has that column.
double cell(const EmbeddedTable& table, const EmbeddedRow& row, std::string_view column);

/// The cell under a column that not every code has; NaN where the table lacks it.
double cell_or_gap(const EmbeddedTable& table, const EmbeddedRow& row, std::string_view column);

/// The cell of a one-row constant in a system of units ("us" or "si" column).
double constant(const EmbeddedTable& table, std::string_view name, core::UnitSystem system);

/// The same with the source of its row.
core::TypicalFigure figure(const EmbeddedTable& table, std::string_view name,
                           core::UnitSystem system);

/// A text that stands beside a row; empty where there is none.
std::string_view note(const EmbeddedRow& row, std::string_view name);

/// A cell, or nothing for a gap in the print.
std::optional<double> present(double cell);

/// The parts of a list between separators; none of an empty one.
std::vector<std::string_view> split(std::string_view list, std::string_view separator);

core::Source source_of(const EmbeddedSource& source);

/// A row under an axis of nominal maximum sizes.
core::SizeRow size_row(const EmbeddedTable& table, const EmbeddedRow& row, core::UnitSystem system);

} // namespace boardmark::reference
