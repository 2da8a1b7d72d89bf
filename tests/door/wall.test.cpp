// The way of a wall into the computation: each number made impossible, what is needed left out.

#include <boardmark/core/wall/complete_wall.hpp>
#include <boardmark/core/wall/wall_plan.hpp>
#include <boardmark/reference/tables.hpp>

#include "mutators.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <limits>

using namespace boardmark;
using namespace boardmark::test;
using core::Field;
using core::Wall;

namespace {

core::Wall whole_wall() {
    core::WallRun run{.name = "quay wall",
                      .length_m = 12,
                      .top = core::Top::stepped,
                      .heights = {{0, 2}, {6, 1.5}},
                      .thickness_mm = 250,
                      .bottom_thickness_mm = 300};
    run.corners = 1;
    run.corners_at = {{6, 90}};
    run.footing = core::Footing{.width_mm = 900, .depth_mm = 300, .cover_mm = 75};
    run.openings = {{.name = "lamp",
                     .width_mm = 300,
                     .height_mm = 200,
                     .depth_mm = 100,
                     .sill_m = 0.5,
                     .at_m = {1, 4},
                     .count = 2}};
    run.output_m3_h = 8;
    core::WallWork work{.runs = {run}};
    work.planters = {{.name = "planter",
                      .length_m = 3,
                      .width_m = 1.5,
                      .height_m = 0.8,
                      .thickness_mm = 150,
                      .floor_mm = 120}};
    work.benches = {{.name = "bench",
                     .length_m = 4,
                     .depth_mm = 500,
                     .thickness_mm = 120,
                     .overhang_mm = 100,
                     .span_m = 1.5,
                     .live_load_kpa = 4.8,
                     .cover_mm = 40}};
    work.embedments = {{"anchor", 4}};
    work.boards = core::Boards{.face_width_mm = 140,
                               .thickness_mm = 25,
                               .course_mm = 140,
                               .stock_m = {2.4, 3.6},
                               .saw_cut_mm = 3,
                               .relief_mm = 6};
    work.ties = core::Ties{.kind = core::TieKind::stainless_steel,
                           .across_mm = 600,
                           .up_mm = 600,
                           .working_load_kn = 13,
                           .breaking_load_kn = {},
                           .first_mm = 200,
                           .cone_mm = 38};
    work.edges = core::Edges{core::EdgeKind::chamfered, 20};
    work.joints = {.spacing_m = 4, .groove_mm = 60};
    work.reinforcement = core::Reinforcement{.vertical = core::BarGrid{12, 113, 300},
                                             .horizontal = core::BarGrid{12, 113, 250},
                                             .layers = 2,
                                             .cover_mm = 50};
    work.placing.rise_m_h = 1;
    work.placing.output_m3_h = 6;
    work.placing.lift_m = 0.45;
    work.placing.concrete_c = 18;
    work.placing.air_c = 15;
    work.placing.humidity_percent = 60;
    work.placing.wind_km_h = 10;
    work.placing.setting_h = 4;
    work.placing.truck_m3 = 6;
    work.placing.round_trip_min = 60;
    work.placing.form_pressure_kpa = 48;
    work.mockup = core::Mockup{.length_m = 2, .height_m = 2, .thickness_mm = 250};
    work.panels = core::PanelWishes{
        .factors = {{"species", {"fir", "spruce"}}, {"release_agent", {"oil", "wax"}}},
        .pairs = {{0, 1}},
        .number = 4,
        .length_m = 1.2,
        .height_m = 0.9,
        .thickness_mm = 200,
        .mixer_m3 = 0.5,
        .allowance_percent = 10,
        .viewing = {.distance_m = 3, .age_d = 28}};
    work.order = {.waste_percent = 7, .increment_m3 = 0.5};
    work.prices = core::WallPrices{"EUR", {{"boards", {10, 12, 15}}}};
    return {std::move(work), "quay terrace", core::UnitSystem::si,
            std::get<core::CompleteSubmittedMix>(
                core::complete(whole_submittal(), reference::vocabulary()))};
}

std::string told(const core::Faults& faults) {
    std::string text;
    for (const core::Fault& fault : faults) {
        text += fault.message + "\n";
    }
    return text;
}

bool names(const core::Faults& faults, Field field) {
    return std::ranges::any_of(faults, [&](const core::Fault& fault) {
        return fault.field == field && !fault.message.empty();
    });
}

/// A number of a wall, and how it is set.
struct WallNumber {
    Field field;
    void (*set)(Wall&, double);
};

constexpr WallNumber numbers[] = {
    {Field::run_length, [](Wall& wall, double x) { wall.runs[0].length_m = x; }},
    {Field::run_heights, [](Wall& wall, double x) { wall.runs[0].heights[1].height_m = x; }},
    {Field::run_heights, [](Wall& wall, double x) { wall.runs[0].heights[1].station_m = x; }},
    {Field::run_thickness, [](Wall& wall, double x) { wall.runs[0].thickness_mm = x; }},
    {Field::run_thickness, [](Wall& wall, double x) { wall.runs[0].bottom_thickness_mm = x; }},
    {Field::run_corners, [](Wall& wall, double x) { wall.runs[0].corners_at[0].station_m = x; }},
    {Field::run_corners, [](Wall& wall, double x) { wall.runs[0].corners_at[0].turn_deg = x; }},
    {Field::footing, [](Wall& wall, double x) { wall.runs[0].footing->width_mm = x; }},
    {Field::footing, [](Wall& wall, double x) { wall.runs[0].footing->depth_mm = x; }},
    {Field::footing, [](Wall& wall, double x) { wall.runs[0].footing->cover_mm = x; }},
    {Field::opening, [](Wall& wall, double x) { wall.runs[0].openings[0].width_mm = x; }},
    {Field::opening, [](Wall& wall, double x) { wall.runs[0].openings[0].height_mm = x; }},
    {Field::opening, [](Wall& wall, double x) { wall.runs[0].openings[0].depth_mm = x; }},
    {Field::opening, [](Wall& wall, double x) { wall.runs[0].openings[0].sill_m = x; }},
    {Field::opening, [](Wall& wall, double x) { wall.runs[0].openings[0].at_m[1] = x; }},
    {Field::part_output, [](Wall& wall, double x) { wall.runs[0].output_m3_h = x; }},
    {Field::planter, [](Wall& wall, double x) { wall.planters[0].length_m = x; }},
    {Field::planter, [](Wall& wall, double x) { wall.planters[0].width_m = x; }},
    {Field::planter, [](Wall& wall, double x) { wall.planters[0].height_m = x; }},
    {Field::planter, [](Wall& wall, double x) { wall.planters[0].thickness_mm = x; }},
    {Field::planter, [](Wall& wall, double x) { wall.planters[0].floor_mm = x; }},
    {Field::part_output, [](Wall& wall, double x) { wall.planters[0].output_m3_h = x; }},
    {Field::bench, [](Wall& wall, double x) { wall.benches[0].length_m = x; }},
    {Field::bench, [](Wall& wall, double x) { wall.benches[0].depth_mm = x; }},
    {Field::bench, [](Wall& wall, double x) { wall.benches[0].thickness_mm = x; }},
    {Field::bench, [](Wall& wall, double x) { wall.benches[0].overhang_mm = x; }},
    {Field::bench, [](Wall& wall, double x) { wall.benches[0].span_m = x; }},
    {Field::bench, [](Wall& wall, double x) { wall.benches[0].live_load_kpa = x; }},
    {Field::bench, [](Wall& wall, double x) { wall.benches[0].cover_mm = x; }},
    {Field::board_face, [](Wall& wall, double x) { wall.boards->face_width_mm = x; }},
    {Field::board_thickness, [](Wall& wall, double x) { wall.boards->thickness_mm = x; }},
    {Field::board_course, [](Wall& wall, double x) { wall.boards->course_mm = x; }},
    {Field::board_stock, [](Wall& wall, double x) { wall.boards->stock_m[1] = x; }},
    {Field::board_saw_cut, [](Wall& wall, double x) { wall.boards->saw_cut_mm = x; }},
    {Field::board_spoiled, [](Wall& wall, double x) { wall.boards->spoiled_percent = x; }},
    {Field::board_relief, [](Wall& wall, double x) { wall.boards->relief_mm = x; }},
    {Field::tie_spacing, [](Wall& wall, double x) { wall.ties->across_mm = x; }},
    {Field::tie_spacing, [](Wall& wall, double x) { wall.ties->up_mm = x; }},
    {Field::tie_spacing, [](Wall& wall, double x) { wall.ties->first_mm = x; }},
    {Field::tie_load, [](Wall& wall, double x) { wall.ties->working_load_kn = x; }},
    {Field::tie_load, [](Wall& wall, double x) { wall.ties->breaking_load_kn = x; }},
    {Field::tie_cone, [](Wall& wall, double x) { wall.ties->cone_mm = x; }},
    {Field::edges, [](Wall& wall, double x) { wall.edges->size_mm = x; }},
    {Field::joints, [](Wall& wall, double x) { wall.joints.spacing_m = x; }},
    {Field::joints, [](Wall& wall, double x) { wall.joints.groove_mm = x; }},
    {Field::bars, [](Wall& wall, double x) { wall.reinforcement->vertical->bar_mm = x; }},
    {Field::bars, [](Wall& wall, double x) { wall.reinforcement->vertical->area_mm2 = x; }},
    {Field::bars, [](Wall& wall, double x) { wall.reinforcement->horizontal->spacing_mm = x; }},
    {Field::bars, [](Wall& wall, double x) { wall.reinforcement->cover_mm = x; }},
    {Field::bars, [](Wall& wall, double x) { wall.reinforcement->yield_strength_mpa = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.rise_m_h = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.output_m3_h = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.lift_m = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.concrete_c = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.air_c = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.humidity_percent = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.wind_km_h = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.setting_h = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.truck_m3 = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.round_trip_min = x; }},
    {Field::placing, [](Wall& wall, double x) { wall.placing.form_pressure_kpa = x; }},
    {Field::mockup, [](Wall& wall, double x) { wall.mockup->length_m = x; }},
    {Field::mockup, [](Wall& wall, double x) { wall.mockup->height_m = x; }},
    {Field::mockup, [](Wall& wall, double x) { wall.mockup->thickness_mm = x; }},
    {Field::sample_panels, [](Wall& wall, double x) { wall.panels->length_m = x; }},
    {Field::sample_panels, [](Wall& wall, double x) { wall.panels->height_m = x; }},
    {Field::sample_panels, [](Wall& wall, double x) { wall.panels->thickness_mm = x; }},
    {Field::sample_panels, [](Wall& wall, double x) { wall.panels->mixer_m3 = x; }},
    {Field::sample_panels, [](Wall& wall, double x) { wall.panels->allowance_percent = x; }},
    {Field::sample_panels, [](Wall& wall, double x) { wall.panels->viewing.distance_m = x; }},
    {Field::sample_panels, [](Wall& wall, double x) { wall.panels->viewing.age_d = x; }},
    {Field::order, [](Wall& wall, double x) { wall.order.waste_percent = x; }},
    {Field::order, [](Wall& wall, double x) { wall.order.increment_m3 = x; }},
    {Field::wall_prices, [](Wall& wall, double x) { wall.prices->item.at("boards").likely = x; }},
};

/// A change after which no wall can be planned, and the field that must be named.
struct WallFault {
    const char* what;
    Field field;
    void (*make)(Wall&);
};

/// The opening of the whole wall at another size or place.
struct OtherOpening {
    double width_mm = 1000;
    double height_mm = 1000;
    std::vector<double> at_m = {1};
    int count = 1;
};

void set_opening(Wall& wall, const OtherOpening& other) {
    core::Opening& opening = wall.runs[0].openings[0];
    opening.width_mm = other.width_mm;
    opening.height_mm = other.height_mm;
    opening.sill_m = 0;
    opening.at_m = other.at_m;
    opening.count = other.count;
}

const std::vector<WallFault> faulty{
    {"nothing to build", Field::runs,
     [](Wall& wall) {
         wall.runs.clear();
         wall.planters.clear();
         wall.benches.clear();
     }},
    {"no height", Field::run_heights, [](Wall& wall) { wall.runs[0].heights.clear(); }},
    {"heights that begin late", Field::run_heights,
     [](Wall& wall) { wall.runs[0].heights[0].station_m = 1; }},
    {"heights out of order", Field::run_heights,
     [](Wall& wall) { std::swap(wall.runs[0].heights[0], wall.runs[0].heights[1]); }},
    {"a level top with two heights", Field::run_heights,
     [](Wall& wall) { wall.runs[0].top = core::Top::level; }},
    {"other bends than counted", Field::run_corners, [](Wall& wall) { wall.runs[0].corners = 2; }},
    {"other openings than counted", Field::opening,
     [](Wall& wall) { wall.runs[0].openings[0].count = 3; }},
    {"no opening", Field::opening,
     [](Wall& wall) {
         wall.runs[0].openings[0].at_m.clear();
         wall.runs[0].openings[0].count = 0;
     }},
    {"an opening wider than its run", Field::opening,
     [](Wall& wall) { set_opening(wall, {.width_mm = 13000}); }},
    {"an opening higher than its run", Field::opening,
     [](Wall& wall) { set_opening(wall, {.height_mm = 2500}); }},
    {"an opening higher than its run is there", Field::opening,
     [](Wall& wall) { set_opening(wall, {.height_mm = 1800, .at_m = {7}}); }},
    {"an opening that begins where the run ends", Field::opening,
     [](Wall& wall) { set_opening(wall, {.at_m = {12}}); }},
    {"two openings on one another", Field::opening,
     [](Wall& wall) {
         set_opening(wall, {.at_m = {1, 1.0001}, .count = 2});
     }},
    {"an opening in another one", Field::opening,
     [](Wall& wall) {
         wall.runs[0].openings.push_back({.name = "vent",
                                          .width_mm = 100,
                                          .height_mm = 100,
                                          .depth_mm = {},
                                          .sill_m = 0.55,
                                          .at_m = {1.1},
                                          .count = 1});
     }},
    {"more openings than the run has room for", Field::opening,
     [](Wall& wall) { set_opening(wall, {.at_m = {}, .count = 500}); }},
    {"two kinds that have no room beside each other", Field::opening,
     [](Wall& wall) {
         const double width_mm = 1000 * wall.runs[0].length_m;
         wall.runs[0].openings = {
             {"slot", 0.6 * width_mm, 200, std::nullopt, 0.3, {}, 1},
             {"vent", 0.5 * width_mm, 200, std::nullopt, 0.4, {}, 1},
         };
     }},
    {"two kinds that cut away more than there is", Field::opening,
     [](Wall& wall) {
         const double width_mm = 1000 * wall.runs[0].length_m;
         const double height_mm = 1000 * wall.runs[0].heights[0].height_m;
         wall.runs[0].openings = {
             {"slot", 0.8 * width_mm, 0.9 * height_mm, std::nullopt, {}, {}, 1},
             {"vent", 0.8 * width_mm, 0.9 * height_mm, std::nullopt, {}, {}, 1},
         };
     }},
    {"a niche through the wall", Field::opening,
     [](Wall& wall) { wall.runs[0].openings[0].depth_mm = 900; }},
    {"a foot thinner than the top", Field::run_thickness,
     [](Wall& wall) { wall.runs[0].bottom_thickness_mm = 100; }},
    {"a footing narrower than its wall", Field::footing,
     [](Wall& wall) { wall.runs[0].footing->width_mm = 200; }},
    {"a working load and a breaking load", Field::tie_load,
     [](Wall& wall) { wall.ties->breaking_load_kn = 10; }},
    {"cones that meet", Field::tie_cone, [](Wall& wall) { wall.ties->cone_mm = 75; }},
    {"a groove through the wall", Field::joints, [](Wall& wall) { wall.joints.groove_mm = 150; }},
    {"bars that touch", Field::bars,
     [](Wall& wall) { wall.reinforcement->vertical->spacing_mm = 5; }},
    {"an area of another bar", Field::bars,
     [](Wall& wall) { wall.reinforcement->vertical->area_mm2 = 5000; }},
    {"a cover without room for bars", Field::bars,
     [](Wall& wall) { wall.reinforcement->cover_mm = 110; }},
    {"bars in the relief of the boards", Field::bars,
     [](Wall& wall) { wall.boards->relief_mm = 50; }},
    {"a planter without room", Field::planter,
     [](Wall& wall) { wall.planters[0].thickness_mm = 800; }},
    {"a planter full of floor", Field::planter,
     [](Wall& wall) { wall.planters[0].floor_mm = 800; }},
    {"no planter", Field::part_count, [](Wall& wall) { wall.planters[0].count = 0; }},
    {"no bench", Field::part_count, [](Wall& wall) { wall.benches[0].count = 0; }},
    {"one name twice", Field::part_name, [](Wall& wall) { wall.benches[0].name = "quay wall"; }},
    {"no stock", Field::board_stock, [](Wall& wall) { wall.boards->stock_m.clear(); }},
    {"boards never used", Field::board_uses, [](Wall& wall) { wall.boards->uses = 0; }},
    {"no layer of bars", Field::bars, [](Wall& wall) { wall.reinforcement->layers = 0; }},
    {"a flow class that is none", Field::placing, [](Wall& wall) { wall.placing.flow_class = 9; }},
    {"a method of pressure that is none", Field::placing,
     [](Wall& wall) { wall.placing.pressure_method = "nonsense"; }},
    {"no mock-up", Field::mockup, [](Wall& wall) { wall.mockup->number = 0; }},
    {"no factor", Field::sample_panels, [](Wall& wall) { wall.panels->factors.clear(); }},
    {"one level", Field::sample_panels,
     [](Wall& wall) { wall.panels->factors[0].levels.resize(1); }},
    {"a pair of one factor", Field::sample_panels,
     [](Wall& wall) {
         wall.panels->pairs = {{1, 1}};
     }},
    {"too few panels", Field::sample_panels, [](Wall& wall) { wall.panels->number = 3; }},
    {"no anchor", Field::embedments, [](Wall& wall) { wall.embedments[0].count = 0; }},
    {"a price below its range", Field::wall_prices,
     [](Wall& wall) { wall.prices->item.at("boards").high = 1; }},
};

} // namespace

TEST_CASE("A wall that states everything passes the door and is planned") {
    INFO(told(core::faults_of(whole_wall())));
    const auto entered = core::complete(whole_wall());
    REQUIRE(std::holds_alternative<core::CompleteWall>(entered));
    const auto plan = core::plan_wall(std::get<core::CompleteWall>(entered),
                                      reference::tables(core::UnitSystem::si));
    CHECK(plan);
}

TEST_CASE("A number of a wall that is none, or beyond all reach, is a fault of its field") {
    const double infinite = std::numeric_limits<double>::infinity();
    for (const WallNumber& number : numbers) {
        for (const double wrong :
             {std::numeric_limits<double>::quiet_NaN(), infinite, -infinite, -1e9, 1e9}) {
            Wall wall = whole_wall();
            number.set(wall, wrong);
            const core::Faults faults = core::faults_of(wall);
            INFO(core::name_of(number.field) << " " << wrong << ": " << told(faults));
            CHECK(names(faults, number.field));
            CHECK(std::holds_alternative<core::Faults>(core::complete(wall)));
        }
    }
}

TEST_CASE("What a wall lacks or says against itself is a fault of its field") {
    for (const WallFault& wrong : faulty) {
        Wall wall = whole_wall();
        wrong.make(wall);
        const core::Faults faults = core::faults_of(wall);
        INFO(wrong.what << ": " << told(faults));
        CHECK(names(faults, wrong.field));
    }
}
