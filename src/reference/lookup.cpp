#include "lookup.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace boardmark::reference {

const EmbeddedTable& table(std::string_view name) {
    const auto tables = embedded_tables();
    const auto found = std::ranges::lower_bound(tables, name, {}, &EmbeddedTable::name);
    assert(found != tables.end() && found->name == name);
    return *found;
}

const EmbeddedRow& row(const EmbeddedTable& table, std::string_view name, std::string_view group) {
    const auto found = std::ranges::find_if(table.rows, [&](const EmbeddedRow& candidate) {
        return candidate.name == name && candidate.group == group;
    });
    assert(found != table.rows.end());
    return *found;
}

const EmbeddedRow* find_row(const EmbeddedTable& table, std::string_view name) {
    const auto found = std::ranges::find(table.rows, name, &EmbeddedRow::name);
    return found == table.rows.end() ? nullptr : &*found;
}

double cell(const EmbeddedTable& table, const EmbeddedRow& row, std::string_view column) {
    const auto found = std::ranges::find(table.columns, column, &EmbeddedColumn::name);
    assert(found != table.columns.end());
    return row.cells[static_cast<std::size_t>(found - table.columns.begin())];
}

double cell_or_gap(const EmbeddedTable& table, const EmbeddedRow& row, std::string_view column) {
    const auto found = std::ranges::find(table.columns, column, &EmbeddedColumn::name);
    return found == table.columns.end()
               ? std::numeric_limits<double>::quiet_NaN()
               : row.cells[static_cast<std::size_t>(found - table.columns.begin())];
}

double constant(const EmbeddedTable& table, std::string_view name, core::UnitSystem system) {
    return cell(table, row(table, name), system == core::UnitSystem::us ? "us" : "si");
}

core::TypicalFigure figure(const EmbeddedTable& table, std::string_view name,
                           core::UnitSystem system) {
    return {constant(table, name, system), source_of(row(table, name).source)};
}

std::string_view note(const EmbeddedRow& row, std::string_view name) {
    const auto found = std::ranges::find(row.notes, name, &EmbeddedNote::name);
    return found == row.notes.end() ? "" : found->text;
}

std::optional<double> present(double cell) {
    return std::isnan(cell) ? std::nullopt : std::optional{cell};
}

std::vector<std::string_view> split(std::string_view list, std::string_view separator) {
    std::vector<std::string_view> parts;
    for (std::size_t at = 0; at < list.size();) {
        const std::size_t end = std::min(list.find(separator, at), list.size());
        parts.push_back(list.substr(at, end - at));
        at = end + separator.size();
    }
    return parts;
}

core::Source source_of(const EmbeddedSource& source) {
    return {std::string{source.citation}, source.confidence};
}

core::SizeRow size_row(const EmbeddedTable& table, const EmbeddedRow& row,
                       core::UnitSystem system) {
    core::SizeRow result{.source = source_of(row.source), .sizes_mm = {}, .values = {}};
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const EmbeddedColumn& column = table.columns[i];
        result.sizes_mm.push_back(system == core::UnitSystem::us ? column.at_us : column.at_si);
        result.values.push_back(row.cells[i]);
    }
    return result;
}

} // namespace boardmark::reference
