#include <boardmark/input/csv/read_rows.hpp>
#include <boardmark/text/letter_case.hpp>

#include "../values/field_values.hpp"
#include "../values/value_reader.hpp"
#include "csv_reader.hpp"
#include "row_header.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <utility>

namespace boardmark::input {
namespace {

using core::ColumnKind;
using core::RecordedValue;

constexpr std::string_view us_units[] = {"in",  "ft",     "yd",    "psi", "lb/ft3",
                                         "pcf", "lb/yd3", "pcy",   "ft3", "yd3",
                                         "cy",  "gal",    "fl oz", "lb",  "degF"};

template <class Row>
Value value_in(const FileColumn<Row>& column) {
    const Range range{.low = column.column->least, .high = column.column->most};
    switch (column.column->kind) {
    case ColumnKind::text:
        return text();
    case ColumnKind::date:
        return date();
    case ColumnKind::number:
        break;
    }
    const Value value = column.unit ? quantity(column.unit->dimension, range) : number(range);
    const bool has_usual = column.column->usual_to > 0;
    return has_usual
               ? usually(value, {.low = column.column->usual_from, .high = column.column->usual_to})
               : value;
}

/// Reads the rows below a header.
template <class Row>
class RowReader {
public:
    RowReader(std::vector<FileColumn<Row>> columns, RowsReading& reading, std::vector<Row>& rows)
        : columns_(std::move(columns))
        , reading_(reading)
        , rows_(rows) {}

    void read(const std::vector<Node>& cells) {
        if (cells.size() != columns_.size()) {
            const Node& place = cells[std::min(cells.size(), columns_.size()) - 1];
            refuse(place, fmt::format("the row has {} cells; the header names {} columns",
                                      cells.size(), columns_.size()));
            return;
        }
        Row row;
        const Node* name = nullptr;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            read_cell(cells[i], columns_[i], row);
            const bool names_row = columns_[i].column == &core::record_columns<Row>().front();
            name = names_row ? &cells[i] : name;
        }
        remember(*name, row);
    }

private:
    void refuse(const Node& cell, std::string message, std::string advice = "") {
        reading_.diagnostics.push_back(
            cell.source->diagnostic(cell.underline(), std::move(message), std::move(advice)));
    }

    void read_cell(const Node& cell, const FileColumn<Row>& column, Row& row) {
        const std::string name{column.column->name};
        if (cell.scalar.empty()) {
            if (column.column->required) {
                refuse(cell, name + ": the cell is empty");
            }
            return;
        }
        Node written = cell;
        if (column.column->kind == ColumnKind::text && written.scalar.front() == '\'') {
            written.scalar.erase(0, 1); // it only keeps a spreadsheet from calculating
        } else if (column.unit) {
            written.scalar += " " + std::string{column.unit->spelling};
        }
        const auto parsed = read_value(written, value_in(column), {name}, "", reading_.diagnostics);
        if (!parsed) {
            return;
        }
        const bool is_number = column.column->kind == ColumnKind::number;
        column.column->set(row, is_number ? RecordedValue{std::optional{parsed->number}}
                                          : RecordedValue{written.scalar});
    }

    void remember(const Node& name, Row row) {
        const std::string text = std::get<std::string>(core::record_columns<Row>().front().of(row));
        if (text.empty()) {
            return; // told already
        }
        const auto [first, is_new] = line_of_.emplace(text, name.spot.line + 1);
        if (!is_new) {
            refuse(name, fmt::format("'{}' is in line {} as well", text, first->second),
                   "each row needs a name of its own");
        }
        reading_.places.push_back(name.source->diagnostic(name.underline(), "", ""));
        rows_.push_back(std::move(row));
    }

    std::vector<FileColumn<Row>> columns_;
    RowsReading& reading_;
    std::vector<Row>& rows_;
    std::map<std::string, std::size_t> line_of_;
};

template <class Row>
void read_table(const std::vector<Node>& header, CsvReader& csv, RowsReading& reading,
                std::vector<Row>& rows) {
    auto columns = columns_of<Row>(header, reading.diagnostics);
    if (!columns) {
        return; // nothing below a wrong header can be trusted
    }
    for (const auto& column : *columns) {
        if (column.unit && std::ranges::count(us_units, column.unit->spelling) > 0) {
            reading.system = core::UnitSystem::us;
        }
    }
    RowReader<Row> reader{std::move(*columns), reading, rows};
    while (auto cells = csv.next()) {
        reader.read(without_blanks(std::move(*cells)));
    }
}

bool names_specimens(const std::vector<Node>& header) {
    return std::ranges::any_of(header, [](const Node& cell) {
        return text::equal_but_for_case(heading_of(cell).name, "specimen");
    });
}

} // namespace

RowsReading read_rows(std::string text, std::string file) {
    RowsReading reading;
    const SourceText source{std::move(file), std::move(text)};
    CsvReader csv{source, reading.diagnostics};
    const auto header = csv.next();
    if (header && names_specimens(*header)) {
        read_table(*header, csv, reading, reading.specimens);
    } else if (header) {
        read_table(*header, csv, reading, reading.trials);
    }
    const bool holds_rows = !reading.trials.empty() || !reading.specimens.empty();
    if (!holds_rows && reading.diagnostics.empty()) {
        reading.diagnostics.push_back({.file = source.file(),
                                       .message = "the file holds no rows",
                                       .excerpt = "",
                                       .advice = "a header comes first, then a row for each trial "
                                                 "or specimen"});
    }
    reading.sound = !has_errors(reading.diagnostics);
    if (!reading.sound) {
        reading.trials.clear();
        reading.specimens.clear();
        reading.places.clear();
    }
    return reading;
}

} // namespace boardmark::input
