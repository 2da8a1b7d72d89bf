// What openings together leave of a wall. By hand: common practice, no source.

#include <boardmark/core/wall/run_shape.hpp>

#include <catch2/catch.hpp>

#include <optional>
#include <vector>

using namespace boardmark;
using core::Opening;

namespace {

core::WallRun wall_of_4_m() {
    core::WallRun run{};
    run.length_m = 4;
    run.heights = {{0, 2}};
    run.thickness_mm = run.bottom_thickness_mm = 250;
    run.shows = core::ShownFaces::one;
    return run;
}

Opening opening(double width_mm, double height_mm, std::optional<double> sill_m, int count = 1,
                std::optional<double> depth_mm = {}) {
    return {"one", width_mm, height_mm, depth_mm, sill_m, {}, count};
}

} // namespace

TEST_CASE("openings at one height fit beside each other up to the length of the wall") {
    const core::WallRun run = wall_of_4_m();
    const Opening half = opening(2000, 500, 0.5);
    CHECK_FALSE(core::are_together_more_than_fit({half, half}, run));
    CHECK(core::are_together_more_than_fit({half, opening(2001, 500, 0.5)}, run));
    CHECK(core::are_together_more_than_fit({half, opening(2001, 500, 0.9)}, run));
    CHECK_FALSE(core::are_together_more_than_fit({half, opening(2001, 500, 1.0)}, run));
    CHECK_FALSE(core::are_together_more_than_fit({half, opening(2001, 500, {})}, run));
    // 5 in on a sill of 1 in, and one on a sill of 6 in, which in metres is a trifle less.
    constexpr double inch_m = 0.0254;
    REQUIRE(inch_m + 5 * 25.4 / 1000 > 6 * inch_m);
    CHECK_FALSE(core::are_together_more_than_fit(
        {opening(4000, 5 * 25.4, inch_m), opening(4000, 50.8, 6 * inch_m)}, run));
    CHECK(core::are_together_more_than_fit({half, opening(500, 500, 0.9, 5)}, run));
}

TEST_CASE("what openings cut away is no more than the wall") {
    core::WallRun run = wall_of_4_m(); // 8 m2
    CHECK_FALSE(core::are_together_more_than_fit(
        {opening(2000, 1000, {}, 2), opening(2000, 2000, {})}, run));
    CHECK(core::are_together_more_than_fit({opening(2000, 1000, {}, 2), opening(2001, 2000, {})},
                                           run));
    run.heights = {{0, 2}, {2, 1}};
    run.top = core::Top::stepped; // 4 and 2 m2
    CHECK_FALSE(core::are_together_more_than_fit(
        {opening(2000, 1000, {}, 2), opening(1000, 2000, {})}, run));
    CHECK(core::are_together_more_than_fit({opening(2000, 1000, {}, 2), opening(1001, 2000, {})},
                                           run));
    run.heights = {{0, 2}, {4, 1}};
    run.top = core::Top::sloping; // 6 m2
    CHECK_FALSE(core::are_together_more_than_fit(
        {opening(2000, 1000, {}, 2), opening(2000, 1000, {})}, run));
    CHECK(core::are_together_more_than_fit({opening(2000, 1000, {}, 2), opening(2001, 1000, {})},
                                           run));
}

TEST_CASE("niches of both faces may stand back to back, those of one face may not") {
    core::WallRun run = wall_of_4_m();
    const Opening niche = opening(3000, 500, 0.5, 1, 100);
    const Opening vent = opening(1001, 500, 0.5);
    CHECK(core::are_together_more_than_fit({niche, niche}, run));
    run.shows = core::ShownFaces::both;
    CHECK_FALSE(core::are_together_more_than_fit({niche, niche}, run));
    CHECK_FALSE(core::are_together_more_than_fit({niche, vent}, run)); // the other face is free
    CHECK(core::are_together_more_than_fit({niche, niche, vent}, run));
}
