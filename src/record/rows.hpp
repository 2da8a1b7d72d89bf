#pragma once

#include <boardmark/core/strength/recorded.hpp>

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::record {

/// A row of the database with the file it came from.
template <class Row>
struct Found {
    Row row;
    std::string file;
};

/// A text of the database. Throws Failure where it is none that this program writes.
std::string text_of(const SQLite::Column& cell, std::string_view what);

/// Every row, in the order of dates, then as they were saved. Throws Failure where a value is none
/// that this program writes.
template <class Row>
std::vector<Row> all_rows(SQLite::Database& database);

/// The row of that name, if there is one.
template <class Row>
std::optional<Found<Row>> find_row(SQLite::Database& database, const std::string& name);

template <class Row>
void insert_row(SQLite::Database& database, const Row& row, std::int64_t file);

} // namespace boardmark::record
