// Boards that line a wall, by hand.

#include <boardmark/core/wall/board_order.hpp>

#include "walls.hpp"

#include <catch2/catch.hpp>

#include <numeric>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

core::Wall boarded(core::WallRun run, core::BoardDirection direction) {
    core::Wall wall = wall_of(std::move(run));
    wall.boards = core::Boards{.face_width_mm = 200,
                               .thickness_mm = 20,
                               .course_mm = 200,
                               .direction = direction,
                               .stock_m = {3, 4},
                               .saw_cut_mm = 3};
    return wall;
}

core::Wall lying(core::WallRun run) {
    return boarded(std::move(run), core::BoardDirection::horizontal);
}

int count_of(const core::BoardOrder& order, double length_m) {
    int count = 0;
    for (const core::Pieces& piece : order.pieces) {
        count += std::abs(piece.length_m - length_m) < 1e-4 ? piece.count : 0;
    }
    return count;
}

core::Opening window() {
    return {.name = "window",
            .width_mm = 1000,
            .height_mm = 500,
            .depth_mm = {},
            .sill_m = 0.3,
            .at_m = {1},
            .count = 1};
}

} // namespace

TEST_CASE("a course is one board or equal boards shifted by a quarter") {
    CHECK(core::course_pieces_m(4, 4, 0) == std::vector<double>{4});
    CHECK(core::course_pieces_m(6, 4, 0) == std::vector<double>{3.75, 2.25});
    CHECK(core::course_pieces_m(6, 4, 1) == std::vector<double>{2.25, 3.75});
    // 7 m: two of 3.5, of which one could not be a quarter longer
    CHECK(core::course_pieces_m(7, 4, 0).size() == 3);
    const double length_m = GENERATE(4.01, 6.4, 9.5, 18.288, 60.0);
    for (const int course : {0, 1}) {
        const std::vector<double> pieces_m = core::course_pieces_m(length_m, 4, course);
        CHECK_THAT(std::accumulate(pieces_m.begin(), pieces_m.end(), 0.0),
                   WithinAbs(length_m, 1e-9));
        CHECK(std::ranges::max(pieces_m) <= 4 + 1e-9);
    }
}

TEST_CASE("five courses of a wall, its ends and what is bought") {
    core::Wall wall = lying(run_of(4, 1, 300));
    const core::BoardOrder order = core::board_order(wall, {});
    CHECK(count_of(order, 4) == 5);
    CHECK(count_of(order, 0.3) == 10); // two ends
    CHECK_THAT(order.lined_m, WithinAbs(20 + 3, 1e-9));
    // 20 m of full boards; the ten ends come out of one more board, 10 x 303 - 3 mm, so of 4 m
    CHECK_THAT(order.length_m, WithinAbs(24, 1e-9));
    CHECK(order.count == 6);
    CHECK(order.plan.proven);
    CHECK_THAT(order.cut_waste_percent, WithinAbs(100 * 1.0 / 24, 1e-9));
    wall.boards->uses = 2; // 3 of 4 m, 5 of 0.3 m
    wall.boards->spoiled_percent = 25;
    const core::BoardOrder twice = core::board_order(wall, {});
    // 3 boards of 4 m: 4 with the spoiled; 1 of 3 m: 2
    CHECK_THAT(twice.length_m, WithinAbs(4 * 4 + 2 * 3, 1e-9));
    CHECK_THAT(twice.waste_percent, WithinAbs(100 * (1 - 13.5 / 22), 1e-9));
}

TEST_CASE("a contraction joint breaks every course") {
    const core::BoardOrder order = core::board_order(lying(run_of(6, 1, 300)), {{"wall", {2.5}}});
    CHECK(count_of(order, 2.5) == 5);
    CHECK(count_of(order, 3.5) == 5);
}

TEST_CASE("an opening interrupts the courses whose whole height it takes, a niche none") {
    core::WallRun run = run_of(4, 1, 300);
    run.openings = {window()}; // from 0.3 to 0.8 m: courses at 0.4 and 0.6 m, not the one at 0.2 m
    const core::BoardOrder order = core::board_order(lying(run), {});
    CHECK(count_of(order, 4) == 3);
    CHECK(count_of(order, 1) == 2);
    CHECK(count_of(order, 2) == 2);
    run.openings.front().depth_mm = 100;
    CHECK(count_of(core::board_order(lying(run), {}), 4) == 5);
}

TEST_CASE("courses shorten under a slope to where its top crosses their lower edge") {
    core::WallRun run = run_of(4, 1, 300);
    run.top = core::Top::sloping;
    run.heights = {{0, 1}, {4, 0.6}};
    const core::BoardOrder order = core::board_order(lying(run), {});
    CHECK(count_of(order, 4) == 4); // the one at 0.6 m comes to a point at the far end
    CHECK(count_of(order, 2) == 1); // at 0.8 m
}

TEST_CASE("boards that stand follow the top and stop at an opening") {
    core::WallRun run = run_of(4, 1, 200);
    run.openings = {window()};
    const core::BoardOrder order =
        core::board_order(boarded(run, core::BoardDirection::vertical), {});
    CHECK(count_of(order, 1) == 15 + 2); // 20 of the face less 5 in the opening, one on each end
    CHECK(count_of(order, 0.3) == 5);
    CHECK(count_of(order, 0.2) == 5);
}

TEST_CASE("a wall without boards buys none") {
    CHECK(core::board_order(wall_of(run_of(4, 1, 300)), {}).count == 0);
}
