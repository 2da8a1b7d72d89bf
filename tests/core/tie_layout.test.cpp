// Where ties stand and what they hold, by hand. That rows and columns are laid out so, and what a
// tie beside an opening is taken to hold, is common practice, no source.

#include <boardmark/core/wall/tie_layout.hpp>

#include "walls.hpp"

#include <catch2/catch.hpp>

#include <numeric>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::TieLayout;
using core::TiePlace;

namespace {

constexpr double near = 1e-9;

core::Ties ties_at(double across_mm, double up_mm, std::optional<double> first_mm = {}) {
    core::Ties ties{core::TieKind::stainless_steel, across_mm, up_mm};
    ties.first_mm = first_mm;
    return ties;
}

const TiePlace& tie_near(const TieLayout& layout, double station_m, double height_m) {
    return *std::ranges::min_element(layout.ties, {}, [&](const TiePlace& tie) {
        return std::abs(tie.station_m - station_m) + std::abs(tie.height_m - height_m);
    });
}

core::Opening opening(double at_m, double width_mm, double sill_m, double height_mm) {
    return {.name = "window",
            .width_mm = width_mm,
            .height_mm = height_mm,
            .depth_mm = {},
            .sill_m = sill_m,
            .at_m = {at_m},
            .count = 1};
}

} // namespace

TEST_CASE("rows stand at first, then every up, the top row no further than up below the top") {
    struct Row {
        double height_m, up_mm;
        std::optional<double> first_mm;
        std::vector<double> at_m;
        double lowest_strip_m, top_strip_m;
    };
    const Row row = GENERATE(values<Row>({
        {1.8, 600, {}, {0.3, 0.9, 1.5}, 0.6, 0.6},
        {2.2, 600, {}, {0.3, 0.9, 1.5, 2.1}, 0.6, 0.4}, // 1.5 is 0.7 below the top
        {2.1, 600, {}, {0.3, 0.9, 1.5}, 0.6, 0.9},      // 1.5 is 0.6 below the top
        {1.8, 600, 200, {0.2, 0.8, 1.4}, 0.5, 0.7},
        {1.8, 600, 900, {0.9, 1.5}, 1.2, 0.6},
        {0.3, 600, {}, {0.15}, 0.3, 0.3}, // too low for half of up
        {0.25, 600, {}, {0.125}, 0.25, 0.25},
    }));
    CAPTURE(row.height_m);
    const TieLayout layout =
        core::tie_layout(run_of(0.6, row.height_m, 300), ties_at(600, row.up_mm, row.first_mm));
    REQUIRE(layout.ties.size() == row.at_m.size());
    CHECK(layout.rows == row.at_m.size());
    CHECK(layout.all_held);
    for (std::size_t i = 0; i < row.at_m.size(); ++i) {
        CHECK_THAT(layout.ties[i].height_m, WithinAbs(row.at_m[i], near));
    }
    CHECK_THAT(layout.ties.front().strip_m, WithinAbs(row.lowest_strip_m, near));
    CHECK_THAT(layout.ties.front().deepest_m, WithinAbs(row.height_m, near));
    CHECK_THAT(layout.ties.back().strip_m, WithinAbs(row.top_strip_m, near));
}

TEST_CASE("columns stand in equal spaces, half a space from each end, and hold the stated one") {
    const TieLayout layout = core::tie_layout(run_of(2.5, 0.6, 300), ties_at(600, 600));
    REQUIRE(layout.stations_m.size() == 5); // of 500 mm
    CHECK_THAT(layout.stations_m.front(), WithinAbs(0.25, near));
    CHECK_THAT(layout.stations_m.back(), WithinAbs(2.25, near));
    CHECK_THAT(layout.ties.front().area_m2, WithinAbs(0.36, near));
}

TEST_CASE("a first row above the top leaves a form without ties") {
    const TieLayout layout = core::tie_layout(run_of(2.4, 0.6, 300), ties_at(600, 600, 600));
    CHECK(layout.ties.empty());
    CHECK_FALSE(layout.all_held);
}

TEST_CASE("columns of a stepped run go as high as the concrete at their station") {
    core::WallRun run = run_of(2.4, 3, 300);
    run.top = core::Top::stepped;
    run.heights = {{0, 3}, {1.0, 1.2}}; // columns at 0.3, 0.9 and at 1.5, 2.1
    const TieLayout layout = core::tie_layout(run, ties_at(600, 600));
    CHECK(layout.ties.size() == 2 * 5 + 2 * 2);
    CHECK(layout.all_held);
    // the form of the tower between 0.6 and 1.0 is held by the columns at 0.3 and 0.9; that at 0.9
    // holds 0.6 to 1.2. No field of a lower column reaches the tower.
    CHECK_FALSE(std::ranges::any_of(layout.ties, &TiePlace::takes_over));
    run.heights[1].station_m = 1.4; // now the field of the column at 1.5 holds 0.2 m of the tower
    const TieLayout further = core::tie_layout(run, ties_at(600, 600));
    CHECK(further.all_held);
    CHECK_THAT(tie_near(further, 0.9, 1.5).area_m2, WithinAbs(0.36 + 0.2 * 0.6, near));
    CHECK_THAT(tie_near(further, 0.9, 0.3).area_m2, WithinAbs(0.36, near));
    CHECK_THAT(tie_near(further, 1.5, 0.9).deepest_m, WithinAbs(3 - 0.6, near)); // of the tower
}

TEST_CASE("a tower in which no column stands is not held above the step") {
    core::WallRun run = run_of(2.4, 3, 300);
    run.top = core::Top::stepped;
    run.heights = {{0, 1.2}, {1.0, 3}, {1.2, 1.2}};
    CHECK_FALSE(core::tie_layout(run, ties_at(600, 600)).all_held);
}

TEST_CASE("columns of a sloping run follow the slope and hold it all") {
    core::WallRun run = run_of(2.4, 1, 300);
    run.top = core::Top::sloping;
    run.heights = {{0, 1}, {2.4, 2.2}};
    const TieLayout layout = core::tie_layout(run, ties_at(600, 600));
    // at 0.3, 0.9, 1.5, 2.1 the top is at 1.15, 1.45, 1.75, 2.05
    CHECK(layout.ties.size() == 2 + 2 + 3 + 3);
    CHECK(layout.all_held);
    // at 1.5 the highest concrete held is 1.9 at 1.8
    CHECK_THAT(tie_near(layout, 1.5, 1.5).strip_m, WithinAbs(1.9 - 1.2, near));
}

TEST_CASE("a tie inside an opening is left out and its neighbours hold its form") {
    core::WallRun run =
        run_of(3, 1.8, 300); // columns at 0.3, 0.9, 1.5, 2.1, 2.7, rows 0.3, 0.9, 1.5
    run.openings = {opening(1.2, 500, 0.7, 400)}; // holds the crossing 1.5, 0.9
    const TieLayout layout = core::tie_layout(run, ties_at(600, 600));
    CHECK(layout.left_out == 1);
    CHECK(layout.ties.size() == 14);
    CHECK(layout.all_held);
    CHECK_FALSE(layout.on_assumed_openings);
    // its field less the opening: 0.6 x 0.6 - 0.5 x 0.4 = 0.16 m2
    for (const auto& [station_m, height_m] :
         std::vector<std::pair<double, double>>{{0.9, 0.9}, {2.1, 0.9}, {1.5, 0.3}, {1.5, 1.5}}) {
        const TiePlace& tie = tie_near(layout, station_m, height_m);
        CHECK(tie.takes_over);
        CHECK_THAT(tie.area_m2, WithinAbs(0.36 + 0.16, near));
    }
    CHECK_THAT(tie_near(layout, 1.5, 1.5).deepest_m, WithinAbs(1.8 - 0.6, near));
    CHECK_THAT(tie_near(layout, 0.3, 0.9).area_m2, WithinAbs(0.36, near));
    run.openings.front().depth_mm = 150; // a niche: the tie goes through behind it
    CHECK(core::tie_layout(run, ties_at(600, 600)).ties.size() == 15);
}

TEST_CASE("a wide opening under the top row hands its lintel to the ties beside it") {
    core::WallRun run = run_of(3, 1.8, 300);
    run.openings = {opening(0.6, 1800, 0.2, 1500)}; // three columns, all rows but the end columns'
    const TieLayout layout = core::tie_layout(run, ties_at(600, 600));
    CHECK(layout.left_out == 9);
    CHECK(layout.all_held);
    // at 1.5: of the three fields of 0.6 x 0.6 beside and of the one between, 0.6 x 0.1 is lintel
    const TiePlace& top = tie_near(layout, 0.3, 1.5);
    CHECK(top.takes_over);
    CHECK(top.area_m2 > 0.36 + 0.06);
    run.openings = {opening(0, 3000, 0.2, 1500)};
    CHECK_FALSE(core::tie_layout(run, ties_at(600, 600)).all_held);
}

TEST_CASE("an opening whose place is not stated leaves the layout an assumption") {
    core::WallRun run = run_of(3, 1.8, 300);
    run.openings = {opening(1.2, 500, 0.7, 400)};
    const bool sill = GENERATE(true, false);
    if (sill) {
        run.openings.front().sill_m.reset();
    } else {
        run.openings.front().at_m.clear();
    }
    CHECK(core::tie_layout(run, ties_at(600, 600)).on_assumed_openings);
}

TEST_CASE("ties of a planter stand above its floor and hold the outer form to the bottom") {
    const core::Planter planter{.name = "planter",
                                .length_m = 2.6,
                                .width_m = 1.4,
                                .height_m = 0.8,
                                .thickness_mm = 200,
                                .floor_mm = 200,
                                .count = 3};
    const TieLayout layout = core::tie_layout(planter, ties_at(600, 600));
    CHECK(layout.stations_m.size() == 2 * 4 + 2 * 2); // middle lines of 2.4 and 1.2 m
    REQUIRE(layout.ties.size() == 12);
    CHECK_THAT(layout.ties.front().height_m, WithinAbs(0.2 + 0.3, near));
    CHECK_THAT(layout.ties.front().strip_m, WithinAbs(0.8, near));
    CHECK_THAT(layout.stations_m.back(), WithinAbs(7.2 - 0.3, near));
}
