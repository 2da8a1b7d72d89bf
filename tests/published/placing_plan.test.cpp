// Lifts, vibration and trucks, as printed.

#include <boardmark/core/placing/placing_plan.hpp>
#include <boardmark/core/placing/vibration.hpp>

#include "as_printed.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;
using core::Verdict;

namespace {

const core::LiftRules& lifts() {
    return tables_in(UnitSystem::us).placing->lifts;
}
const core::VibrationRules& vibration() {
    return tables_in(UnitSystem::us).placing->vibration;
}

} // namespace

TEST_CASE("rules for lifts and vibration as printed") {
    // ACI 309R and ACI 303R, from memory: lifts of 12 to 20 in, architectural 24 in at most; 1 1/2
    // radii, 6 in into the lift below, 5 to 15 s, 3 in off the face. ASTM C94: 90 min.
    CHECK_THAT(in_unit(lifts().least_mm.value, "in"), WithinAbs(12, exact));
    CHECK_THAT(in_unit(lifts().most_mm.value, "in"), WithinAbs(20, exact));
    CHECK_THAT(in_unit(lifts().most_architectural_mm.value, "in"), WithinAbs(24, exact));
    CHECK_THAT(60 * lifts().discharge_h.value, WithinAbs(90, exact));
    CHECK(vibration().spacing_in_radii.value == 1.5);
    CHECK_THAT(in_unit(vibration().into_lift_below_mm.value, "in"), WithinAbs(6, exact));
    CHECK(vibration().insertion_least_s.value == 5);
    CHECK(vibration().insertion_most_s.value == 15);
    CHECK_THAT(in_unit(vibration().off_the_face_mm.value, "in"), WithinAbs(3, exact));
}

TEST_CASE("rules of the trade for placing") {
    // Common practice, no source: 45 min between lifts, half of the setting time, an inch of room.
    CHECK_THAT(60 * lifts().between_lifts_h.value, WithinAbs(45, exact));
    CHECK(lifts().part_of_setting_percent.value == 50);
    CHECK_THAT(in_unit(vibration().room_for_head_mm.value, "in"), WithinAbs(1, exact));
    CHECK(lifts().between_lifts_h.source.confidence == core::Confidence::common_practice);
    // Metric cells are the trade's rounded twins.
    const auto& si = tables_in(UnitSystem::si).placing;
    CHECK(si->lifts.least_mm.value == 300);
    CHECK(si->lifts.most_mm.value == 500);
    CHECK(si->lifts.most_architectural_mm.value == 600);
    CHECK(si->vibration.into_lift_below_mm.value == 150);
    CHECK(si->vibration.off_the_face_mm.value == 75);
    CHECK(si->vibration.room_for_head_mm.value == 25);
}

TEST_CASE("radius of action by the head's diameter as printed") {
    // ACI 309R, from memory: 3/4 to 1 1/2 in act 3 to 6 in, 1 1/4 to 2 1/2 in 5 to 10 in, 2 to 3
    // 1/2 in 7 to 14 in; where groups overlap the smaller.
    const auto [head_in, radius_in] =
        GENERATE(table<double, double>({{0.75, 3}, {1.25, 5}, {1.5, 6}, {2, 7}, {3.5, 14}}));
    INFO(head_in);
    const auto radius_mm = core::radius_of_action_mm(inside(head_in, "in"), vibration());
    REQUIRE(radius_mm);
    CHECK_THAT(in_unit(*radius_mm, "in"), WithinAbs(radius_in, exact));
    CHECK_FALSE(core::radius_of_action_mm(inside(4, "in"), vibration()));
    CHECK_FALSE(core::radius_of_action_mm(inside(0.5, "in"), vibration()));
}

TEST_CASE("insertions of a head that acts 7 in") {
    // 1 1/2 x 7 = 10 1/2 in apart: ACI 309R's rule. 20 ft take 22.9, so 23, in one row.
    const auto plan = core::vibration_plan({.length_m = inside(20, "ft") / 1000,
                                            .thickness_mm = inside(10, "in"),
                                            .lift_m = inside(20, "in") / 1000,
                                            .radius_mm = inside(7, "in")},
                                           vibration());
    CHECK_THAT(in_unit(plan.spacing_mm, "in"), WithinAbs(10.5, exact));
    CHECK(plan.rows == 1);
    CHECK(plan.insertions == 23);
    CHECK_THAT(in_unit(plan.immersion_mm, "in"), WithinAbs(26, exact));
    CHECK_THAT(plan.least_minutes, WithinAbs(23 * 5 / 60.0, exact));
}

TEST_CASE("20 in lifts at 4 ft an hour") {
    // 20/12 ft over 4 ft/h: 25 min.
    const core::PouredWall wall{
        .height_m = inside(80, "in") / 1000, .plan_area_m2 = 1, .rise_m_h = inside(4, "ft") / 1000};
    const auto plan = core::lift_plan(wall, lifts());
    CHECK(plan.lifts == 4);
    REQUIRE(plan.between_lifts_min);
    CHECK_THAT(*plan.between_lifts_min, WithinAbs(25, exact));
    CHECK(plan.checks.at(0).verdict == Verdict::watch); // a limit from memory
    CHECK(plan.checks.at(1).verdict == Verdict::watch); // nobody states when it sets
    auto known = wall;
    known.setting_h = 1;
    known.haul_h = 0;
    CHECK(core::lift_plan(known, lifts()).checks.at(1).verdict == Verdict::watch); // by whom?
    known.output_m3_h = 2; // m3/h into 1 m2: faster than the 4 ft/h
    CHECK(core::lift_plan(known, lifts()).checks.at(1).verdict == Verdict::holds);
}

TEST_CASE("a crew's output over the plan of the form sets the rise") {
    core::PouredWall wall{.height_m = 2, .plan_area_m2 = 5, .output_m3_h = 5};
    CHECK_THAT(*core::lift_plan(wall, lifts()).rise_m_h, WithinAbs(1, 1e-12));
    wall.rise_m_h = 0.5; // the slower holds
    CHECK_THAT(*core::lift_plan(wall, lifts()).rise_m_h, WithinAbs(0.5, 1e-12));
    wall.setting_h = 1; // half an hour is left, a lift of 0.5 m takes an hour
    const auto late = core::lift_plan(wall, lifts());
    CHECK(late.checks.at(1).verdict == Verdict::fails);
    wall.setting_h = std::nullopt; // a rule of thumb only warns
    CHECK(core::lift_plan(wall, lifts()).checks.at(1).verdict == Verdict::watch);
    wall = {.height_m = 2, .plan_area_m2 = 5};
    CHECK(core::lift_plan(wall, lifts()).checks.at(1).verdict == Verdict::not_checked);
}

TEST_CASE("setting counts from batching, so the haul ages a lift before it is placed") {
    struct Row {
        std::optional<double> haul_h, round_trip_h;
        double output_m3_h;
        Verdict verdict;
        double wait_min;
    };
    // Lifts of 0.5 m3. Of 2 h to setting half may pass (data/placing.yaml), 60 min.
    const Row row = GENERATE(values<Row>({
        {0.0, {}, 1, Verdict::holds, 60},        // 30 min
        {0.5, {}, 1, Verdict::holds, 30},        // 60 min
        {0.6, {}, 1, Verdict::fails, 24},        // 66 min
        {1.25, 2.5, 1, Verdict::fails, 0},       // it has set on arrival
        {{}, 1.0, 1, Verdict::holds, 30},        // half a round trip: 60 min
        {{}, 1.2, 1, Verdict::watch, 24},        // 66 min at most: who knows the haul?
        {{}, 1.2, 0.4, Verdict::fails, 24},      // 75 min whatever the haul
        {{}, {}, 1, Verdict::watch, 60},         // nobody states a haul
        {0.25, 2.5, 1, Verdict::holds, 60 - 15}, // a stated haul counts
    }));
    const core::PouredWall wall{.height_m = 1,
                                .plan_area_m2 = 1,
                                .output_m3_h = row.output_m3_h,
                                .setting_h = 2,
                                .haul_h = row.haul_h,
                                .round_trip_h = row.round_trip_h};
    const auto plan = core::lift_plan(wall, lifts());
    REQUIRE(plan.lifts == 2);
    CHECK(plan.checks.at(1).verdict == row.verdict);
    CHECK_THAT(plan.longest_wait_min, WithinAbs(row.wait_min, 1e-9));
}

TEST_CASE("lifts too high for the vibrator") {
    const core::PouredWall wall{
        .height_m = inside(50, "in") / 1000, .plan_area_m2 = 1, .lift_m = inside(25, "in") / 1000};
    CHECK(core::lift_plan(wall, lifts()).checks.at(0).verdict == Verdict::fails);
}

namespace {

/// Lifts of 1 m3 that all fill as fast.
core::UnloadedPart even(std::string name, int m3, double m3_h) {
    return {.name = std::move(name),
            .lifts = std::vector<core::FilledLift>(std::size_t(m3), {1, 1 / m3_h})};
}

} // namespace

TEST_CASE("trucks of 6 m3 at 12 m3 an hour") {
    // Arithmetic: 20 m3 are 4 loads, one each 30 min; a round trip of 80 min keeps 3 trucks busy.
    const core::TruckedPour pour{
        .order_m3 = 20, .truck_m3 = 6, .parts = {even("wall", 20, 12)}, .round_trip_h = 80 / 60.0};
    const auto plan = core::truck_plan(pour, lifts());
    REQUIRE(plan);
    CHECK(plan->loads == 4);
    CHECK_THAT(60 * plan->longest.hours, WithinAbs(30, exact));
    CHECK_THAT(60 * plan->shortest.hours, WithinAbs(30, exact));
    CHECK(plan->trucks == 3);
    CHECK_THAT(plan->pour_h, WithinAbs(20 / 12.0, exact));
    CHECK_FALSE(
        core::truck_plan({.order_m3 = 20, .truck_m3 = 6, .parts = {{"wall", {}}}}, lifts()));
}

TEST_CASE("a truck is back after both ways and its unloading at the soonest") {
    // Arithmetic: 6 m3 at 8 m3 an hour take 45 min; 30 + 45 + 30 = 105 min keep 3 trucks busy,
    // where a round trip of 80 would keep 2. One of 140 keeps 4 and counts itself.
    for (const auto& [round_trip_min, trucks] : {std::pair{80, 3}, std::pair{140, 4}}) {
        const auto plan = core::truck_plan({.order_m3 = 30,
                                            .truck_m3 = 6,
                                            .parts = {even("wall", 30, 8)},
                                            .round_trip_h = round_trip_min / 60.0,
                                            .haul_h = 0.5},
                                           lifts());
        REQUIRE(plan);
        CHECK(plan->trucks == trucks);
    }
}

TEST_CASE("a load that is placed later than its slump is judged for is to be watched") {
    // 6 m3 at 12 m3 an hour take 30 min after a haul of 20: 50.
    for (const auto& [stated_min, verdict] :
         {std::pair{50, Verdict::holds}, std::pair{49, Verdict::watch}}) {
        const auto plan = core::truck_plan({.order_m3 = 20,
                                            .truck_m3 = 6,
                                            .parts = {even("wall", 20, 12)},
                                            .haul_h = 20 / 60.0,
                                            .time_to_place_h = stated_min / 60.0},
                                           lifts());
        REQUIRE(plan);
        CHECK(plan->checks.at(0).verdict == verdict);
    }
}

TEST_CASE("from batching to the end of discharge") {
    // ASTM C94, from memory: 90 min. 6 m3 at 12 m3 an hour take 30, at 3.9 an hour 92.
    struct Case {
        const char* why;
        double m3_h;
        int part_m3;
        std::optional<double> haul_min;
        std::optional<double> round_trip_min;
        Verdict verdict;
    };
    const Case one = GENERATE(values<Case>({
        {"haul and unloading are just 90", 12, 20, 60, {}, Verdict::holds},
        {"a little more", 12, 20, 61, {}, Verdict::fails},
        {"the haul counts, not the round trip", 12, 20, 60, 120, Verdict::holds},
        {"any haul of such a round trip holds", 12, 20, {}, 60, Verdict::holds},
        {"not every haul does", 12, 20, {}, 61, Verdict::watch},
        {"unloading takes the whole round trip", 4.8, 20, {}, 75, Verdict::watch},
        {"unloading alone is too long", 3.9, 20, {}, 10, Verdict::fails},
        {"whatever the way", 3.9, 20, {}, {}, Verdict::fails},
        {"nobody tells the way", 12, 20, {}, {}, Verdict::not_checked},
        {"a small part, and the whole load were in time", 12, 2, 60, {}, Verdict::holds},
        {"a small part; the rest is not in time at its pace", 3.9, 2, 15, {}, Verdict::watch},
        {"a small part that is late itself", 1.2, 2, {}, {}, Verdict::fails},
    }));
    INFO(one.why);
    const auto hours = [](std::optional<double> minutes) {
        return minutes ? std::optional{*minutes / 60} : std::nullopt;
    };
    const auto plan = core::truck_plan({.order_m3 = 20,
                                        .truck_m3 = 6,
                                        .parts = {even("part", one.part_m3, one.m3_h)},
                                        .round_trip_h = hours(one.round_trip_min),
                                        .haul_h = hours(one.haul_min)},
                                       lifts());
    REQUIRE(plan);
    CHECK(plan->checks.at(0).verdict == one.verdict);
    CHECK(plan->checks.at(0).part == "part");
}

TEST_CASE("the slowest load of the slowest part sets the longest interval") {
    // Arithmetic: lifts of 3 m3 in 1 h and 1 m3 in 1 h, loads of 2: the last takes 1 h and 1/3.
    const auto plan = core::truck_plan({.order_m3 = 8,
                                        .truck_m3 = 2,
                                        .parts = {{"tower", {{3, 1}, {1, 1}}}, even("run", 4, 4)},
                                        .round_trip_h = 1},
                                       lifts());
    REQUIRE(plan);
    CHECK(plan->longest.part == "tower");
    CHECK_THAT(plan->longest.hours, WithinAbs(4.0 / 3, exact));
    CHECK(plan->shortest.part == "run");
    CHECK_THAT(plan->shortest.hours, WithinAbs(0.5, exact));
    CHECK(plan->trucks == 2);
    CHECK_THAT(plan->pour_h, WithinAbs(3, exact));
}

TEST_CASE("one load comes from one truck") {
    const auto plan = core::truck_plan(
        {.order_m3 = 4, .truck_m3 = 6, .parts = {even("wall", 4, 12)}, .round_trip_h = 1}, lifts());
    REQUIRE(plan);
    CHECK(core::told(*plan).text == "One load, from one truck");
}
