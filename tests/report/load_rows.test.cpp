#include "report/pour/load_rows.hpp"

#include "report/pour/clock.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using report::clock_text;
using report::latest_clock_text;

namespace {

/// Loads of one length, or the first of them longer.
std::vector<core::LoadOfDay> loads(int count, double hours) {
    std::vector<core::LoadOfDay> all;
    for (int i = 0; i < count; ++i) {
        all.push_back({.number = i + 1,
                       .volume_m3 = 6,
                       .parts = {"wall"},
                       .begins_h = i * hours,
                       .ends_h = (i + 1) * hours,
                       .batched_h = {},
                       .latest_end_h = {}});
    }
    return all;
}

} // namespace

TEST_CASE("times of the day", "[pour]") {
    CHECK(clock_text(0.8, 7 * 60) == "07:48");
    CHECK(clock_text(0.8, {}) == "0:48");
    CHECK(clock_text(-0.2, {}) == "-0:12");
    CHECK(clock_text(-0.2, 7 * 60) == "06:48");
    CHECK(clock_text(-1, 0) == "23:00 -1 d");
    CHECK(clock_text(2, 23 * 60) == "01:00 +1 d");
    CHECK(clock_text(0.4999 / 60 * 3, {}) == "0:01"); // 1.4997 min
    // A latest time is never later than it is.
    CHECK(clock_text(1.9 / 60, {}) == "0:02");
    CHECK(latest_clock_text(1.9 / 60, {}) == "0:01");
    CHECK(latest_clock_text(2.0 / 60, {}) == "0:02");
}

TEST_CASE("rows beyond the sheet are grouped", "[pour]") {
    CHECK(report::load_rows({}).empty());
    CHECK(report::load_rows(loads(12, 0.2)).size() == 12);
    const auto many = loads(24, 0.2);
    const auto rows = report::load_rows(many);
    REQUIRE(rows.size() == 9);
    CHECK(rows[7].is_single());
    CHECK(rows[8].first->number == 9);
    CHECK(rows[8].last->number == 24);
    CHECK_THAT(rows[8].shortest_h, Catch::Matchers::WithinAbs(0.2, 1e-9));
}

TEST_CASE("however many loads differ, the sheet holds their rows", "[pour]") {
    auto mixed = loads(200, 0.2);
    for (std::size_t i = 0; i < mixed.size(); ++i) {
        mixed[i].parts = {i % 2 == 0 ? "wall" : "planter"};
    }
    const auto rows = report::load_rows(mixed);
    REQUIRE(rows.size() == 12);
    CHECK(rows.back().last->number == 200);
    for (std::size_t i = 1; i < rows.size(); ++i) {
        CHECK(rows[i].first->number == rows[i - 1].last->number + 1);
    }
}
