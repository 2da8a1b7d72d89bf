#include "rows.hpp"

#include <boardmark/record/record.hpp>
#include <boardmark/text/utf8.hpp>

namespace boardmark::record {
namespace {

using core::ColumnKind;
using core::RecordColumn;
using core::RecordedSpecimen;
using core::RecordedTrial;
using core::RecordedValue;

template <class Row>
std::string table_of();
template <>
std::string table_of<RecordedTrial>() {
    return "trials";
}
template <>
std::string table_of<RecordedSpecimen>() {
    return "specimens";
}

/// "batch, date, …": names of columns only, never a text from a file.
template <class Row>
std::string column_list() {
    std::string list;
    for (const auto& column : core::record_columns<Row>()) {
        list += (list.empty() ? "" : ", ") + std::string{column.key};
    }
    return list;
}

bool sound(const std::string& text) {
    return !text::first_invalid_byte(text) && !text::first_control_character(text) &&
           text.find_first_of("\r\n") == std::string::npos;
}

[[noreturn]] void refuse(std::string_view what) {
    throw Failure{Fault::damaged, "it holds a value of '" + std::string{what} +
                                      "' that cannot be; go back to a copy"};
}

template <class Row>
RecordedValue value_of(const SQLite::Column& cell, const RecordColumn<Row>& column) {
    RecordedValue value;
    if (column.kind == ColumnKind::number) {
        value = cell.isNull() ? std::nullopt : std::optional{cell.getDouble()};
    } else {
        value = text_of(cell, column.name);
    }
    if (!core::fits(column, value)) {
        refuse(column.name);
    }
    return value;
}

/// The row under a statement whose first columns are those of the row.
template <class Row>
Row row_of(SQLite::Statement& statement) {
    Row row;
    int index = 0;
    for (const auto& column : core::record_columns<Row>()) {
        column.set(row, value_of(statement.getColumn(index++), column));
    }
    return row;
}

void bind(SQLite::Statement& statement, int index, const RecordedValue& value) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        statement.bind(index, *text);
    } else if (const auto number = std::get<std::optional<double>>(value)) {
        statement.bind(index, *number);
    } else {
        statement.bind(index); // null
    }
}

} // namespace

std::string text_of(const SQLite::Column& cell, std::string_view what) {
    std::string text = cell.getString();
    if (!sound(text)) {
        refuse(what);
    }
    return text;
}

template <class Row>
std::vector<Row> all_rows(SQLite::Database& database) {
    SQLite::Statement select{database, "SELECT " + column_list<Row>() + " FROM " + table_of<Row>() +
                                           " ORDER BY date, id"};
    std::vector<Row> rows;
    while (select.executeStep()) {
        rows.push_back(row_of<Row>(select));
    }
    return rows;
}

template <class Row>
std::optional<Found<Row>> find_row(SQLite::Database& database, const std::string& name) {
    const auto columns = core::record_columns<Row>();
    SQLite::Statement select{database, "SELECT " + column_list<Row>() +
                                           ", (SELECT name FROM files WHERE files.id = " +
                                           table_of<Row>() + ".file) FROM " + table_of<Row>() +
                                           " WHERE " + std::string{columns.front().key} + " = ?"};
    select.bind(1, name);
    if (!select.executeStep()) {
        return std::nullopt;
    }
    return Found<Row>{row_of<Row>(select),
                      text_of(select.getColumn(static_cast<int>(columns.size())), "file")};
}

template <class Row>
void insert_row(SQLite::Database& database, const Row& row, std::int64_t file) {
    const auto columns = core::record_columns<Row>();
    std::string places = "?";
    for (std::size_t i = 0; i < columns.size(); ++i) {
        places += ", ?";
    }
    SQLite::Statement insert{database, "INSERT INTO " + table_of<Row>() + " (file, " +
                                           column_list<Row>() + ") VALUES (" + places + ")"};
    insert.bind(1, file);
    int index = 2;
    for (const auto& column : columns) {
        bind(insert, index++, column.of(row));
    }
    insert.exec();
}

template std::vector<RecordedTrial> all_rows(SQLite::Database&);
template std::vector<RecordedSpecimen> all_rows(SQLite::Database&);
template std::optional<Found<RecordedTrial>> find_row(SQLite::Database&, const std::string&);
template std::optional<Found<RecordedSpecimen>> find_row(SQLite::Database&, const std::string&);
template void insert_row(SQLite::Database&, const RecordedTrial&, std::int64_t);
template void insert_row(SQLite::Database&, const RecordedSpecimen&, std::int64_t);

} // namespace boardmark::record
