// Sizes of reinforcing bars, typed by hand.

#include "as_printed.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

const core::BarSize& bar(const std::vector<core::BarSize>& sizes, const std::string& name) {
    const auto found = std::ranges::find(sizes, name, &core::BarSize::name);
    REQUIRE(found != sizes.end());
    return *found;
}

} // namespace

TEST_CASE("bars by number") {
    // ASTM A615 Table 1 (from memory): nominal diameter in, cross-sectional area in2
    const auto [name, diameter_in, area_in2] = GENERATE(table<std::string, double, double>({
        {"No. 3", 0.375, 0.11},
        {"No. 4", 0.500, 0.20},
        {"No. 5", 0.625, 0.31},
        {"No. 6", 0.750, 0.44},
        {"No. 7", 0.875, 0.60},
        {"No. 8", 1.000, 0.79},
        {"No. 9", 1.128, 1.00},
        {"No. 10", 1.270, 1.27},
        {"No. 11", 1.410, 1.56},
    }));
    INFO(name);
    const auto sizes = tables_in(core::UnitSystem::us).bars;
    const core::BarSize& size = bar(sizes, name);
    CHECK_THAT(in_unit(size.diameter_mm, "in"), WithinAbs(diameter_in, exact));
    CHECK_THAT(size.area_mm2 / 645.16, WithinAbs(area_in2, exact));
    CHECK(size.source.confidence == core::Confidence::from_memory);
    // The printed area is that of the printed diameter, rounded to 0.01 in2.
    CHECK_THAT(0.785398163397 * diameter_in * diameter_in, WithinAbs(area_in2, 0.0055));
}

TEST_CASE("bars by diameter") {
    // ISO 6935-2:2019 Table 2 (from memory): nominal diameter mm, nominal area mm2, three digits
    const auto [name, diameter_mm, area_mm2, digit] =
        GENERATE(table<std::string, double, double, double>({
            {"6 mm", 6, 28.3, 0.1},
            {"8 mm", 8, 50.3, 0.1},
            {"10 mm", 10, 78.5, 0.1},
            {"12 mm", 12, 113, 1},
            {"14 mm", 14, 154, 1},
            {"16 mm", 16, 201, 1},
            {"20 mm", 20, 314, 1},
            {"25 mm", 25, 491, 1},
            {"28 mm", 28, 616, 1},
            {"32 mm", 32, 804, 1},
            {"40 mm", 40, 1257, 1},
        }));
    INFO(name);
    const auto sizes = tables_in(core::UnitSystem::si).bars;
    const core::BarSize& size = bar(sizes, name);
    CHECK_THAT(size.diameter_mm, WithinAbs(diameter_mm, exact));
    CHECK_THAT(size.area_mm2, WithinAbs(area_mm2, 0.5 * digit));
}

TEST_CASE("there are no other sizes of bars") {
    CHECK(tables_in(core::UnitSystem::us).bars->size() == 9 + 11);
    CHECK(tables_in(core::UnitSystem::si).bars->size() == 9 + 11);
}
