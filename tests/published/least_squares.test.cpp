// NIST Statistical Reference Datasets, linear regression, Norris (ozone monitors): 36 pairs and
// their certified fit. Pairs and certified values from memory; recomputed in exact fractions they
// agree with each other to all fifteen digits, so neither can be misremembered.

#include <boardmark/core/strength/strength_line.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace boardmark;
using Catch::Matchers::WithinAbs;

namespace {

struct Pair {
    double y;
    double x;
};

constexpr Pair norris[] = {
    {0.1, 0.2},     {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1},    {228.1, 226.5},
    {668.5, 666.3}, {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4},
    {0.1, 0.6},     {778.1, 775.5}, {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6},
    {557.7, 556.0}, {228.3, 228.1}, {998.0, 995.8}, {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3},
    {0.6, 0.3},     {557.6, 556.8}, {339.3, 339.1}, {888.0, 887.2}, {998.5, 999.0}, {778.9, 779.0},
    {10.2, 11.1},   {117.6, 118.3}, {228.9, 229.2}, {668.4, 669.1}, {449.2, 448.9}, {0.2, 0.5}};

} // namespace

TEST_CASE("certified fit of a straight line") {
    // The line is of logarithms; a thousandth of y keeps the strengths small.
    std::vector<core::LinePoint> points;
    for (const Pair& pair : norris) {
        points.push_back({"", pair.x, std::exp(pair.y / 1000)});
    }
    const auto line = core::fit_line(points, 0.95);
    REQUIRE(line);
    CHECK_THAT(1000 * line->intercept, WithinAbs(-0.262323073774029, 1e-9));
    CHECK_THAT(1000 * line->slope, WithinAbs(1.00211681802045, 1e-11));
    CHECK_THAT(1000 * line->deviation, WithinAbs(0.884796396144373, 1e-9));
    CHECK_THAT(line->r_squared, WithinAbs(0.999993745883712, 1e-12));
    // Certified standard deviations of the estimates: 0.232818234301152 of the intercept and
    // 0.429796848199937e-3 of the slope. The first is half the band at zero over Student's t.
    const core::Band at_zero = core::mean_band_at(*line, 0);
    const double half = std::log(at_zero.high_mpa / at_zero.low_mpa) / 2;
    CHECK_THAT(1000 * half / line->two_sided_t, WithinAbs(0.232818234301152, 1e-9));
    CHECK_THAT(1000 * line->deviation / std::sqrt(line->spread),
               WithinAbs(0.429796848199937e-3, 1e-12));
}
