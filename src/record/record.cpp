#include <boardmark/record/record.hpp>
#include <boardmark/units/date.hpp>

#include "database.hpp"
#include "new_record.hpp"
#include "rows.hpp"

#include <filesystem>
#include <type_traits>

namespace boardmark::record {
namespace {

std::string word_of(core::UnitSystem system) {
    return system == core::UnitSystem::us ? "us" : "si";
}

std::vector<core::RecordedFile> all_files(SQLite::Database& database) {
    SQLite::Statement select{database,
                             "SELECT name, kind, reporting,"
                             " (SELECT count(*) FROM trials WHERE trials.file = files.id),"
                             " (SELECT count(*) FROM specimens WHERE specimens.file = files.id)"
                             " FROM files ORDER BY id"};
    std::vector<core::RecordedFile> files;
    while (select.executeStep()) {
        files.push_back({.name = text_of(select.getColumn(0), "file"),
                         .kind = text_of(select.getColumn(1), "kind"),
                         .reporting = select.getColumn(2).getString() == "us"
                                          ? core::UnitSystem::us
                                          : core::UnitSystem::si,
                         .trials = static_cast<std::size_t>(select.getColumn(3).getInt64()),
                         .specimens = static_cast<std::size_t>(select.getColumn(4).getInt64())});
    }
    return files;
}

/// One addition under way, inside its transaction.
class Saving {
public:
    Saving(SQLite::Database& database, const Addition& addition)
        : database_(database)
        , addition_(addition) {}

    template <class Row>
    void save(const std::vector<Row>& rows) {
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const auto& name_column = core::record_columns<Row>().front();
            const auto name = std::get<std::string>(name_column.of(rows[i]));
            if (const auto found = find_row<Row>(database_, name)) {
                compare(*found, rows[i], i);
            } else {
                insert_row(database_, rows[i], file_id());
                ++outcome_.saved;
            }
        }
    }

    const Outcome& outcome() const { return outcome_; }

private:
    template <class Row>
    void compare(const Found<Row>& found, const Row& given, std::size_t row) {
        bool equal = true;
        for (const auto& column : core::record_columns<Row>()) {
            if (!core::same(column.of(found.row), column.of(given))) {
                equal = false;
                outcome_.conflicts.push_back({.in_trials = std::is_same_v<Row, core::RecordedTrial>,
                                              .row = row,
                                              .column = std::string{column.key},
                                              .recorded = column.of(found.row),
                                              .given = column.of(given),
                                              .recorded_from = found.file});
            }
        }
        outcome_.already_there += equal ? 1 : 0;
    }

    /// The number of the file in the record, where it is entered with its first new row.
    std::int64_t file_id() {
        if (!file_id_) {
            SQLite::Statement insert{database_, "INSERT INTO files (name, kind, reporting)"
                                                " VALUES (?, ?, ?) ON CONFLICT DO NOTHING"};
            insert.bind(1, addition_.file);
            insert.bind(2, addition_.kind);
            insert.bind(3, word_of(addition_.reporting));
            insert.exec();
            SQLite::Statement select{database_, "SELECT id FROM files WHERE name = ? AND kind = ?"};
            select.bind(1, addition_.file);
            select.bind(2, addition_.kind);
            select.executeStep();
            file_id_ = select.getColumn(0).getInt64();
        }
        return *file_id_;
    }

    SQLite::Database& database_;
    const Addition& addition_;
    std::optional<std::int64_t> file_id_;
    Outcome outcome_;
};

/// Whether a date is none of the calendar, as 2026-13-45; an empty one is left to `fits`.
bool is_no_day(core::ColumnKind kind, const core::RecordedValue& value) {
    const auto* text = std::get_if<std::string>(&value);
    return kind == core::ColumnKind::date && text && !text->empty() && !units::read_date(*text);
}

/// The reader lets no other value through; a program's own rows need not have been read.
template <class Row>
void demand_fit(const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        for (const auto& column : core::record_columns<Row>()) {
            const core::RecordedValue value = column.of(row);
            if (!core::fits(column, value) || is_no_day(column.kind, value)) {
                throw Failure{Fault::cannot_write, "a value of '" + std::string{column.key} +
                                                       "' is none that a record holds"};
            }
        }
    }
}

Outcome add_to(const std::string& path, const Addition& addition) {
    SQLite::Database database = open_to_write(path);
    SQLite::Transaction transaction{database, SQLite::TransactionBehavior::IMMEDIATE};
    bring_up_to_date(database);
    Saving saving{database, addition};
    saving.save(addition.trials);
    saving.save(addition.specimens);
    if (saving.outcome().conflicts.empty()) {
        transaction.commit();
    }
    return saving.outcome();
}

} // namespace

Contents read(const std::string& path) {
    try {
        SQLite::Database database = open_to_read(path);
        const SQLite::Transaction one_moment{database};
        return {.files = all_files(database),
                .trials = all_rows<core::RecordedTrial>(database),
                .specimens = all_rows<core::RecordedSpecimen>(database)};
    } catch (const SQLite::Exception& fault) {
        throw failed_reading(fault);
    }
}

Outcome add(const std::string& path, const Addition& addition) {
    demand_fit(addition.trials);
    demand_fit(addition.specimens);
    try {
        if (!std::filesystem::exists(path)) {
            NewRecord made{path};
            Outcome outcome = add_to(made.path(), addition);
            if (!outcome.conflicts.empty() || made.place()) {
                return outcome;
            }
        }
        return add_to(path, addition);
    } catch (const SQLite::Exception& fault) {
        throw failed_writing(fault);
    }
}

} // namespace boardmark::record
