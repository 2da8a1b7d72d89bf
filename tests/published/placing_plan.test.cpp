// Lifts, vibration and trucks, as printed.

#include <boardmark/core/placing_plan.hpp>
#include <boardmark/core/vibration.hpp>

#include "as_printed.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;
using core::Verdict;

namespace {

const core::LiftRules& lifts() {
    return tables_in(UnitSystem::us).placing.lifts;
}
const core::VibrationRules& vibration() {
    return tables_in(UnitSystem::us).placing.vibration;
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
    CHECK(si.lifts.least_mm.value == 300);
    CHECK(si.lifts.most_mm.value == 500);
    CHECK(si.lifts.most_architectural_mm.value == 600);
    CHECK(si.vibration.into_lift_below_mm.value == 150);
    CHECK(si.vibration.off_the_face_mm.value == 75);
    CHECK(si.vibration.room_for_head_mm.value == 25);
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
    CHECK(plan.checks.at(0).verdict == Verdict::holds);
    CHECK(plan.checks.at(1).verdict == Verdict::watch); // nobody states when it sets
    auto known = wall;
    known.setting_h = 1;
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

TEST_CASE("lifts too high for the vibrator") {
    const core::PouredWall wall{
        .height_m = inside(50, "in") / 1000, .plan_area_m2 = 1, .lift_m = inside(25, "in") / 1000};
    CHECK(core::lift_plan(wall, lifts()).checks.at(0).verdict == Verdict::fails);
}

TEST_CASE("trucks of 6 m3 at 12 m3 an hour") {
    // Arithmetic: 20 m3 are 4 loads, one each 30 min; a round trip of 80 min keeps 3 trucks busy.
    core::TruckedPour pour{
        .volume_m3 = 20, .output_m3_h = 12, .truck_m3 = 6, .round_trip_h = 80 / 60.0};
    auto plan = core::truck_plan(pour, lifts());
    CHECK(plan.loads == 4);
    CHECK_THAT(60 * plan.interval_h, WithinAbs(30, exact));
    CHECK(plan.trucks == 3);
    CHECK_THAT(plan.pour_h, WithinAbs(20 / 12.0, exact));
    CHECK(plan.checks.at(0).verdict == Verdict::holds);
    pour.round_trip_h = 2; // may be within 90 min or not
    CHECK(core::truck_plan(pour, lifts()).checks.at(0).verdict == Verdict::watch);
    pour.haul_h = 1; // and half an hour to unload: just 90 min
    CHECK(core::truck_plan(pour, lifts()).checks.at(0).verdict == Verdict::holds);
    pour.haul_h = 1.1;
    CHECK(core::truck_plan(pour, lifts()).checks.at(0).verdict == Verdict::fails);
    // Nobody says how long the haul is, but 6 m3 at 3.9 m3 an hour take 92 min alone.
    pour = {.volume_m3 = 20, .output_m3_h = 3.9, .truck_m3 = 6, .round_trip_h = 1.25};
    CHECK(core::truck_plan(pour, lifts()).checks.at(0).verdict == Verdict::fails);
    pour.round_trip_h.reset();
    CHECK(core::truck_plan(pour, lifts()).checks.at(0).verdict == Verdict::fails);
    pour.volume_m3 = 5; // a single load of 5 m3: 77 min
    CHECK(core::truck_plan(pour, lifts()).checks.at(0).verdict == Verdict::not_checked);
}
