// Quantities of walls, by hand. The second opinion by counting cells is
// tests/oracle/wall-geometry.check.

#include <boardmark/core/wall/wall_quantities.hpp>

#include "walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double near = 1e-9;

core::PartQuantities measured(const core::WallRun& run) {
    return core::wall_quantities(wall_of(run), practice()).total;
}

} // namespace

TEST_CASE("a plain wall that shows one face") {
    core::WallRun run = run_of(10, 2, 300);
    run.corners = 1;
    run.footing = core::Footing{.width_mm = 1000, .depth_mm = 400};
    const core::PartQuantities part = measured(run);
    CHECK_THAT(part.concrete_m3, WithinAbs(6, near));
    CHECK_THAT(part.footing_m3, WithinAbs(4, near));
    CHECK_THAT(part.footing_form_m2, WithinAbs(2 * 11 * 0.4, near));
    CHECK_THAT(part.form_face_m2, WithinAbs(40 + 2 * 0.6, near)); // sides, ends
    CHECK_THAT(part.shown_m2, WithinAbs(20 + 2 * 0.6, near));
    CHECK_THAT(part.open_top_m2, WithinAbs(3, near));
    CHECK_THAT(part.release_m2, WithinAbs(41.2, near));
    CHECK_THAT(part.curing_m2, WithinAbs(44.2, near));
    CHECK_THAT(part.top_edge_m, WithinAbs(10 + 2 * 0.3, near));
    CHECK_THAT(part.edges_m, WithinAbs(10.6 + 2 * 2 + 2, near)); // ends, one corner
}

TEST_CASE("an opening through a wall that shows both faces") {
    core::WallRun run = run_of(10, 2, 300);
    run.shows = core::ShownFaces::both;
    run.openings = {{.name = "window",
                     .width_mm = 1000,
                     .height_mm = 500,
                     .depth_mm = {},
                     .sill_m = 0.8,
                     .at_m = {2, 6},
                     .count = 2}};
    const core::PartQuantities part = measured(run);
    CHECK_THAT(part.box_outs_m3, WithinAbs(2 * 0.15, near));
    CHECK_THAT(part.concrete_m3, WithinAbs(6 - 0.3, near));
    CHECK_THAT(part.form_face_m2, WithinAbs(41.2 - 4 * 0.5 + 2 * 3 * 0.3, near));
    CHECK_THAT(part.shown_m2, WithinAbs(41.2 - 4 * 0.5, near));
    CHECK_THAT(part.edges_m, WithinAbs(20 + 0.6 + 4 * 2 + 4 * 3, near));
}

TEST_CASE("a niche keeps its back and gains its sides") {
    core::WallRun run = run_of(10, 2, 300);
    run.openings = {{.name = "niche",
                     .width_mm = 400,
                     .height_mm = 300,
                     .depth_mm = 150,
                     .sill_m = 1,
                     .at_m = {},
                     .count = 3}};
    const core::WallQuantities found = core::wall_quantities(wall_of(run), practice());
    CHECK_THAT(found.total.concrete_m3, WithinAbs(6 - 3 * 0.4 * 0.3 * 0.15, near));
    CHECK_THAT(found.total.form_face_m2, WithinAbs(41.2 + 3 * 1.4 * 0.15, near));
    CHECK_THAT(found.total.shown_m2, WithinAbs(21.2 - 3 * 0.12, near));
    // where they stand is not stated, and the result says so
    const auto position =
        std::ranges::find(found.worksheet.steps, "position", &core::Step::quantity);
    REQUIRE(position != found.worksheet.steps.end());
    CHECK(position->marks == core::Marks{core::Mark::typical});
}

TEST_CASE("a door that stands on the footing has no sill") {
    core::WallRun run = run_of(10, 2.5, 200);
    run.openings = {{.name = "door",
                     .width_mm = 1000,
                     .height_mm = 2000,
                     .depth_mm = {},
                     .sill_m = 0,
                     .at_m = {4},
                     .count = 1}};
    const core::PartQuantities part = measured(run);
    CHECK_THAT(part.form_face_m2, WithinAbs(50 + 2 * 0.5 - 2 * 2 + (2 + 2 + 1) * 0.2, near));
    CHECK_THAT(part.edges_m, WithinAbs(10 + 0.4 + 5 + 5, near));
}

TEST_CASE("a batter changes the volume and slants one side") {
    core::WallRun run = run_of(10, 2, 200);
    run.bottom_thickness_mm = 400;
    const core::PartQuantities part = measured(run);
    CHECK_THAT(part.concrete_m3, WithinAbs(10 * 2 * 0.3, near));
    const double slanted_m = std::sqrt(2 * 2 + 0.2 * 0.2);
    CHECK_THAT(part.form_face_m2, WithinAbs(20 + 10 * slanted_m + 2 * 0.6, near));
    CHECK_THAT(part.shown_m2, WithinAbs(20 + 1.2, near)); // the face that shows is plumb
    CHECK_THAT(part.edges_m, WithinAbs(10 + 2 * 0.2 + 2 * 2, near));

    // Where both show, the edges of the slanted face are longer, those round an opening too.
    run.shows = core::ShownFaces::both;
    run.openings = {{.name = "window",
                     .width_mm = 1000,
                     .height_mm = 500,
                     .depth_mm = {},
                     .sill_m = 0.8,
                     .at_m = {2},
                     .count = 1}};
    CHECK_THAT(measured(run).edges_m, WithinAbs(2 * 10 + 2 * 0.2 + 2 * (2 + slanted_m) +
                                                    2 * (2 * 1 + 0.5) + 0.5 * slanted_m,
                                                near));
}

TEST_CASE("a planter holds soil and a bench shows its edges") {
    core::Wall wall = wall_of(run_of(1, 1, 100));
    wall.runs.clear();
    wall.planters = {{.name = "planter",
                      .length_m = 4,
                      .width_m = 1.6,
                      .height_m = 0.6,
                      .thickness_mm = 200,
                      .floor_mm = 150,
                      .count = 2}};
    wall.benches = {
        {.name = "bench", .length_m = 5, .depth_mm = 500, .thickness_mm = 120, .overhang_mm = 100}};
    const core::WallQuantities found = core::wall_quantities(wall, practice());
    const core::PartQuantities& planter = found.parts.at(0);
    CHECK_THAT(planter.soil_m3, WithinAbs(2 * 3.6 * 1.2 * 0.45, near));
    CHECK_THAT(planter.concrete_m3, WithinAbs(2 * (4 * 1.6 * 0.6 - 3.6 * 1.2 * 0.45), near));
    CHECK_THAT(planter.shown_m2, WithinAbs(2 * 11.2 * 0.6, near));
    CHECK_THAT(planter.form_face_m2, WithinAbs(2 * (11.2 * 0.6 + 9.6 * 0.45), near));
    CHECK_THAT(planter.edges_m, WithinAbs(2 * (11.2 + 4 * 0.6), near));
    const core::PartQuantities& bench = found.parts.at(1);
    CHECK_THAT(bench.concrete_m3, WithinAbs(0.3, near));
    CHECK_THAT(bench.shown_m2, WithinAbs(6 * 0.12 + 5 * 0.1, near));
    CHECK_THAT(bench.edges_m, WithinAbs(6 + 5.2 + 0.24, near));
    CHECK_THAT(found.total.concrete_m3, WithinAbs(planter.concrete_m3 + 0.3, near));
}

TEST_CASE("ties fill a grid and follow the top down") {
    core::Wall wall = wall_of(run_of(7.2, 1.8, 250));
    wall.runs.front().top = core::Top::stepped;
    wall.runs.front().heights = {{0, 1.8}, {3.6, 1.2}};
    wall.runs.front().shows = core::ShownFaces::both;
    wall.ties = core::Ties{core::TieKind::stainless_steel, 600, 600};
    const core::WallQuantities found = core::wall_quantities(wall, practice());
    CHECK(found.tie_grids.front().columns == 12);
    CHECK(found.tie_grids.front().rows == 3);
    CHECK(found.total.ties == 6 * 3 + 6 * 2);
    CHECK(found.total.tie_holes == 60);
    CHECK(found.worksheet.cautions.size() == 1); // who designs the forms
}

TEST_CASE("chamfers are deducted where they matter and relief is told only") {
    core::Wall wall = wall_of(run_of(10, 2, 300));
    wall.edges = core::Edges{core::EdgeKind::chamfered, 20};
    wall.boards = core::Boards{.face_width_mm = 140,
                               .thickness_mm = 20,
                               .course_mm = 140,
                               .stock_m = {4},
                               .saw_cut_mm = 3,
                               .relief_mm = 6};
    const core::WallQuantities thick = core::wall_quantities(wall, practice());
    CHECK_THAT(thick.deductions.chamfers_m3, WithinAbs(14.6 * 0.02 * 0.02 / 2, near));
    CHECK_THAT(thick.deductions.relief_at_most_m3, WithinAbs(21.2 * 0.006, near));
    CHECK_FALSE(thick.deductions.chamfers_deducted);
    CHECK(thick.deductions.relief_matters); // 2.1 %
    CHECK_THAT(thick.total.concrete_m3, WithinAbs(6, near));
    wall.runs.front() = run_of(10, 0.3, 100); // a kerb: 0.00226 of 0.3 m3
    const core::WallQuantities thin = core::wall_quantities(wall, practice());
    CHECK(thin.deductions.chamfers_deducted);
    CHECK_THAT(thin.total.concrete_m3, WithinAbs(0.3 - (10.2 + 0.6) * 0.0002, near));
    wall.edges->kind = core::EdgeKind::sharp;
    CHECK(core::wall_quantities(wall, practice()).total.chamfer_strip_m == 0);
}

TEST_CASE("the order is rounded up to the supplier's step, never down") {
    const auto [net_m3, percent, step_m3, order_m3] =
        GENERATE(table<double, double, double, double>({
            {6, 5, 0.25, 6.5},
            {6, 0, 0.25, 6},
            {0.1 * 3, 0, 0.1, 0.3}, // 0.3 in binary is not quite three steps
            {6.26, 0, 0.25, 6.5},
        }));
    CAPTURE(net_m3);
    const core::ConcreteOrder order = core::concrete_order(net_m3, {percent, step_m3});
    CHECK_THAT(order.order_m3, WithinAbs(order_m3, near));
    CHECK_THAT(core::concrete_order(net_m3, {percent, {}}).order_m3,
               WithinAbs(net_m3 * (1 + percent / 100), near));
}
