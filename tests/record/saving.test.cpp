// What is saved is there, to the bit; what conflicts is not saved, nor anything beside it.

#include "place.hpp"

#include <limits>

using namespace boardmark;
using namespace boardmark::test;

CATCH_TRANSLATE_EXCEPTION(const record::Failure& failure) {
    return failure.reason;
}

namespace {

template <class Row>
void require_equal(const Row& left, const Row& right) {
    for (const auto& column : core::record_columns<Row>()) {
        INFO(column.key);
        CHECK(column.of(left) == column.of(right));
    }
}

} // namespace

TEST_CASE("a saved row comes back as it was") {
    const Place place;
    const std::string path = place.file("quay.record");
    auto odd = trial("T-1", "2026-03-02");
    odd.title = "\xC3\x9C"
                "bergang; 'wall' --\t\"x\", DROP TABLE trials";
    odd.slump_mm = 0.1 + 0.2;
    odd.w_cm = std::nullopt;
    odd.gravimetric_air_percent = -std::numeric_limits<double>::denorm_min();
    const auto cylinder = specimen("A-1", "T-1");

    const auto outcome = record::add(path, addition_of({odd}, {cylinder}));
    CHECK(outcome.saved == 2);
    CHECK(outcome.already_there == 0);

    const auto contents = record::read(path);
    REQUIRE(contents.trials.size() == 1);
    REQUIRE(contents.specimens.size() == 1);
    require_equal(contents.trials.front(), odd);
    require_equal(contents.specimens.front(), cylinder);
    REQUIRE(contents.files.size() == 1);
    CHECK(contents.files.front().name == "march.csv");
    CHECK(contents.files.front().kind == "csv");
    CHECK(contents.files.front().reporting == core::UnitSystem::us);
    CHECK(contents.files.front().trials == 1);
    CHECK(contents.files.front().specimens == 1);
}

TEST_CASE("a value that no record holds is refused, and nothing is saved") {
    const Place place;
    const std::string path = place.file("quay.record");
    auto none = trial("T-1", "2026-03-02");
    none.density_kg_m3 = std::numeric_limits<double>::quiet_NaN();
    auto negative = trial("T-1", "2026-03-02");
    negative.slump_mm = -50;
    auto undated = trial("T-1", "");
    for (const auto& row : {none, negative, undated}) {
        CHECK_THROWS_AS(record::add(path, addition_of({trial("T-0", "2026-03-01"), row})),
                        record::Failure);
        CHECK_THROWS_AS(record::read(path), record::Failure); // there is none
    }
}

TEST_CASE("rows come back by date, those of one day as they were saved") {
    const Place place;
    const std::string path = place.file("quay.record");
    record::add(path, addition_of({trial("T-3", "2026-03-09"), trial("T-2", "2026-03-02")}));
    record::add(path, addition_of({trial("T-1", "2026-03-02"), trial("T-0", "2025-12-31")}));
    std::string order;
    for (const auto& row : record::read(path).trials) {
        order += row.batch + " ";
    }
    CHECK(order == "T-0 T-2 T-1 T-3 ");
    CHECK(record::read(path).files.size() == 1); // the same file twice
}

TEST_CASE("the same row again changes nothing") {
    const Place place;
    const std::string path = place.file("quay.record");
    record::add(path, addition_of({trial("T-1", "2026-03-02")}));
    const std::string before = bytes_of(path);

    auto again = addition_of({trial("T-1", "2026-03-02")});
    again.file = "copy.csv";
    again.trials.front().density_kg_m3 = *again.trials.front().density_kg_m3 * (1 + 1e-12);
    const auto outcome = record::add(path, again);
    CHECK(outcome.saved == 0);
    CHECK(outcome.already_there == 1);
    CHECK(outcome.conflicts.empty());
    CHECK(bytes_of(path) == before);
}

TEST_CASE("another value under the same name is a conflict and nothing is saved") {
    const Place place;
    const std::string path = place.file("quay.record");
    record::add(path, addition_of({trial("T-1", "2026-03-02")}, {specimen("A-1", "T-1")}));
    const std::string before = bytes_of(path);

    auto other = addition_of({trial("T-2", "2026-03-03"), trial("T-1", "2026-03-02")},
                             {specimen("A-2", "T-1"), specimen("A-1", "T-1")});
    other.trials.back().slump_mm = 80;
    other.trials.back().w_cm = std::nullopt;
    other.specimens.back().shape = "cube";
    const auto outcome = record::add(path, other);

    REQUIRE(outcome.conflicts.size() == 3);
    const auto& w_cm = outcome.conflicts[0];
    CHECK(w_cm.column == "w_cm");
    CHECK(std::get<std::optional<double>>(w_cm.given) == std::nullopt);
    const auto& slump = outcome.conflicts[1];
    CHECK(slump.in_trials);
    CHECK(slump.row == 1);
    CHECK(slump.column == "slump_mm");
    CHECK(std::get<std::optional<double>>(slump.recorded) == 76.2);
    CHECK(std::get<std::optional<double>>(slump.given) == 80.0);
    CHECK(slump.recorded_from == "march.csv");
    const auto& shape = outcome.conflicts[2];
    CHECK_FALSE(shape.in_trials);
    CHECK(shape.row == 1);
    CHECK(std::get<std::string>(shape.recorded) == "cylinder");
    CHECK(bytes_of(path) == before);
}

TEST_CASE("names that the database's library gives a meaning are plain file names") {
    const Place place;
    const auto home = fs::current_path();
    fs::current_path(place.file(""));
    for (const std::string name : {":memory:", "file:quay?mode=memory", "a%20b", "'quote"}) {
        INFO(name);
        record::add(name, addition_of({trial("T-1", "2026-03-02")}));
        CHECK(fs::file_size(name) > 0);
        CHECK(record::read(name).trials.size() == 1);
    }
    fs::current_path(home);
}

TEST_CASE("between writes a record is one file") {
    const Place place;
    const std::string path = place.file("quay.record");
    record::add(path, addition_of({trial("T-1", "2026-03-02")}));
    record::read(path);
    std::size_t files = 0;
    for ([[maybe_unused]] const auto& entry : fs::directory_iterator{place.file("")}) {
        ++files;
    }
    CHECK(files == 1);
    fs::copy_file(path, place.file("copy.record"));
    CHECK(record::read(place.file("copy.record")).trials.size() == 1);
}
