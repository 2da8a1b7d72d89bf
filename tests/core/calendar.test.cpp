// Days of the calendar: ISO 8601 dates, the Gregorian leap years.

#include <boardmark/core/basis/calendar.hpp>
#include <boardmark/core/paper/job_papers.hpp>

#include <catch2/catch.hpp>

#include <chrono>

using namespace boardmark;
using namespace std::chrono_literals;

namespace {

core::Day day(int year, unsigned month, unsigned day_of_month) {
    return std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day_of_month};
}

} // namespace

TEST_CASE("days ahead of a first pour on 2027-05-10") {
    // By the calendar: 21, 28 and 60 days before.
    const core::Day pour = day(2027, 5, 10);
    CHECK(core::date_text(pour - std::chrono::days{21}) == "2027-04-19");
    CHECK(core::date_text(pour - std::chrono::days{28}) == "2027-04-12");
    CHECK(core::date_text(pour - std::chrono::days{60}) == "2027-03-11");
}

TEST_CASE("months later end in the month that they reach") {
    struct Row {
        core::Day from;
        int months;
        const char* to;
    };
    // 2028 and 2000 are leap years, 2027 and 2100 are none.
    const auto row = GENERATE(values<Row>({
        {day(2027, 1, 31), 1, "2027-02-28"},
        {day(2028, 1, 31), 1, "2028-02-29"},
        {day(2028, 2, 29), 12, "2029-02-28"},
        {day(2028, 2, 29), 48, "2032-02-29"},
        {day(2099, 12, 31), 2, "2100-02-28"},
        {day(1999, 12, 31), 2, "2000-02-29"},
        {day(2027, 5, 10), -24, "2025-05-10"},
        {day(2027, 3, 31), -1, "2027-02-28"},
        {day(2026, 11, 30), 3, "2027-02-28"},
    }));
    INFO(core::date_text(row.from) << " and " << row.months << " months");
    CHECK(core::date_text(core::months_after(row.from, row.months)) == row.to);
}

TEST_CASE("days between two dates count the leap day") {
    CHECK(core::days_between(day(2028, 2, 28), day(2028, 3, 1)) == 2);
    CHECK(core::days_between(day(2027, 2, 28), day(2027, 3, 1)) == 1);
    CHECK(core::days_between(day(2027, 5, 10), day(2027, 5, 9)) == -1);
}

TEST_CASE("what a wall file says of the job stands before what its mix file says") {
    core::JobPapers wall;
    wall.first_pour = day(2027, 5, 10);
    wall.decisions["sealer"] = "none";
    core::JobPapers mix;
    mix.first_pour = day(2027, 6, 1);
    mix.pour_days = 2;
    mix.decisions = {{"sealer", "silane"}, {"tests_by", "a laboratory"}};
    mix.materials["cement"].mill_certificate = day(2027, 3, 1);
    const core::JobPapers both = core::merged(wall, mix);
    CHECK(*both.first_pour == day(2027, 5, 10));
    CHECK(*both.pour_days == 2);
    CHECK(both.decisions.at("sealer") == "none");
    CHECK(both.decisions.at("tests_by") == "a laboratory");
    CHECK(both.materials.contains("cement"));
}
