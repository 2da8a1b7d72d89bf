// Courses against heights, by hand.

#include <boardmark/core/wall/coursing.hpp>

#include "walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

core::Wall coursed(core::WallRun run, double course_mm,
                   core::BoardDirection direction = core::BoardDirection::horizontal) {
    core::Wall wall = wall_of(std::move(run));
    wall.boards = core::Boards{.face_width_mm = course_mm,
                               .thickness_mm = 20,
                               .course_mm = course_mm,
                               .direction = direction,
                               .stock_m = {4},
                               .saw_cut_mm = 3};
    return wall;
}

} // namespace

TEST_CASE("whole courses, what they leave and the heights that make it whole") {
    const auto [height_m, course_mm, whole, remainder_mm, below_m, above_m] =
        GENERATE(table<double, double, int, double, double, double>({
            {1.8288, 139.7, 13, 12.7, 1.8161, 1.9558}, // 6 ft of 5 1/2 in: 71 1/2 and 77 in
            {1.2192, 139.7, 8, 101.6, 1.1176, 1.2573}, // 4 ft
            {0.1, 139.7, 0, 100, 0, 0.1397},           // less than one course: none below
            {1.397, 139.7, 10, 0, 0, 0},               // whole: nothing to change
            {0.3 * 3, 100, 9, 0, 0, 0},                // 0.9 in binary is not quite 0.9
        }));
    CAPTURE(height_m);
    const core::CourseFit fit = core::fit_courses(height_m, course_mm);
    CHECK(fit.whole == whole);
    CHECK_THAT(fit.remainder_mm, WithinAbs(remainder_mm, 1e-9));
    CHECK_THAT(fit.whole_below_m.value_or(0), WithinAbs(below_m, 1e-12));
    CHECK_THAT(fit.whole_above_m.value_or(0), WithinAbs(above_m, 1e-12));
}

TEST_CASE("courses that hang from the highest top are cut at the foot and at lower steps") {
    core::WallRun run = run_of(8, 2, 300);
    run.top = core::Top::stepped;
    run.heights = {{0, 2}, {4, 1.25}};
    const core::WallCoursing found = core::coursing(coursed(run, 150), practice());
    REQUIRE(found.runs.front().steps.size() == 2);
    const core::StepCoursing& high = found.runs.front().steps.front();
    const core::StepCoursing& low = found.runs.front().steps.back();
    CHECK_THAT(high.lowest_from_top_mm, WithinAbs(50, 1e-9)); // 2000 = 13 x 150 + 50
    CHECK(high.highest_from_top_mm == 0);
    CHECK(low.highest_from_top_mm == 0);                   // 750 lower: 5 courses
    CHECK_THAT(low.fit.remainder_mm, WithinAbs(50, 1e-9)); // from the footing: 8 x 150 + 50
    run.heights.back().height_m = 1.3;                     // 700 lower: 4 courses and 100
    const core::WallCoursing other = core::coursing(coursed(run, 150), practice());
    CHECK_THAT(other.runs.front().steps.back().highest_from_top_mm, WithinAbs(50, 1e-9));
}

TEST_CASE("a cut course below a third of one is told, with the heights that mend it") {
    const auto [height_m, told] = GENERATE(table<double, bool>({
        {1.999, true}, // 13 x 150 and 49
        {2.0, false},  // and 50: a third
        {1.95, false}, // whole
        {1.951, true}, // and 1
        {2.09, false}, // and 140
    }));
    CAPTURE(height_m);
    const core::WallCoursing found =
        core::coursing(coursed(run_of(8, height_m, 300), 150), practice());
    CHECK(found.runs.front().steps.front().poor_cut == told);
    REQUIRE(found.worksheet.cautions.size() == (told ? 1U : 0U));
    if (told) {
        CHECK(found.worksheet.cautions.front().arguments.size() == 5);
    }
}

TEST_CASE("boards that stand are held against the length") {
    const core::WallCoursing found =
        core::coursing(coursed(run_of(2, 1, 300), 150, core::BoardDirection::vertical), practice());
    const core::StepCoursing& along = found.runs.front().steps.front();
    CHECK(along.fit.whole == 13);
    CHECK_THAT(along.fit.remainder_mm, WithinAbs(50, 1e-9));
}

TEST_CASE("a wall without boards has no courses") {
    CHECK(core::coursing(wall_of(run_of(2, 1, 300)), practice()).runs.empty());
}

TEST_CASE("a height that several stations share is told once") {
    core::WallRun run = run_of(24, 2, 300);
    run.top = core::Top::sloping;
    run.heights = {{0, 1.99}, {12, 1.22}, {24, 1.22}}; // 13 x 150 and 40; 8 x 150 and 20
    const core::WallCoursing found = core::coursing(coursed(run, 150), practice());
    REQUIRE(found.runs.front().steps.size() == 3);
    CHECK_FALSE(found.runs.front().steps[1].repeats);
    CHECK(found.runs.front().steps[2].repeats);
    CHECK(found.worksheet.cautions.size() == 2);
}
