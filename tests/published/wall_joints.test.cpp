// Contraction joints of walls, and how plumb a wall stands, as printed.

#include <boardmark/core/forms/plumb.hpp>
#include <boardmark/core/wall/joint_layout.hpp>

#include "as_printed.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::SpacingRule;
using core::UnitSystem;
using core::Verdict;

namespace {

const core::ContractionJointRules& rules() {
    return tables_in(UnitSystem::us).joints->contraction;
}

double feet(double amount) {
    return inside(amount, "ft") / 1000;
}

core::WallStretch stretch(double length_ft, double height_ft, double thickness_in) {
    return {feet(length_ft), feet(height_ft), inside(thickness_in, "in")};
}

} // namespace

TEST_CASE("depth of grooves as printed") {
    // A quarter of the thickness and at least 2 in, both faces together: two trade articles.
    const auto [thickness_in, groove_in] =
        GENERATE(table<double, double>({{12, 3}, {8, 2}, {6, 2}, {10, 2.5}}));
    CHECK_THAT(in_unit(core::groove_mm(inside(thickness_in, "in"), rules()), "in"),
               WithinAbs(groove_in, exact));
}

TEST_CASE("joint spacing by the rules as printed") {
    // ACI 224.3R, from memory: 3 heights below 8 ft, 2 below 12 ft, 1 above; 25 ft, 20 ft with many
    // openings. 30 thicknesses (8 in: 20 ft): an unsigned page.
    struct Row {
        double height_ft, thickness_in;
        bool openings;
        double spacing_ft;
        SpacingRule rule;
    };
    const Row row = GENERATE(
        Row{6, 10, false, 18, SpacingRule::height}, Row{8, 12, false, 16, SpacingRule::height},
        Row{7.5, 8, false, 20, SpacingRule::thickness}, Row{14, 12, false, 14, SpacingRule::height},
        Row{7.9, 14, false, 23.7, SpacingRule::height},
        Row{11.9, 16, false, 23.8, SpacingRule::height},
        Row{30, 16, false, 25, SpacingRule::practice}, Row{30, 16, true, 20, SpacingRule::practice},
        // Common practice, no source: the height asks for no joint closer than 8 ft.
        Row{2, 10, false, 8, SpacingRule::low_wall}, Row{2.6, 10, false, 8, SpacingRule::low_wall},
        Row{2.7, 10, false, 8.1, SpacingRule::height}, Row{1, 2, false, 5, SpacingRule::thickness});
    INFO(row.height_ft << " ft, " << row.thickness_in << " in");
    const auto spacing =
        core::joint_spacing(stretch(100, row.height_ft, row.thickness_in), row.openings, rules());
    CHECK_THAT(in_unit(1000 * spacing.m, "ft"), WithinAbs(row.spacing_ft, exact));
    CHECK(spacing.governed_by == row.rule);
}

TEST_CASE("joints of a battered wall go by its thinnest section and grooves by its thickest") {
    // 30 thicknesses of 8 in, not of 14: 20 ft; a quarter of 14 in. Which section the rules mean no
    // print says: each time the safe side.
    core::WallStretch battered = stretch(100, 7.5, 14);
    battered.thinnest_mm = inside(8, "in");
    const auto spacing = core::joint_spacing(battered, false, rules());
    CHECK(spacing.governed_by == SpacingRule::thickness);
    CHECK_THAT(spacing.m, WithinAbs(feet(20), exact));
    CHECK_THAT(in_unit(core::joint_layout({.stretches = {battered}}, rules()).groove_mm, "in"),
               WithinAbs(3.5, exact));
}

TEST_CASE("the first joint and the metric twins") {
    // ACI 224.3R, from memory: 10 to 15 ft from a corner, or half the spacing at most.
    CHECK_THAT(in_unit(1000 * rules().first_from_corner_m.value, "ft"), WithinAbs(15, exact));
    CHECK(rules().corner_share.value == 0.5);
    // Metric cells are rounded down to the closer joint.
    const auto& si = tables_in(UnitSystem::si).joints->contraction;
    CHECK(si.by_height.at(0).below_m == 2.4);
    CHECK(si.by_height.at(1).below_m == 3.6);
    CHECK_THAT(si.spacing_solid_m.value, WithinAbs(7.5, exact));
    CHECK_THAT(si.spacing_many_openings_m.value, WithinAbs(6, exact));
    CHECK_THAT(si.first_from_corner_m.value, WithinAbs(4.5, exact));
    CHECK(si.groove_least_mm.value == 50);
    // Common practice, no source: 8 ft and 4 ft, in metres 2.4 and 1.2.
    CHECK_THAT(in_unit(1000 * rules().low_wall_spacing_m.value, "ft"), WithinAbs(8, exact));
    CHECK_THAT(in_unit(1000 * rules().least_apart_m.value, "ft"), WithinAbs(4, exact));
    CHECK_THAT(si.low_wall_spacing_m.value, WithinAbs(2.4, exact));
    CHECK_THAT(si.least_apart_m.value, WithinAbs(1.2, exact));
}

TEST_CASE("equal panels of a free wall of 6 ft") {
    // 60 ft in panels of at most 18 ft: four of 15 ft.
    const auto layout = core::joint_layout({.stretches = {stretch(60, 6, 10)}}, rules());
    REQUIRE(layout.positions_m.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        CHECK_THAT(in_unit(1000 * layout.positions_m[i], "ft"),
                   WithinAbs(15.0 * static_cast<double>(i + 1), exact));
    }
    CHECK_THAT(in_unit(layout.groove_mm, "in"), WithinAbs(2.5, exact));
    CHECK(layout.checks.at(0).verdict == Verdict::watch); // a limit from memory
}

TEST_CASE("the first joint from a corner is half a panel away") {
    // 60 ft between two corners: 0.5 + 1 + 1 + 1 + 0.5 panels of 15 ft.
    const auto layout = core::joint_layout(
        {.stretches = {stretch(60, 6, 10)}, .corner_at_start = true, .corner_at_end = true},
        rules());
    const std::vector<double> expected_ft{7.5, 22.5, 37.5, 52.5};
    REQUIRE(layout.positions_m.size() == expected_ft.size());
    for (std::size_t i = 0; i < expected_ft.size(); ++i) {
        CHECK_THAT(in_unit(1000 * layout.positions_m[i], "ft"), WithinAbs(expected_ft[i], exact));
    }
}

TEST_CASE("short walls have no joint") {
    CHECK(core::joint_layout({.stretches = {stretch(18, 6, 10)}}, rules()).positions_m.empty());
    // 9 ft to a corner at most: 12 ft of wall from a corner get one.
    const core::JointedWall bent{.stretches = {stretch(12, 6, 10)}, .corner_at_start = true};
    CHECK(core::joint_layout(bent, rules()).positions_m.size() == 1);
}

TEST_CASE("joints of low walls and corners by hand") {
    // Common practice, no source: panels of 8 ft at least, joints 4 ft from each other, from ends
    // and from corners; the first from a corner is half a panel away.
    struct Row {
        const char* what;
        core::JointedWall wall;
        std::vector<double> joints_ft;
        Verdict verdict;
    };
    const auto low = [](double length_ft) { return stretch(length_ft, 2, 10); };
    const std::vector<Row> rows{
        {"16 ft, 2 ft high: 2 panels of 8 ft", {.stretches = {low(16)}}, {8}, Verdict::holds},
        {"a side of 12 ft between corners: 4 + 4 + 4",
         {.stretches = {low(12)}, .corner_at_start = true, .corner_at_end = true},
         {4, 8},
         Verdict::holds},
        {"a side of 10 ft between corners: two joints would stand 2 ft apart",
         {.stretches = {low(10)}, .corner_at_start = true, .corner_at_end = true},
         {5},
         Verdict::holds},
        {"a side of 7 ft between corners: a joint would stand 3.5 ft from them",
         {.stretches = {low(7)}, .corner_at_start = true, .corner_at_end = true},
         {},
         Verdict::watch},
        {"a corner in the middle of 24 ft: 12 = 8 + 4 on either side",
         {.stretches = {low(24)}, .corners_m = {feet(12)}},
         {8, 16},
         Verdict::holds},
        {"a step 2 ft from the end is left out",
         {.stretches = {stretch(2, 3, 10), stretch(6, 2, 10)}},
         {},
         Verdict::watch},
        {"an opening 3 ft behind a step is left out, the step stays",
         {.stretches = {stretch(8, 3, 10), stretch(8, 2, 10)}, .openings_m = {feet(11)}},
         {8},
         Verdict::watch},
        {"a step at a corner is left out: the corner is cast in one piece",
         {.stretches = {stretch(6, 3, 10), stretch(6, 2, 10)}, .corners_m = {feet(6)}},
         {},
         Verdict::watch},
        {"corners that are only counted",
         {.stretches = {low(12)}, .corner_at_start = true, .corners_assumed = true},
         {4},
         Verdict::watch}};
    for (const Row& row : rows) {
        INFO(row.what);
        const auto layout = core::joint_layout(row.wall, rules());
        REQUIRE(layout.positions_m.size() == row.joints_ft.size());
        for (std::size_t i = 0; i < row.joints_ft.size(); ++i) {
            CHECK_THAT(in_unit(1000 * layout.positions_m[i], "ft"),
                       WithinAbs(row.joints_ft[i], exact));
        }
        CHECK(layout.checks.at(0).verdict == row.verdict);
    }
}

TEST_CASE("joints at every step and opening") {
    const core::JointedWall wall{.stretches = {stretch(20, 4, 10), stretch(30, 6, 10)},
                                 .openings_m = {feet(26), feet(30), feet(80)}};
    const auto layout = core::joint_layout(wall, rules());
    for (const double station_ft : {20.0, 26.0, 30.0}) {
        INFO(station_ft);
        CHECK(std::ranges::any_of(layout.positions_m, [&](double at_m) {
            return std::abs(in_unit(1000 * at_m, "ft") - station_ft) < exact;
        }));
    }
    // 20 ft of 4 ft in 12 ft panels: two; 20 to 26, 26 to 30; 20 ft of 6 ft in 18 ft: two.
    CHECK(layout.positions_m.size() == 5);
    CHECK(std::ranges::is_sorted(layout.positions_m));
}

TEST_CASE("a stated spacing wider than the rules is watched") {
    const core::JointedWall wall{
        .stretches = {stretch(60, 6, 12)}, .spacing_m = feet(20), .groove_mm = inside(2, "in")};
    const auto layout = core::joint_layout(wall, rules());
    CHECK(layout.positions_m.size() == 2);
    CHECK(layout.checks.at(0).verdict == Verdict::watch);
    CHECK(layout.checks.at(1).verdict == Verdict::fails); // 3 in are a quarter of 12
}

TEST_CASE("a wall of 10 ft stands plumb within") {
    // ACI 117-10, from memory: 0.3 % and 1 in, exposed edges 0.2 % and 1/2 in.
    const auto& plumb = tables_in(UnitSystem::us).joints->plumb;
    const auto tolerance = [&](double height_ft, bool edge) {
        return in_unit(*core::plumb_tolerance_mm(inside(height_ft, "ft"), edge, plumb), "in");
    };
    CHECK_THAT(tolerance(10, false), WithinAbs(0.36, exact));
    CHECK_THAT(tolerance(10, true), WithinAbs(0.24, exact));
    CHECK_THAT(tolerance(50, false), WithinAbs(1, exact));
    CHECK_THAT(tolerance(50, true), WithinAbs(0.5, exact));
    CHECK_FALSE(core::plumb_tolerance_mm(inside(84, "ft"), false, plumb));
}
