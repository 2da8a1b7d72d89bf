// Records that earlier forms of the program wrote are read, and brought up to date when they are
// written to; nothing is lost. The statements below are what those forms were, typed once and never
// changed again.

#include "place.hpp"
#include "record/schema.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace boardmark;
using namespace boardmark::test;

namespace {

constexpr auto form_1 = R"sql(
CREATE TABLE files (id INTEGER PRIMARY KEY, name TEXT NOT NULL, kind TEXT NOT NULL,
    reporting TEXT NOT NULL CHECK (reporting IN ('us', 'si')), UNIQUE (name, kind)) STRICT;
CREATE TABLE trials (id INTEGER PRIMARY KEY, file INTEGER NOT NULL REFERENCES files (id),
    batch TEXT NOT NULL UNIQUE, date TEXT NOT NULL, mix TEXT NOT NULL, title TEXT NOT NULL,
    density_kg_m3 REAL, yield_m3 REAL, relative_yield REAL, w_cm REAL, slump_mm REAL,
    target_slump_mm REAL, air_percent REAL, target_air_percent REAL,
    gravimetric_air_percent REAL) STRICT;
CREATE TABLE specimens (id INTEGER PRIMARY KEY, file INTEGER NOT NULL REFERENCES files (id),
    specimen TEXT NOT NULL UNIQUE, batch TEXT NOT NULL, date TEXT NOT NULL, mix TEXT NOT NULL,
    age_d REAL NOT NULL, strength_mpa REAL NOT NULL, specified_strength_mpa REAL, w_cm REAL,
    shape TEXT NOT NULL) STRICT;
PRAGMA application_id = 1651339883; -- "bmrk"
PRAGMA user_version = 1;
INSERT INTO files VALUES (1, 'trial-1.yaml', 'trial', 'us'), (2, 'march.csv', 'csv', 'si');
INSERT INTO trials VALUES
    (1, 1, 'T-1', '2026-03-02', 'quay-wall.yaml', 'Quay terrace', 2292.25, 0.0424, 1.002, 0.403,
     76.2, 101.6, 6.4, 6.0, 6.1),
    (2, 2, 'T-2', '2026-03-09', 'quay-wall.yaml', '', NULL, NULL, NULL, NULL, 95, NULL, 5.5, NULL,
     NULL);
INSERT INTO specimens VALUES
    (1, 2, 'A-1', 'T-1', '2026-03-02', '', 28, 41.3, NULL, NULL, 'cylinder');
)sql";

void make_form_1(const std::string& path) {
    SQLite::Database{path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE}.exec(form_1);
}

int form_of(const std::string& path) {
    return SQLite::Database{path}.execAndGet("PRAGMA user_version").getInt();
}

void require_nothing_lost(const record::Contents& contents) {
    REQUIRE(contents.files.size() == 2);
    CHECK(contents.files[0].name == "trial-1.yaml");
    CHECK(contents.files[0].trials == 1);
    CHECK(contents.files[1].specimens == 1);
    REQUIRE(contents.trials.size() == 2);
    const auto& first = contents.trials[0];
    CHECK(first.batch == "T-1");
    CHECK(first.date == "2026-03-02");
    CHECK(first.mix == "quay-wall.yaml");
    CHECK(first.title == "Quay terrace");
    CHECK(first.density_kg_m3 == 2292.25);
    CHECK(first.yield_m3 == 0.0424);
    CHECK(first.relative_yield == 1.002);
    CHECK(first.w_cm == 0.403);
    CHECK(first.slump_mm == 76.2);
    CHECK(first.target_slump_mm == 101.6);
    CHECK(first.air_percent == 6.4);
    CHECK(first.target_air_percent == 6.0);
    CHECK(first.gravimetric_air_percent == 6.1);
    CHECK(first.temperature_c == std::nullopt);
    CHECK(first.remark.empty());
    CHECK(contents.trials[1].slump_mm == 95.0);
    CHECK(contents.trials[1].w_cm == std::nullopt);
    REQUIRE(contents.specimens.size() == 1);
    CHECK(contents.specimens[0].specimen == "A-1");
    CHECK(contents.specimens[0].age_d == 28.0);
    CHECK(contents.specimens[0].strength_mpa == 41.3);
    CHECK(contents.specimens[0].shape == "cylinder");
    CHECK(contents.specimens[0].remark.empty());
}

} // namespace

TEST_CASE("a record of form 1 is read without being changed") {
    const Place place;
    const std::string path = place.file("old.record");
    make_form_1(path);
    const std::string before = bytes_of(path);
    require_nothing_lost(record::read(path));
    CHECK(bytes_of(path) == before);
}

TEST_CASE("a record of form 1 is brought up to date by a write") {
    const Place place;
    const std::string path = place.file("old.record");
    make_form_1(path);
    CHECK(record::add(path, addition_of({trial("T-3", "2026-03-16")})).saved == 1);
    CHECK(form_of(path) == record::newest_form());
    auto contents = record::read(path);
    REQUIRE(contents.trials.size() == 3);
    CHECK(contents.trials.back().temperature_c == 20.0);
    CHECK(contents.trials.back().remark == "pumped");
    contents.trials.pop_back();
    contents.files[1].trials -= 1; // T-3 came from a file of that name as well
    require_nothing_lost(contents);
}

TEST_CASE("a migration that cannot end leaves the record as it was") {
    const Place place;
    const std::string path = place.file("old.record");
    make_form_1(path);
    // A column that form 2 wants to add stands there already, in the second of the tables.
    SQLite::Database{path, SQLite::OPEN_READWRITE}.exec(
        "ALTER TABLE specimens ADD COLUMN remark TEXT");
    const std::string before = bytes_of(path);
    const auto add = [&] { record::add(path, addition_of({trial("T-3", "2026-03-16")})); };
    CHECK(failure_of(add).fault == record::Fault::damaged);
    CHECK(bytes_of(path) == before);
}

TEST_CASE("a conflict leaves a record of form 1 at form 1") {
    const Place place;
    const std::string path = place.file("old.record");
    make_form_1(path);
    const std::string before = bytes_of(path);
    CHECK_FALSE(record::add(path, addition_of({trial("T-2", "2026-03-09")})).conflicts.empty());
    CHECK(bytes_of(path) == before);
}

TEST_CASE("the newest form is what the columns name") {
    const Place place;
    const std::string path = place.file("quay.record");
    record::add(path, addition_of({trial("T-1", "2026-03-02")}));
    SQLite::Database database{path};
    for (const auto& column : core::record_columns<core::RecordedTrial>()) {
        CHECK(SQLite::Statement{database, "SELECT " + std::string{column.key} + " FROM trials"}
                  .executeStep());
    }
    CHECK(form_of(path) == static_cast<int>(record::migrations().size()));
}
