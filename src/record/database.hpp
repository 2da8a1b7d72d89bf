#pragma once

#include <boardmark/record/record.hpp>

#include <SQLiteCpp/SQLiteCpp.h>

#include <string>

namespace boardmark::record {

/// Opens the database of a record that exists. The file itself is never changed, but for undoing a
/// write that was interrupted. Throws Failure where it is no record or damaged.
///
/// A record of an earlier form is copied into memory and brought up to date there.
SQLite::Database open_to_read(const std::string& path);

/// Opens or creates a database to write to; what is in it is not judged yet.
SQLite::Database open_to_write(const std::string& path);

/// Judges a database and brings it up to date, inside the transaction of the caller: an empty one
/// becomes a record, one of an earlier form is migrated. Throws Failure where it is something else.
void bring_up_to_date(SQLite::Database& database);

/// The version of the database's form; 0 for an empty database.
int form_of(SQLite::Database& database);

/// What the library threw, as a failure of a reading or of a writing.
Failure failed_reading(const SQLite::Exception& fault);
Failure failed_writing(const SQLite::Exception& fault);

} // namespace boardmark::record
