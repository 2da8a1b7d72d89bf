// How fast a form fills: plan areas, rates, times of lifts, by hand in feet. Plain geometry and
// arithmetic; the limits that they are held against have their sources elsewhere.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/wall/form_rise.hpp>

#include "core/wall/form_forces.hpp"
#include "walls.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

constexpr double ft = 0.3048;
const double yd3 = 27 * ft * ft * ft;

const core::Tables& us_tables() {
    static const core::Tables tables = reference::tables(core::UnitSystem::us);
    return tables;
}

/// In feet and inches.
core::WallRun run_in_feet(double length_ft, std::vector<core::HeightAt> heights_ft,
                          double thickness_in, double bottom_in) {
    core::WallRun run = run_of(length_ft * ft, 1, 25.4 * thickness_in);
    run.bottom_thickness_mm = 25.4 * bottom_in;
    run.top = heights_ft.size() > 1 ? core::Top::stepped : core::Top::level;
    run.heights = std::move(heights_ft);
    for (core::HeightAt& at : run.heights) {
        at.station_m *= ft;
        at.height_m *= ft;
    }
    return run;
}

core::Opening hole(double width_ft, double height_ft, double sill_ft, std::vector<double> at_ft,
                   double depth_ft = 0) {
    core::Opening opening{.name = "hole",
                          .width_mm = 1000 * ft * width_ft,
                          .height_mm = 1000 * ft * height_ft,
                          .depth_mm = {},
                          .sill_m = sill_ft * ft,
                          .at_m = {},
                          .count = static_cast<int>(at_ft.size())};
    for (const double station_ft : at_ft) {
        opening.at_m.push_back(station_ft * ft);
    }
    if (depth_ft > 0) {
        opening.depth_mm = 1000 * ft * depth_ft;
    }
    return opening;
}

core::WallRun with(core::WallRun run, core::Opening opening) {
    run.openings.push_back(std::move(opening));
    return run;
}

core::WallRun sloping(core::WallRun run) {
    run.top = core::Top::sloping;
    return run;
}

core::Opening without_sill(core::Opening opening) {
    opening.sill_m.reset();
    return opening;
}

core::Opening without_stations(core::Opening opening) {
    opening.at_m.clear();
    return opening;
}

double plan_ft2(const core::WallRun& run) {
    return core::formed_wall(run, {}, us_tables()).smallest_plan_m2 / (ft * ft);
}

const core::WallRun tower = run_in_feet(60, {{0, 14}, {5, 4}}, 12, 12);

} // namespace

TEST_CASE("rise from output over the smallest plan area") {
    struct Form {
        const char* what;
        core::WallRun run;
        double plan_ft2;
        double output_yd3_h;
        double rise_ft_h; // output x 27 / plan
    };
    const auto form = GENERATE(values<Form>({
        {"90 ft by 12 in", run_in_feet(90, {{0, 8}}, 12, 12), 90, 20, 6},
        {"a tower of 5 ft on a run of 60 ft: 5 x 1", tower, 5, 8, 43.2},
        {"the same tower alone", run_in_feet(5, {{0, 14}}, 12, 12), 5, 8, 43.2},
        {"battered, 10 in at the top: 40 x 10/12", run_in_feet(40, {{0, 9}}, 10, 16), 33.3333, 10,
         8.1},
        {"beside an opening through it: 30 - 12",
         with(run_in_feet(30, {{0, 8}}, 12, 12), hole(12, 4, 2, {9})), 18, 8, 12},
        {"beside two: 30 - 2 x 8", with(run_in_feet(30, {{0, 8}}, 12, 12), hole(8, 4, 2, {3, 18})),
         14, 7, 13.5},
        {"below an opening in a batter, thicker: (30 - 12) x 14/12 against 30 x 10/12 above it",
         with(run_in_feet(30, {{0, 8}}, 10, 20), hole(12, 2, 3, {9})),
         18 * (20 - 10 * 5 / 8.0) / 12, 8, 216 / (18 * 13.75 / 12)},
        {"beside three niches: 60 - 3 x 1.5 x 0.5",
         with(run_in_feet(60, {{0, 6}}, 12, 12), hole(1.5, 1, 3, {12, 30, 48}, 0.5)), 57.75, 8,
         3.7403},
        {"an opening in the wide part below a tower: the tower", with(tower, hole(20, 2, 1, {30})),
         5, 8, 43.2},
        {"an opening in the tower: 5 - 3", with(tower, hole(3, 2, 8, {1})), 2, 8, 108},
        // 600 psf under 150 lb/ft3 are 4 ft of head: the mean of the top 4 ft
        {"sloping from 12 ft to 8 ft: half of 60 x 4 / 4",
         sloping(run_in_feet(60, {{0, 12}, {60, 8}}, 12, 12)), 30, 8, 7.2},
        {"sloping from 12 ft to 6 ft: half of 40 x 4 / 4",
         sloping(run_in_feet(60, {{0, 12}, {60, 6}}, 12, 12)), 20, 8, 10.8},
        {"sloping by 1 ft: 60 x 3.5 / 4", sloping(run_in_feet(60, {{0, 12}, {60, 11}}, 12, 12)),
         52.5, 8, 216 / 52.5},
    }));
    INFO(form.what);
    CHECK_THAT(plan_ft2(form.run), WithinAbs(form.plan_ft2, 1e-3));
    core::WallPlacing placing;
    placing.output_m3_h = form.output_yd3_h * yd3;
    const core::FormedWall formed = core::formed_wall(form.run, placing, us_tables());
    const core::FormRise rise{formed.smallest_plan_m2, {}, formed.output_m3_h};
    CHECK_THAT(*rise.by_output_m_h() / ft, WithinAbs(form.rise_ft_h, 1e-3));
    CHECK(rise.by() == core::RiseBy::output);
}

TEST_CASE("what is not known of an opening is taken where the form is narrowest") {
    const core::Opening known = hole(3, 2, 1, {40}); // in the wide part: 57 ft2 against 5
    CHECK_THAT(plan_ft2(with(tower, known)), WithinAbs(5, 1e-6));
    CHECK_THAT(plan_ft2(with(tower, without_stations(without_sill(known)))),
               WithinAbs(2, 1e-6)); // perhaps in the tower
    const core::WallRun wall = run_in_feet(30, {{0, 8}}, 10, 20);
    // At the foot 27 x 20/12 less a little, at the top 27 x 10/12.
    CHECK_THAT(plan_ft2(with(wall, without_sill(hole(3, 2, 1, {9})))),
               WithinAbs(27 * 10 / 12.0, 1e-6));
    // One of 6 ft does not fit into the tower.
    CHECK_THAT(plan_ft2(with(tower, without_stations(without_sill(hole(6, 2, 1, {40}))))),
               WithinAbs(5, 1e-6));
}

TEST_CASE("openings one above the other take their length once") {
    // Both of unknown height at one station: 30 - 12, not 30 - 24
    const core::Opening high = without_sill(hole(12, 2, 1, {9}));
    CHECK_THAT(plan_ft2(with(with(run_in_feet(30, {{0, 8}}, 12, 12), high), high)),
               WithinAbs(18, 1e-6));
}

TEST_CASE("an opening of unknown height that is as wide as the tower leaves a sliver") {
    const core::Opening wide = without_sill(hole(5, 2, 1, {0}));
    CHECK(plan_ft2(with(tower, wide)) < 0.01);
}

TEST_CASE("where an opening leaves no concrete nothing rises") {
    CHECK_THAT(plan_ft2(with(run_in_feet(20, {{0, 8}}, 12, 12), hole(20, 1, 3, {0}))),
               WithinAbs(20, 1e-6));
}

TEST_CASE("a planter fills as the ring of its walls") {
    // 12 ft by 5 ft of 8 in walls: (34 - 4 x 2/3) x 2/3 = 20.889 ft2; 3 yd3/h: 3.878 ft/h
    const core::Planter planter{.name = "planter",
                                .length_m = 12 * ft,
                                .width_m = 5 * ft,
                                .height_m = 2 * ft,
                                .thickness_mm = 203.2,
                                .floor_mm = 152.4,
                                .count = 2};
    core::WallPlacing placing;
    placing.output_m3_h = 3 * yd3;
    const core::FormedWall formed = core::formed_wall(planter, placing);
    CHECK_THAT(formed.smallest_plan_m2 / (ft * ft), WithinAbs(20.889, 5e-4));
    CHECK_THAT(*formed.output_m3_h / formed.smallest_plan_m2 / ft, WithinAbs(3.878, 5e-4));
    // floor 12 x 5 x 1/2, walls 20.889 x 1 1/2: of one planter
    CHECK_THAT(formed.volume_m3(0, 2 * ft) / (ft * ft * ft), WithinAbs(30 + 31.333, 5e-3));
}

TEST_CASE("the output of one wall stands in place of that of all") {
    core::WallRun run = tower;
    core::WallPlacing placing;
    placing.output_m3_h = 8;
    CHECK(core::formed_wall(run, placing, us_tables()).output_m3_h == 8);
    run.output_m3_h = 1;
    CHECK(core::formed_wall(run, placing, us_tables()).output_m3_h == 1);
}

TEST_CASE("the pressure counts with the faster of rise and output") {
    const core::FormRise both{90 * ft * ft, 4 * ft, 20 * yd3};
    CHECK_THAT(*both.fastest_m_h() / ft, WithinAbs(6, 1e-9));
    CHECK(both.by() == core::RiseBy::output);
    CHECK_THAT(*both.keeps_m3_h() / yd3, WithinAbs(4 * 90 / 27.0, 1e-9));
    const core::FormRise slow{90 * ft * ft, 4 * ft, 10 * yd3}; // 3 ft/h
    CHECK_THAT(*slow.fastest_m_h() / ft, WithinAbs(4, 1e-9));
    CHECK(slow.by() == core::RiseBy::stated);
    const core::FormRise neither{90 * ft * ft};
    CHECK_FALSE(neither.fastest_m_h());
    CHECK_FALSE(neither.by());
    CHECK_FALSE(neither.keeps_m3_h());
}

TEST_CASE("an output is held against the stated rise at 0.1 ft/h or 0.05 m/h") {
    // 1 m2 of plan: the output in m3/h is the rise in m/h
    using core::UnitSystem;
    const auto [system, stated_m_h, output_m_h, verdict] =
        GENERATE(table<UnitSystem, double, double, Verdict>({
            {UnitSystem::us, 4 * ft, 3.9 * ft, Verdict::holds},
            {UnitSystem::us, 4 * ft, 4 * ft, Verdict::holds},
            {UnitSystem::us, 4 * ft, 4.04 * ft, Verdict::watch},
            {UnitSystem::us, 4 * ft, 4.06 * ft, Verdict::fails},
            {UnitSystem::us, 4 * ft, 6 * ft, Verdict::fails},
            {UnitSystem::si, 1.2, 1.22, Verdict::watch},
            {UnitSystem::si, 1.2, 1.23, Verdict::fails},
        }));
    const auto check = core::rise_check({1, stated_m_h, output_m_h}, system);
    REQUIRE(check);
    CHECK(check->id == "placing.rise");
    CHECK(check->verdict == verdict);
    CHECK(check->value == output_m_h);
    CHECK(check->limit->high == stated_m_h);
}

TEST_CASE("a rise is only checked where there are two") {
    const auto no_output = core::rise_check({1, 1.2, {}}, core::UnitSystem::si);
    REQUIRE(no_output);
    CHECK(no_output->verdict == Verdict::not_checked);
    CHECK(no_output->message.text.find("'placing.output'") != std::string::npos);
    const auto neither = core::rise_check({1, {}, {}}, core::UnitSystem::si);
    REQUIRE(neither);
    CHECK(neither->verdict == Verdict::not_checked);
    CHECK_FALSE(core::rise_check({1, {}, 1.2}, core::UnitSystem::si));
}

TEST_CASE("each lift of a stepped wall takes the time of its own concrete") {
    // 2 ft lifts of the tower and its run at 8 yd3/h, 216 ft3/h: two of 60 x 2 ft3, 33.33 min each,
    // five of 5 x 2 ft3, 2.78 min each; at 4 ft/h none is shorter than 30 min.
    struct Case {
        double rise_ft_h; // 0: not stated
        double between_min, pour_min;
    };
    const auto one = GENERATE(values<Case>({{0, 33.3333, 2 * 33.3333 + 5 * 2.7778},
                                            {4, 33.3333, 2 * 33.3333 + 5 * 30},
                                            {3, 40, 7 * 40}}));
    core::WallPlacing placing;
    placing.output_m3_h = 8 * yd3;
    placing.lift_m = 2 * ft;
    if (one.rise_ft_h > 0) {
        placing.rise_m_h = one.rise_ft_h * ft;
    }
    const auto plan =
        core::lift_plan(core::poured_wall(core::formed_wall(tower, placing, us_tables()), placing),
                        us_tables().placing->lifts);
    CHECK(plan.lifts == 7);
    REQUIRE(plan.between_lifts_min);
    CHECK_THAT(*plan.between_lifts_min, WithinAbs(one.between_min, 1e-3));
    CHECK_THAT(60 * *plan.pour_h, WithinAbs(one.pour_min, 1e-3));
}

TEST_CASE("lifts of a battered wall are slowest at its foot") {
    // 40 ft, 16 in to 10 in over 9 ft; lifts of 18 in: six, the lowest 15.5 in thick in the middle:
    // 40 x 1.5 x 15.5/12 = 77.5 ft3 at 10 yd3/h, 270 ft3/h: 17.22 min
    core::WallPlacing placing;
    placing.output_m3_h = 10 * yd3;
    placing.lift_m = 1.5 * ft;
    const auto run = run_in_feet(40, {{0, 9}}, 10, 16);
    const auto plan =
        core::lift_plan(core::poured_wall(core::formed_wall(run, placing, us_tables()), placing),
                        us_tables().placing->lifts);
    CHECK(plan.lifts == 6);
    CHECK_THAT(*plan.between_lifts_min, WithinAbs(17.222, 5e-4));
}

TEST_CASE("an opening shortens the time of the lifts that it stands in") {
    // 30 ft by 12 in, opening of 12 ft from 2 ft to 6 ft: lifts of 2 ft: 60 ft3, then 36, 36, 60
    core::WallPlacing placing;
    placing.output_m3_h = 8 * yd3;
    placing.lift_m = 2 * ft;
    const auto run = with(run_in_feet(30, {{0, 8}}, 12, 12), hole(12, 4, 2, {9}));
    const auto formed = core::formed_wall(run, placing, us_tables());
    const double ft3 = ft * ft * ft;
    CHECK_THAT(formed.volume_m3(0, 2 * ft) / ft3, WithinAbs(60, 1e-6));
    CHECK_THAT(formed.volume_m3(2 * ft, 4 * ft) / ft3, WithinAbs(36, 1e-6));
    const auto plan =
        core::lift_plan(core::poured_wall(formed, placing), us_tables().placing->lifts);
    CHECK_THAT(60 * *plan.pour_h, WithinAbs(60 * 192 / 216.0, 1e-6));
    CHECK_THAT(*plan.between_lifts_min, WithinAbs(60 * 60 / 216.0, 1e-6));
}
