// Orders divided for a mixer or a truck, with and without whole sacks.

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/charges.hpp>

#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

#include <limits>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using core::Vessel;

namespace {

constexpr double foot3 = 0.028316846592; // m3

core::Charging divided(double ft3, double capacity_ft3, Vessel vessel = Vessel::mixer) {
    return boardmark::test::made(
        core::charges_of(ft3 * foot3, core::VesselSize{vessel, capacity_ft3 * foot3}));
}

/// A mix with 600 lb/yd3 of cement: a sack of 94 lb makes 4.23 ft3.
Solved six_hundred_pounds() {
    return solve(text({.requirements = "  average_strength: 5000 psi\n",
                       .selections = "{binder: 600 lb/yd3, w_cm: 0.45}"}),
                 input::Purpose::batch);
}

core::Charging in_sacks(double ft3, std::optional<double> capacity_ft3) {
    std::optional<core::VesselSize> size;
    if (capacity_ft3) {
        size = core::VesselSize{Vessel::mixer, *capacity_ft3 * foot3};
    }
    return boardmark::test::made(core::charges_of_whole_sacks(
        ft3 * foot3, size, six_hundred_pounds().proportions, {"cement", inside(94, "lb")}));
}

} // namespace

TEST_CASE("the fewest equal charges that fit") {
    const auto [volume, capacity, count] = GENERATE(table<double, double, int>({
        {6, 6, 1},
        {6.001, 6, 2},
        {5, 6, 1},
        {27, 6, 5},
        {12, 6, 2},
        {0.3, 0.1, 3}, // 0.3 / 0.1 is not 3 in binary
    }));
    INFO(volume << " ft3 in " << capacity << " ft3");
    const core::Charging charging = divided(volume, capacity);
    CHECK(charging.count == count);
    CHECK_THAT(charging.each_m3 / foot3, WithinAbs(volume / count, 1e-12));
}

TEST_CASE("an order without a vessel is one charge") {
    const core::Charging charging = boardmark::test::made(core::charges_of(2, std::nullopt));
    CHECK(charging.count == 1);
    CHECK(charging.each_m3 == 2);
    CHECK(core::cautions_of(charging).empty());
}

TEST_CASE("more than a thousand charges lead to no batch") {
    CHECK(divided(1000, 1).count == 1000);
    CHECK_THROWS_AS(divided(1000.01, 1), core::Unresolved);
}

TEST_CASE("whole sacks in each charge and none above the mixer") {
    // 27 x 94 / 600 = 4.23 ft3 to the sack
    struct Case {
        double ft3;
        std::optional<double> capacity_ft3;
        int count;
        double sacks_each;
    };
    const auto [ft3, capacity_ft3, count, sacks_each] = GENERATE(values<Case>({
        {4.23, std::nullopt, 1, 1},
        {4.24, std::nullopt, 1, 2},
        {1, std::nullopt, 1, 1},
        {27, std::nullopt, 1, 7}, // 6.38 sacks
        {27, 9, 4, 2},            // two fit: 8.46 ft3
        {27, 4.3, 7, 1},
        {21, 13, 2, 3}, // five sacks in two charges: three in each, so that they are alike
    }));
    INFO(ft3 << " ft3");
    const core::Charging charging = in_sacks(ft3, capacity_ft3);
    CHECK(charging.count == count);
    CHECK_THAT(charging.each_m3 / foot3, WithinAbs(sacks_each * 4.23, 1e-9));
}

TEST_CASE("a mixer too small for one sack is refused with ways out") {
    try {
        in_sacks(27, 4.2);
        FAIL("charges followed");
    } catch (const core::Unresolved& unresolved) {
        CHECK_THAT(unresolved.what.text, Contains("one sack of {name}"));
        CHECK(unresolved.ways_out.size() == 3);
    }
}

TEST_CASE("what is said of a vessel tells mixer from truck, one from several, full from short") {
    const auto [charging, cautions] = GENERATE(table<core::Charging, std::size_t>({
        {divided(6, 6), 1},
        {divided(5, 6), 1},
        {divided(12, 6), 2},
        {divided(6, 6, Vessel::truck), 1},
        {divided(5, 6, Vessel::truck), 2},  // short
        {divided(12, 6, Vessel::truck), 2}, // several
        {divided(14, 9, Vessel::truck), 3},
    }));
    CHECK(core::cautions_of(charging).size() == cautions);
}

TEST_CASE("nothing is divided that is no number above nothing") {
    constexpr double endless = std::numeric_limits<double>::infinity();
    for (const double number : {std::numeric_limits<double>::quiet_NaN(), endless, 0.0, -5.0}) {
        INFO(number);
        CHECK_FALSE(core::charges_of(number, core::VesselSize{Vessel::truck, 6}));
        CHECK_FALSE(core::charges_of(number, std::nullopt));
        CHECK_FALSE(core::charges_of(6, core::VesselSize{Vessel::truck, number}));
        CHECK_FALSE(core::charges_of_whole_sacks(number, std::nullopt,
                                                 six_hundred_pounds().proportions, {"cement", 42}));
    }
    CHECK(divided(1e-12, 6).count == 1);
}
