// A file that is no sound record is named as what it is, and is left as it was.

#include "place.hpp"
#include "record/schema.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <random>

using namespace boardmark;
using namespace boardmark::test;
using record::Fault;

namespace {

void run(const std::string& path, const std::string& sql) {
    SQLite::Database{path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE}.exec(sql);
}

/// A sound record with one trial.
void make_record(const std::string& path) {
    record::add(path, addition_of({trial("T-1", "2026-03-02")}));
}

/// What a file is made of before it is opened as a record.
struct Wrong {
    std::string what;
    void (*make)(const std::string& path);
    Fault fault;
    std::string says;
    bool also_for_writing = true; ///< else it may be written to
};

} // namespace

TEST_CASE("wrong files are refused by name and left alone") {
    const auto wrong = GENERATE(
        Wrong{"a text", [](const std::string& path) { write(path, "title: Quay terrace\n"); },
              Fault::not_a_record, "not a record"},
        Wrong{"a long text", [](const std::string& path) { write(path, std::string(10000, 'x')); },
              Fault::not_a_record, "not a record"},
        Wrong{"an empty file", [](const std::string& path) { write(path, ""); },
              Fault::not_a_record, "empty", false},
        Wrong{"a directory", [](const std::string& path) { fs::create_directory(path); },
              Fault::cannot_read, "it is a directory"},
        Wrong{"another database",
              [](const std::string& path) { run(path, "CREATE TABLE trials (batch TEXT)"); },
              Fault::not_a_record, "a database, but not a record"},
        Wrong{"another program's database",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "PRAGMA application_id = 7");
              },
              Fault::not_a_record, "a database, but not a record"},
        Wrong{"a record of a later program",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "PRAGMA user_version = 99");
              },
              Fault::too_new, "form 99"},
        Wrong{"a trigger in it",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "CREATE TRIGGER t AFTER INSERT ON trials BEGIN"
                            " DELETE FROM trials; END");
              },
              Fault::not_a_record, "not a record"},
        Wrong{"a virtual table in it",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "CREATE VIRTUAL TABLE words USING fts5(word)");
              },
              Fault::not_a_record, "not a record"},
        Wrong{"a table missing",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "DROP TABLE specimens");
              },
              Fault::damaged, "damaged"},
        Wrong{"a slump of ten metres",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "UPDATE trials SET slump_mm = 10000");
              },
              Fault::damaged, "'slump' that cannot be", false},
        Wrong{"endless air",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "UPDATE trials SET air_percent = 9e999");
              },
              Fault::damaged, "'air' that cannot be", false},
        Wrong{"a name that is not UTF-8",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "UPDATE trials SET batch = CAST(x'ff41' AS TEXT)");
              },
              Fault::damaged, "'batch' that cannot be", false},
        Wrong{"a name that steers a terminal",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "UPDATE trials SET batch = CAST(x'1b5b324a' AS TEXT)");
              },
              Fault::damaged, "'batch' that cannot be", false},
        Wrong{"a date that is none",
              [](const std::string& path) {
                  make_record(path);
                  run(path, "PRAGMA ignore_check_constraints = ON;"
                            "UPDATE trials SET date = 'tomorrow'");
              },
              Fault::damaged, "damaged"});
    INFO(wrong.what);
    const Place place;
    const std::string path = place.file("quay.record");
    wrong.make(path);
    const std::string before = bytes_of(path);

    const auto reading = failure_of([&] { record::read(path); });
    CHECK(reading.fault == wrong.fault);
    CHECK_THAT(reading.reason, Catch::Contains(wrong.says));
    CHECK(bytes_of(path) == before);
    if (wrong.also_for_writing) {
        const auto add = [&] { record::add(path, addition_of({trial("T-2", "2026-03-02")})); };
        const auto writing = failure_of(add);
        CHECK_THAT(writing.reason, Catch::Contains(wrong.says));
        CHECK(bytes_of(path) == before);
    }
}

TEST_CASE("reading never makes a file") {
    const Place place;
    const std::string path = place.file("none.record");
    CHECK(failure_of([&] { record::read(path); }).fault == Fault::missing);
    CHECK_FALSE(fs::exists(path));
}

TEST_CASE("a date that no calendar has is not recorded") {
    const Place place;
    const std::string path = place.file("quay.record");
    const std::string date = GENERATE("2026-13-45", "2026-02-29", "0000-01-01");
    const auto add = [&] { record::add(path, addition_of({trial("T-2", date)})); };
    CHECK_THAT(failure_of(add).reason, Catch::Contains("'date'"));
}

TEST_CASE("an empty file becomes a record with the first rows") {
    const Place place;
    const std::string path = place.file("quay.record");
    write(path, "");
    make_record(path);
    CHECK(record::read(path).trials.size() == 1);
}

TEST_CASE("a folder that is not there is told as such") {
    const Place place;
    const auto add = [&] { make_record(place.file("none/quay.record")); };
    CHECK(failure_of(add).fault == Fault::cannot_write);
}

TEST_CASE("a page overwritten with noise is damage") {
    const Place place;
    const std::string path = place.file("quay.record");
    std::vector<core::RecordedTrial> rows;
    for (int i = 0; i < 500; ++i) {
        rows.push_back(trial("T-" + std::to_string(i), "2026-03-02"));
    }
    record::add(path, addition_of(rows));
    std::string bytes = bytes_of(path);
    const std::size_t page = 4096;
    REQUIRE(bytes.size() > 8 * page);
    const std::size_t at = GENERATE(as<std::size_t>{}, 1, 2, 3, 4, 5, 6, 7);
    INFO("page " << at);
    std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(at * page), page, '\x5a');
    write(path, bytes);
    const Fault reading = failure_of([&] { record::read(path); }).fault;
    CHECK(reading == Fault::damaged);
    const auto add = [&] { record::add(path, addition_of({trial("X", "2026-03-02")})); };
    CHECK(failure_of(add).fault == Fault::damaged);
    CHECK(bytes_of(path) == bytes);
}

TEST_CASE("cut off anywhere, a record is refused or whole, never half read") {
    const Place place;
    const std::string path = place.file("quay.record");
    make_record(path);
    const std::string bytes = bytes_of(path);
    for (std::size_t length = 1; length < bytes.size(); length += 509) {
        INFO("first " << length << " bytes");
        write(path, bytes.substr(0, length));
        try { // the end of the last page may be unused
            const auto contents = record::read(path);
            CHECK(contents.trials.size() == 1);
            CHECK(length > bytes.size() - 4096);
        } catch (const record::Failure& failure) {
            CHECK((failure.fault == Fault::damaged || failure.fault == Fault::not_a_record));
        }
    }
}

TEST_CASE("whatever bytes are changed, a record is read or refused") {
    const Place place;
    const std::string path = place.file("quay.record");
    record::add(path, addition_of({trial("T-1", "2026-03-02"), trial("T-2", "2026-03-03")},
                                  {specimen("A-1", "T-1")}));
    const std::string sound = bytes_of(path);
    std::mt19937 random{1911};
    std::size_t refused = 0;
    for (int attempt = 0; attempt < 600; ++attempt) {
        std::string bytes = sound;
        for (int change = 0; change < 1 + attempt % 6; ++change) {
            // Half of the changes where the header and the pages' own headers are.
            const std::size_t page = 4096 * (random() % (sound.size() / 4096));
            const std::size_t at = random() % 2 ? random() % sound.size() : page + random() % 110;
            bytes[at] = static_cast<char>(random());
        }
        write(path, bytes);
        try {
            record::read(path);
        } catch (const record::Failure&) {
            ++refused;
        }
    }
    CHECK(refused > 50);
}

TEST_CASE("while another program writes, an addition waits, then says so") {
    const Place place;
    const std::string path = place.file("quay.record");
    make_record(path);
    SQLite::Database other{path, SQLite::OPEN_READWRITE};
    other.exec("BEGIN IMMEDIATE");
    const auto failure =
        failure_of([&] { record::add(path, addition_of({trial("T-2", "2026-03-02")})); });
    CHECK(failure.fault == Fault::busy);
    other.exec("ROLLBACK");
    CHECK(record::read(path).trials.size() == 1);
}
