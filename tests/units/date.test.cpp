// Dates as days: ISO 8601. Expected day numbers: GNU date -ud DATE +%s over 86400.

#include <boardmark/units/date.hpp>

#include <catch2/catch.hpp>

#include <string>
#include <utility>

using namespace boardmark::units;

TEST_CASE("a date is its day since 1970-01-01, and back") {
    const auto [written, days] = GENERATE(Catch::Generators::values<std::pair<std::string, int>>(
        {{"1970-01-01", 0}, {"2026-03-02", 20514}, {"2024-02-29", 19782}, {"1969-12-31", -1}}));
    INFO(written);
    CHECK(read_date(written) == days);
    CHECK(written_date(days) == written);
}

TEST_CASE("what is no day of the calendar is no date") {
    const std::string written =
        GENERATE(std::string{"2026-02-29"}, "2026-13-01", "2026-00-10", "2026-3-2", "02.03.2026",
                 "2026-03-02 ", "", "1899-12-31", "3000-01-01", "2026-03-0x");
    INFO(written);
    CHECK_FALSE(read_date(written));
}
