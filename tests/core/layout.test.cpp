#include <boardmark/core/layout/visible_part.hpp>
#include <boardmark/core/placing/placing_plan.hpp>
#include <boardmark/core/wall/course.hpp>

#include "core/walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

core::Boards boards_of(double course_mm) {
    return {.face_width_mm = course_mm,
            .thickness_mm = 20,
            .course_mm = course_mm,
            .stock_m = {4},
            .saw_cut_mm = 3};
}

core::Elevation stepped_face() {
    core::Elevation face{.part = "wall", .face = core::Face::front, .length_m = 6, .height_m = 2};
    face.outline = {{0, 0}, {6, 0}, {6, 1}, {4, 1}, {4, 2}, {0, 2}};
    return face;
}

} // namespace

// By hand: 1.00 m in courses of 150 mm is 6 courses and 100 mm.
TEST_CASE("courses are counted from the bottom, the top or both") {
    const core::Boards boards = boards_of(150);
    const auto from_bottom = core::courses_of(1, boards, core::CoursesFrom::bottom);
    REQUIRE(from_bottom.size() == 7);
    CHECK_THAT(from_bottom.front().width_m(), WithinAbs(0.15, 1e-12));
    CHECK_THAT(from_bottom.back().width_m(), WithinAbs(0.10, 1e-12));
    const auto from_top = core::courses_of(1, boards, core::CoursesFrom::top);
    REQUIRE(from_top.size() == 7);
    CHECK_THAT(from_top.front().width_m(), WithinAbs(0.10, 1e-12));
    CHECK_THAT(from_top.back().width_m(), WithinAbs(0.15, 1e-12));
    // (100 + 150) / 2
    const auto from_both = core::courses_of(1, boards, core::CoursesFrom::both);
    REQUIRE(from_both.size() == 7);
    CHECK_THAT(from_both.front().width_m(), WithinAbs(0.125, 1e-12));
    CHECK_THAT(from_both[3].width_m(), WithinAbs(0.15, 1e-12));
    CHECK_THAT(from_both.back().width_m(), WithinAbs(0.125, 1e-12));
    CHECK(core::courses_of(0.9, boards, core::CoursesFrom::both).size() == 6);
    CHECK(core::courses_of(0.1, boards, core::CoursesFrom::top).size() == 1);
}

TEST_CASE("a board shows below the top of its face only") {
    const core::Elevation face = stepped_face();
    // across the step at 4 m, from 0.9 to 1.1 m: 3 to 4 m whole, 4 to 5 m up to 1 m
    const auto corners =
        core::visible_part({.x_m = 3, .z_m = 0.9, .length_m = 2, .width_m = 0.2}, face);
    REQUIRE(corners.size() == 6);
    double area = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const auto& one = corners[i];
        const auto& next = corners[(i + 1) % corners.size()];
        area += (one.x_m * next.z_m - next.x_m * one.z_m) / 2;
    }
    CHECK_THAT(area, WithinAbs(0.2 + 0.1, 1e-12));
    CHECK(core::top_of(face).size() == 4);
    CHECK(core::top_of(face).front().z_m == 2);
}

// By hand: 72 in at 20 in at most is 4 equal lifts; on joints of 5 1/2 in it takes 5, which end
// nearest to 14.4, 28.8, 43.2 and 57.6 in: at 3, 5, 8 and 10 courses.
TEST_CASE("lifts end on board joints where that is asked for") {
    const double inch = 0.0254;
    core::PouredWall wall{
        .height_m = 72 * inch, .plan_area_m2 = 1, .rise_m_h = 1, .lift_m = 20 * inch};
    const core::LiftRules rules = reference::tables(core::UnitSystem::us).placing->lifts;
    CHECK(core::lift_plan(wall, rules).tops_m.size() == 4);
    wall.lines_m.emplace();
    for (int course = 1; course <= 13; ++course) {
        wall.lines_m->push_back(5.5 * course * inch);
    }
    const auto plan = core::lift_plan(wall, rules);
    REQUIRE(plan.lifts == 5);
    const double expected_in[] = {16.5, 27.5, 44, 55, 72};
    for (std::size_t lift = 0; lift < 5; ++lift) {
        CHECK_THAT(plan.tops_m[lift] / inch, WithinAbs(expected_in[lift], 1e-9));
    }
    CHECK_THAT(plan.lift_m / inch, WithinAbs(17, 1e-9));
    // the lowest is 11 in, below the usual 12
    CHECK(plan.checks.front().verdict == core::Verdict::watch);
}

// By hand: 15 in at 12 in at most is 2 equal lifts, whose line would cross the one board of 16 in.
TEST_CASE("a wall of one course has no line between lifts where they end on board joints") {
    core::PouredWall wall{.height_m = 0.381, .plan_area_m2 = 1, .rise_m_h = 1, .lift_m = 0.3048};
    const core::LiftRules rules = reference::tables(core::UnitSystem::us).placing->lifts;
    CHECK(core::lift_plan(wall, rules).lifts == 2);
    wall.lines_m.emplace();
    CHECK(core::lift_plan(wall, rules).tops_m == std::vector{0.381});
}
