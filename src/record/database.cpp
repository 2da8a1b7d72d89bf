#include "database.hpp"

#include "schema.hpp"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include <filesystem>
#include <utility>

namespace boardmark::record {
namespace {

namespace fs = std::filesystem;

constexpr int patience_ms = 5000; // for another program to finish its write

/// The path from the root: the library gives names such as ":memory:" and "file:" a meaning.
std::string plain(const std::string& path) {
    return fs::absolute(path).string();
}

/// The file may come from anywhere: nothing in it may run or steer the library.
void distrust(SQLite::Database& database) {
    sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    database.exec("PRAGMA trusted_schema = OFF");
    database.exec("PRAGMA cell_size_check = ON");
}

int number_of(SQLite::Database& database, const char* question) {
    return database.execAndGet(question).getInt();
}

bool is_empty(SQLite::Database& database) {
    return number_of(database, "SELECT count(*) FROM sqlite_schema") == 0 &&
           number_of(database, "PRAGMA application_id") == 0 && form_of(database) == 0;
}

/// Throws where a database that is not empty is no sound record of this program.
void demand_a_record(SQLite::Database& database) {
    const int own = number_of(database, "PRAGMA application_id");
    const int strange = number_of(database, "SELECT count(*) FROM sqlite_schema"
                                            " WHERE type IN ('trigger', 'view')"
                                            " OR sql LIKE 'CREATE VIRTUAL%'");
    const int tables = number_of(database, "SELECT count(*) FROM sqlite_schema WHERE type = 'table'"
                                           " AND name IN ('files', 'trials', 'specimens')");
    if (own != application_id || form_of(database) < 1 || strange > 0) {
        throw Failure{Fault::not_a_record, "it is a database, but not a record"};
    }
    if (form_of(database) > newest_form()) {
        throw Failure{Fault::too_new, "a later version of this program wrote it (form " +
                                          std::to_string(form_of(database)) +
                                          "; this one knows forms up to " +
                                          std::to_string(newest_form()) + ")"};
    }
    if (tables != 3) {
        throw Failure{Fault::damaged, "it is damaged (a table is missing); go back to a copy"};
    }
    const std::string verdict = database.execAndGet("PRAGMA quick_check(1)").getString();
    if (verdict != "ok") {
        throw Failure{Fault::damaged, "it is damaged (" + verdict + "); go back to a copy"};
    }
}

/// Runs what leads from the database's form to the newest. The caller has a transaction.
void migrate(SQLite::Database& database) {
    const auto steps = migrations();
    for (auto form = static_cast<std::size_t>(form_of(database)); form < steps.size(); ++form) {
        database.exec(std::string{steps[form]});
    }
    database.exec("PRAGMA application_id = " + std::to_string(application_id));
    database.exec("PRAGMA user_version = " + std::to_string(newest_form()));
}

/// The same contents in the newest form, in memory: a reading changes no file.
SQLite::Database up_to_date_copy(SQLite::Database& original) {
    SQLite::Database copy{":memory:", SQLite::OPEN_READWRITE};
    SQLite::Backup{copy, original}.executeStep();
    SQLite::Transaction transaction{copy};
    migrate(copy);
    transaction.commit();
    return copy;
}

void demand_regular_file(const std::string& path, Fault fault) {
    std::error_code ignored;
    const fs::file_status status = fs::status(path, ignored);
    if (fs::is_directory(status)) {
        throw Failure{fault, "it is a directory"};
    }
    if (fs::exists(status) && !fs::is_regular_file(status)) {
        throw Failure{fault, "it is not a regular file"};
    }
}

} // namespace

int newest_form() {
    return static_cast<int>(migrations().size());
}

int form_of(SQLite::Database& database) {
    return number_of(database, "PRAGMA user_version");
}

SQLite::Database open_to_read(const std::string& path) {
    demand_regular_file(path, Fault::cannot_read);
    if (!fs::exists(path)) {
        throw Failure{Fault::missing, "there is no such file"};
    }
    // Open for writing, which falls back to reading: undoing an interrupted write needs it.
    SQLite::Database database{plain(path), SQLite::OPEN_READWRITE, patience_ms};
    distrust(database);
    if (is_empty(database)) {
        throw Failure{Fault::not_a_record, "it is empty; nothing was ever saved in it"};
    }
    demand_a_record(database);
    return form_of(database) < newest_form() ? up_to_date_copy(database) : std::move(database);
}

SQLite::Database open_to_write(const std::string& path) {
    demand_regular_file(path, Fault::cannot_write);
    SQLite::Database database{plain(path), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE,
                              patience_ms};
    distrust(database);
    // A rollback journal, not a write-ahead log: between writes the record is one file, whole by
    // itself, that can be copied, sent and put away. EXTRA also makes the journal's removal
    // durable, which is the moment of saving: a loss of power after it undoes nothing.
    database.exec("PRAGMA journal_mode = DELETE");
    database.exec("PRAGMA synchronous = EXTRA");
    database.exec("PRAGMA foreign_keys = ON");
    return database;
}

void bring_up_to_date(SQLite::Database& database) {
    if (!is_empty(database)) {
        demand_a_record(database);
    }
    if (form_of(database) < newest_form()) {
        migrate(database);
    }
}

} // namespace boardmark::record
