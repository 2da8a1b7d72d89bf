// Mixing water by slump and nominal maximum size, looked up as the calculation does.
//
// ACI 211.1-91 Table 6.3.3 (inch-pound) and Table A1.5.3.3 (metric), the same as Table 9-5 of PCA,
// Design and Control of Concrete Mixtures, 14th edition. Inch-pound: all cells read in one reprint.
// Metric: read in two reprints, which agree in all cells but one: air-entrained, 25 to 50 mm, 37.5
// mm is 150 in the reprint of the PCA table and 148 (250 lb/yd3 converted) in the other.

#include "core/method/mixing_water.hpp"

#include "as_printed.hpp"
#include "made.hpp"

#include <catch2/catch.hpp>

#include <array>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

constexpr double gap = 0; // a dash in the print

/// A question to the table in the units of the print.
struct Entry {
    double slump;
    double size;
    bool air_entrained;
};

struct Answer {
    double water;
    bool interpolated;
};

Answer ask(UnitSystem system, Entry entry) {
    const bool us = system == UnitSystem::us;
    core::Worksheet worksheet;
    const double water_kg_m3 = boardmark::test::made(
        core::table_water_kg_m3({.slump_mm = inside(entry.slump, us ? "in" : "mm"),
                                 .size_mm = inside(entry.size, us ? "in" : "mm"),
                                 .air_entrained = entry.air_entrained},
                                tables_in(system), worksheet));
    return {in_unit(water_kg_m3, us ? "lb/yd3" : "kg/m3"),
            is_marked(worksheet.steps.back(), core::Mark::interpolated)};
}

/// One printed line, asked at a slump of its band.
void check_line(UnitSystem system, double slump, bool air_entrained,
                const std::array<double, 8>& printed) {
    constexpr std::array sizes_in{0.375, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 6.0};
    constexpr std::array sizes_mm{9.5, 12.5, 19.0, 25.0, 37.5, 50.0, 75.0, 150.0};
    for (std::size_t i = 0; i < printed.size(); ++i) {
        const double size = system == UnitSystem::us ? sizes_in[i] : sizes_mm[i];
        CAPTURE(slump, size, air_entrained);
        if (printed[i] == gap) {
            CHECK_THROWS_AS(ask(system, {slump, size, air_entrained}), core::Unresolved);
            continue;
        }
        const Answer answer = ask(system, {slump, size, air_entrained});
        CHECK_THAT(answer.water, WithinAbs(printed[i], exact));
        CHECK_FALSE(answer.interpolated);
    }
}

} // namespace

TEST_CASE("mixing water of non-air-entrained concrete in lb/yd3") {
    // ACI 211.1-91 Table 6.3.3, upper part; every slump of a band has the band's line
    const auto [slump_in, line] = GENERATE(table<double, std::array<double, 8>>({
        {1.0, {350, 335, 315, 300, 275, 260, 220, 190}},
        {1.5, {350, 335, 315, 300, 275, 260, 220, 190}},
        {2.0, {350, 335, 315, 300, 275, 260, 220, 190}},
        {3.0, {385, 365, 340, 325, 300, 285, 245, 210}},
        {4.0, {385, 365, 340, 325, 300, 285, 245, 210}},
        {6.0, {410, 385, 360, 340, 315, 300, 270, gap}},
        {7.0, {410, 385, 360, 340, 315, 300, 270, gap}},
    }));
    check_line(UnitSystem::us, slump_in, false, line);
}

TEST_CASE("mixing water of air-entrained concrete in lb/yd3") {
    // ACI 211.1-91 Table 6.3.3, lower part
    const auto [slump_in, line] = GENERATE(table<double, std::array<double, 8>>({
        {1.0, {305, 295, 280, 270, 250, 240, 205, 180}},
        {2.0, {305, 295, 280, 270, 250, 240, 205, 180}},
        {3.0, {340, 325, 305, 295, 275, 265, 225, 200}},
        {3.5, {340, 325, 305, 295, 275, 265, 225, 200}},
        {4.0, {340, 325, 305, 295, 275, 265, 225, 200}},
        {6.0, {365, 345, 325, 310, 290, 280, 260, gap}},
        {7.0, {365, 345, 325, 310, 290, 280, 260, gap}},
    }));
    check_line(UnitSystem::us, slump_in, true, line);
}

TEST_CASE("mixing water of non-air-entrained concrete in kg/m3") {
    // ACI 211.1-91 Table A1.5.3.3, upper part
    const auto [slump_mm, line] = GENERATE(table<double, std::array<double, 8>>({
        {25, {207, 199, 190, 179, 166, 154, 130, 113}},
        {50, {207, 199, 190, 179, 166, 154, 130, 113}},
        {75, {228, 216, 205, 193, 181, 169, 145, 124}},
        {90, {228, 216, 205, 193, 181, 169, 145, 124}},
        {100, {228, 216, 205, 193, 181, 169, 145, 124}},
        {150, {243, 228, 216, 202, 190, 178, 160, gap}},
        {175, {243, 228, 216, 202, 190, 178, 160, gap}},
    }));
    check_line(UnitSystem::si, slump_mm, false, line);
}

TEST_CASE("mixing water of air-entrained concrete in kg/m3") {
    // ACI 211.1-91 Table A1.5.3.3, lower part; 150 at 37.5 mm as PCA Table 9-5 prints it
    const auto [slump_mm, line] = GENERATE(table<double, std::array<double, 8>>({
        {25, {181, 175, 168, 160, 150, 142, 122, 107}},
        {50, {181, 175, 168, 160, 150, 142, 122, 107}},
        {75, {202, 193, 184, 175, 165, 157, 133, 119}},
        {100, {202, 193, 184, 175, 165, 157, 133, 119}},
        {150, {216, 205, 197, 184, 174, 166, 154, gap}},
        {165, {216, 205, 197, 184, 174, 166, 154, gap}},
        {175, {216, 205, 197, 184, 174, 166, 154, gap}},
    }));
    check_line(UnitSystem::si, slump_mm, true, line);
}

TEST_CASE("a size between a printed cell and a gap has no water") {
    // ACI 211.1-91 Tables 6.3.3 and A1.5.3.3: the last band has no figure for 6 in (150 mm)
    CHECK_THROWS_AS(ask(UnitSystem::us, {6, 4.5, false}), core::Unresolved);
    CHECK_THROWS_AS(ask(UnitSystem::us, {7, 4.5, true}), core::Unresolved);
    CHECK_THROWS_AS(ask(UnitSystem::si, {150, 100, false}), core::Unresolved);
}

TEST_CASE("a slump between two bands is linear between their facing edges") {
    // Cells of ACI 211.1-91 Tables 6.3.3 and A1.5.3.3; that the line between them is straight is
    // common practice, no source. Computed by hand, for example (340 + 360) / 2 at 5 in.
    const auto [system, slump, size, air_entrained, water] =
        GENERATE(table<UnitSystem, double, double, bool, double>({
            {UnitSystem::us, 5, 0.75, false, 350},
            {UnitSystem::us, 4.5, 0.75, false, 345},
            {UnitSystem::us, 2.5, 0.75, false, 327.5},
            {UnitSystem::us, 5, 0.75, true, 315},
            {UnitSystem::us, 2.5, 1, true, 282.5},
            {UnitSystem::us, 5, 1, true, 302.5},
            {UnitSystem::si, 125, 19, false, 210.5},
            {UnitSystem::si, 62.5, 19, false, 197.5},
            {UnitSystem::si, 60, 37.5, true, 156}, // 150 + 10/25 of 15
            {UnitSystem::si, 125, 25, true, 179.5},
        }));
    CAPTURE(slump, size, air_entrained);
    const Answer answer = ask(system, {slump, size, air_entrained});
    CHECK_THAT(answer.water, WithinAbs(water, exact));
    CHECK(answer.interpolated);
}

TEST_CASE("a slump within 3 mm of a band has the value of the band") {
    // Cells of ACI 211.1-91 Table A1.5.3.3, 19 mm, non-air-entrained; 3 mm is common practice, no
    // source: slump is measured to 1/4 in. One millimetre further the line between bands holds.
    const auto [slump_mm, water, interpolated] = GENERATE(table<double, double, bool>({
        {22, 190, false},
        {53, 190, false},
        {54, 192.4, true}, // 190 + 4/25 of 15
        {71, 202.6, true}, // 190 + 21/25 of 15
        {72, 205, false},
        {103, 205, false},
        {104, 205.88, true}, // 205 + 4/50 of 11
        {146, 215.12, true}, // 205 + 46/50 of 11
        {147, 216, false},
        {178, 216, false},
    }));
    INFO(slump_mm << " mm");
    const Answer answer = ask(UnitSystem::si, {slump_mm, 19, false});
    CHECK_THAT(answer.water, WithinAbs(water, exact));
    CHECK(answer.interpolated == interpolated);
}

TEST_CASE("a slump below the first band has no water") {
    // ACI 211.1-91 Tables 6.3.3 and A1.5.3.3 begin at 1 in (25 mm)
    const auto [system, slump] = GENERATE(table<UnitSystem, double>({
        {UnitSystem::us, 0.0},
        {UnitSystem::us, 0.8},
        {UnitSystem::si, 0.0},
        {UnitSystem::si, 21},
    }));
    const auto refused = refusal([system = system, slump = slump] {
        ask(system, {slump, system == UnitSystem::us ? 1.0 : 25.0, false});
    });
    REQUIRE(refused);
    CHECK(mentions(*refused, "selections.water"));
    CHECK_FALSE(mentions(*refused, "slump_before_reducer"));
}

TEST_CASE("a slump above the last band asks for the slump before the reducer") {
    // ACI 211.1-91 Tables 6.3.3 and A1.5.3.3 end at 7 in (175 mm)
    const auto [system, slump, size] = GENERATE(table<UnitSystem, double, double>({
        {UnitSystem::us, 7.2, 0.75},
        {UnitSystem::us, 9, 0.75},
        {UnitSystem::si, 179, 19},
        {UnitSystem::si, 225, 19},
    }));
    const bool air_entrained = GENERATE(false, true);
    const auto refused = refusal([=, system = system, slump = slump, size = size] {
        ask(system, {slump, size, air_entrained});
    });
    REQUIRE(refused);
    CHECK(mentions(*refused, "slump_before_reducer"));
}

TEST_CASE("the trade's sizes take the printed columns of the water table") {
    // Cells of ACI 211.1-91 Table A1.5.3.3, non-air-entrained, 75 to 100 mm; that 10, 20 and 40 mm
    // are the names of 9.5, 19 and 37.5 mm (within 7 %) is common practice, no source
    const auto [size_mm, water] = GENERATE(table<double, double>({
        {9, 228},
        {10, 228},
        {12, 216},
        {18, 205},
        {20, 205},
        {26, 193},
        {40, 181},
        {76.2, 145},
        {152.4, 124},
    }));
    INFO(size_mm << " mm");
    const Answer answer = ask(UnitSystem::si, {80, size_mm, false});
    CHECK_THAT(answer.water, WithinAbs(water, exact));
    CHECK_FALSE(answer.interpolated);
}

TEST_CASE("a size between two columns is linear in size") {
    // Cells of ACI 211.1-91 Tables 6.3.3 and A1.5.3.3; the straight line is common practice, no
    // source. By hand, for example at 16 mm: 216 less 3.5/6.5 of 11.
    const auto [system, slump, size, air_entrained, water, tolerance] =
        GENERATE(table<UnitSystem, double, double, bool, double, double>({
            {UnitSystem::us, 4, 0.625, false, 352.5, exact},
            {UnitSystem::us, 4, 1.25, false, 312.5, exact},
            {UnitSystem::us, 4, 2.5, false, 265, exact},
            {UnitSystem::us, 4, 4.5, true, 212.5, exact},
            {UnitSystem::si, 75, 16, false, 210.077, 0.0005},
            {UnitSystem::si, 75, 14, false, 213.462, 0.0005}, // 216 less 1.5/6.5 of 11
            {UnitSystem::si, 75, 32, false, 186.28, exact},   // 193 less 7/12.5 of 12
            {UnitSystem::si, 50, 100, true, 117, exact},      // 122 less 25/75 of 15
        }));
    CAPTURE(slump, size, air_entrained);
    const Answer answer = ask(system, {slump, size, air_entrained});
    CHECK_THAT(answer.water, WithinAbs(water, tolerance));
    CHECK(answer.interpolated);
}

TEST_CASE("slump and size between the printed ones together") {
    // ACI 211.1-91 Table 6.3.3, non-air-entrained; by hand: at 5/8 in (365 + 340) / 2 = 352.5 and
    // (385 + 360) / 2 = 372.5, at 5 in halfway
    const Answer answer = ask(UnitSystem::us, {5, 0.625, false});
    CHECK_THAT(answer.water, WithinAbs(362.5, exact));
    CHECK(answer.interpolated);
}

TEST_CASE("stone smaller or larger than every column has no water") {
    // ACI 211.1-91 Tables 6.3.3 and A1.5.3.3 go from 3/8 in (9.5 mm) to 6 in (150 mm)
    const auto [system, slump, size] = GENERATE(table<UnitSystem, double, double>({
        {UnitSystem::us, 3, 0.25},
        {UnitSystem::us, 3, 6.5},
        {UnitSystem::si, 75, 8},
        {UnitSystem::si, 75, 165},
    }));
    CHECK_THROWS_AS(ask(system, {slump, size, false}), core::Unresolved);
}
