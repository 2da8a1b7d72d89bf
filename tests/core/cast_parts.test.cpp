// Every part that is cast, with the narrowest that concrete must pass through: by hand, in mm.

#include <boardmark/core/wall/cast_part.hpp>

#include "walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

core::Opening opening(double width_mm, std::optional<double> depth_mm, double at_m) {
    return {.name = "opening " + std::to_string(at_m),
            .width_mm = width_mm,
            .height_mm = 300,
            .depth_mm = depth_mm,
            .sill_m = 0.5,
            .at_m = {at_m},
            .count = 1};
}

} // namespace

TEST_CASE("the narrowest place of a run by hand") {
    struct Row {
        const char* what;
        std::vector<core::Opening> openings;
        double narrowest_mm;
    };
    std::vector<Row> rows{
        {"nothing in it", {}, 250},
        {"a niche of 100: 150 behind it", {opening(400, 100, 1)}, 150},
        {"niches back to back: 250 - 100 - 90", {opening(400, 100, 1), opening(400, 90, 1.2)}, 60},
        {"niches side by side", {opening(400, 100, 1), opening(400, 90, 1.4)}, 150},
        {"an opening in the open", {opening(400, {}, 1)}, 250},
        {"a pier between openings: 1.58 - 1.40",
         {opening(400, {}, 1), opening(400, {}, 1.58)},
         180},
        {"a pier at the end of 5 m", {opening(400, {}, 4.5)}, 100},
    };
    const auto high = [](double height_mm, std::optional<double> sill_m, double at_m) {
        core::Opening hole = opening(400, {}, at_m);
        hole.name += " high";
        hole.height_mm = height_mm;
        hole.sill_m = sill_m;
        return hole;
    };
    const std::vector<Row> upright{
        {"a lintel: 2.00 - 0.50 - 1.45", {high(1450, 0.5, 1)}, 50},
        {"an opening that reaches the top has none", {high(1500, 0.5, 1)}, 250},
        {"a strip below a sill", {high(1000, 0.12, 1)}, 120},
        {"above each other: 0.9 - 0.8", {opening(400, {}, 1), high(500, 0.9, 1.2)}, 100},
        {"not above each other", {opening(400, {}, 1), high(500, 0.9, 1.65)}, 250},
        {"no sill: 60 in all above and below", {high(1940, {}, 1)}, 60},
    };
    rows.insert(rows.end(), upright.begin(), upright.end());
    for (const Row& row : rows) {
        INFO(row.what);
        core::Wall wall = wall_of(run_of(5, 2, 250));
        wall.runs.front().openings = row.openings;
        CHECK_THAT(core::cast_parts(wall).at(0).thinnest_mm(), WithinAbs(row.narrowest_mm, 1e-6));
    }
}

TEST_CASE("footings, planters and benches by hand") {
    core::Wall wall = wall_of(run_of(5, 2, 250));
    wall.runs.front().footing = core::Footing{.width_mm = 900, .depth_mm = 300};
    wall.planters = {{.name = "planter",
                      .length_m = 3,
                      .width_m = 2,
                      .height_m = 0.6,
                      .thickness_mm = 200,
                      .floor_mm = 120}};
    wall.benches = {{.name = "bench", .length_m = 2, .depth_mm = 500, .thickness_mm = 130}};
    const auto parts = core::cast_parts(wall);
    REQUIRE(parts.size() == 4);
    CHECK(parts[1].name == "footing of wall");
    CHECK(parts[1].thinnest_mm() == 300);
    CHECK(parts[2].thinnest_mm() == 120);
    CHECK(parts[2].between_forms_mm == 200);
    CHECK(parts[3].thinnest_mm() == 130);
    CHECK(parts[3].between_forms_mm == 500);
    // 2 x 5 m less four corners of 0.2 m, 0.2 m thick.
    CHECK_THAT(parts[2].plan_m2, WithinAbs(9.2 * 0.2, 1e-9));
}
