// Numbers of strength tests: rates of ACI 318-19 26.12.2.1 (read in two explanations of the
// clause).

#include "core/paper/sampling_plan.hpp"

#include <boardmark/reference/paper_rules.hpp>

#include <catch2/catch.hpp>

using namespace boardmark;

namespace {

constexpr double yd3 = 0.764554857984; // 27 ft3
constexpr double ft2 = 0.09290304;

core::SamplingPlan planned(double volume_yd3, double area_ft2, int days,
                           std::optional<int> batches = std::nullopt) {
    return core::sampled({.volume_m3 = volume_yd3 * yd3,
                          .area_m2 = area_ft2 * ft2,
                          .pour_days = days,
                          .batches = batches},
                         reference::paper_rules(core::UnitSystem::us));
}

} // namespace

TEST_CASE("the largest of the rates counts") {
    struct Row {
        double yd3;
        double ft2;
        int days;
        int tests;
        int stricter; ///< one for each 100 yd3 or part of it (UFGS 03300N, read)
    };
    const auto row = GENERATE(values<Row>({
        {750, 3000, 1, 5, 8},
        {751, 3000, 1, 6, 8},
        {900, 30000, 1, 6, 9},
        {900, 30001, 1, 7, 9},
        {600, 1000, 8, 8, 8},
    }));
    CAPTURE(row.yd3, row.ft2, row.days);
    const core::SamplingPlan plan = planned(row.yd3, row.ft2, row.days);
    CHECK(*plan.tests == row.tests);
    CHECK(*plan.stricter_tests == row.stricter);
    CHECK(!plan.waiver_possible);
}

TEST_CASE("400 yd3 and 12 000 ft2 in a day give three tests by the rates, five for the job") {
    const core::SamplingPlan plan = planned(400, 12000, 1);
    CHECK(*plan.rates[0].tests == 1);
    CHECK(*plan.rates[1].tests == 3);
    CHECK(*plan.rates[2].tests == 3);
    CHECK(*plan.tests == 5);
}

TEST_CASE("fewer than five tests become five, or each batch where there are fewer") {
    CHECK(*planned(120, 2000, 3).tests == 5);
    CHECK(*planned(120, 2000, 3, 14).tests == 5);
    CHECK(!planned(120, 2000, 3, 14).each_batch);
    CHECK(*planned(30, 600, 1, 4).tests == 4);
    CHECK(planned(30, 600, 1, 4).each_batch);
    CHECK(planned(45, 600, 1).waiver_possible);
    CHECK(!planned(50, 600, 1).waiver_possible);
}

TEST_CASE("a wall thinner than 9.72 in is tested by its area") {
    // 150 yd3 x 27 / 5000 ft2 = 0.81 ft
    const auto rates = [](double thickness_in) {
        const double area_ft2 = 50000;
        return planned(area_ft2 * thickness_in / 12 / 27, area_ft2, 1);
    };
    CHECK(*rates(9.6).rates[2].tests >= *rates(9.6).rates[1].tests);
    CHECK(*rates(11).rates[2].tests < *rates(11).rates[1].tests);
}
