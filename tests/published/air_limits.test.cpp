// Air of concrete exposed to freezing and thawing: ACI 318-19 Table 19.3.3.1 and 19.3.3. All cells
// of the table read in two digests. Tolerance 1.5 points as delivered: read in specifications after
// ASTM C94. "1 point less above 5000 psi": from memory of the 2019 edition.

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

struct Wall {
    std::string reporting = "us";
    std::string exposure = "F3";
    std::string strength = "5000 psi";
    std::string size = "3/4 in";
    double air_percent = 6;
};

core::Check air_check(const Wall& wall) {
    const Solved mix = solve(fmt::format(R"(boardmark: 1
title: air
reporting: {}
requirements: {{code: ACI 318-19, exposure: [{}], strength: {}, slump: 3 in}}
materials:
  cement: {{kind: portland cement}}
  stone: {{kind: coarse aggregate, nominal_max_size: {}}}
proportions: {{volume: 1 yd3, water: 240 lb, cement: 600 lb, air: {} %}}
)",
                                         wall.reporting, wall.exposure, wall.strength, wall.size,
                                         wall.air_percent),
                             input::Purpose::check);
    REQUIRE(mix.check("air.exposure"));
    return *mix.check("air.exposure");
}

void check_target(const core::Check& check, double percent) {
    CHECK_THAT(check.limit.value().low.value(), WithinAbs(percent - 1.5, exact));
    CHECK_THAT(check.limit.value().high.value(), WithinAbs(percent + 1.5, exact));
}

} // namespace

TEST_CASE("air by exposure class and size") {
    // ACI 318-19 Table 19.3.3.1, each cell with 1.5 points on both sides
    const auto [size_in, size_mm, f1, f2_f3] =
        GENERATE(table<std::string, std::string, double, double>({
            {"3/8 in", "9.5 mm", 6.0, 7.5},
            {"1/2 in", "12.5 mm", 5.5, 7.0},
            {"3/4 in", "19 mm", 5.0, 6.0},
            {"1 in", "25 mm", 4.5, 6.0},
            {"1 1/2 in", "37.5 mm", 4.5, 5.5},
            {"2 in", "50 mm", 4.0, 5.0},
            {"3 in", "75 mm", 3.5, 4.5},
        }));
    for (const auto& [reporting, size] : {std::pair{"us", size_in}, std::pair{"si", size_mm}}) {
        INFO(size);
        check_target(air_check({.reporting = reporting, .exposure = "F1", .size = size}), f1);
        check_target(air_check({.reporting = reporting, .exposure = "F2", .size = size}), f2_f3);
        check_target(air_check({.reporting = reporting, .exposure = "F3", .size = size}), f2_f3);
    }
}

TEST_CASE("proportioning fills the volume with the air of the class") {
    // ACI 318-19 Table 19.3.3.1; F0 entrains none, so that ACI 211.1-91 Table 6.3.3 gives the
    // entrapped air
    const auto [exposure, size, percent, entrained] =
        GENERATE(table<std::string, std::string, double, bool>({
            {"F0", "3/4 in", 2.0, false},
            {"F1", "3/4 in", 5.0, true},
            {"F2", "3/4 in", 6.0, true},
            {"F3", "3/8 in", 7.5, true},
            {"F1", "20 mm", 5.0, true},
            {"F2", "40 mm", 5.5, true},
        }));
    CAPTURE(exposure, size);
    const Solved mix = solve(fmt::format(R"(boardmark: 1
title: air of the class
reporting: us
requirements:
  {{code: ACI 318-19, exposure: [{}], strength: 2500 psi, average_strength: 2500 psi, slump: 3 in}}
materials:
  cement: {{kind: portland cement}}
  stone: {{kind: coarse aggregate, nominal_max_size: {}, relative_density: 2.65,
          absorption: 1 %, dry_rodded_density: 100 lb/ft3}}
  sand: {{kind: fine aggregate, relative_density: 2.65, absorption: 1 %, fineness_modulus: 2.8}}
mixture: {{binder: {{cement: 100 %}}, coarse: {{stone: 100 %}}, fine: {{sand: 100 %}}}}
)",
                                         exposure, size));
    CHECK_THAT(figure(mix, "air", ""), WithinAbs(percent, exact));
    CHECK(mix.proportions.selection.air_entrained == entrained);
}

TEST_CASE("air is held within 1.5 points of the class") {
    // ACI 318-19 Table 19.3.3.1, F3 and 3/4 in: 6.0 %, so 4.5 to 7.5 %
    const auto [percent, verdict] = GENERATE(table<double, Verdict>({
        {4.3, Verdict::fails},
        {4.5, Verdict::watch}, // a mix designed for less: the tolerance is the load's
        {5.9, Verdict::watch},
        {6.0, Verdict::holds},
        {7.5, Verdict::holds},
        {7.7, Verdict::fails},
    }));
    INFO(percent << " %");
    CHECK(air_check({.air_percent = percent}).verdict == verdict);
}

TEST_CASE("one point less air is permitted above 5000 psi") {
    // ACI 318-19 19.3.3, from memory: "may be reduced by 1.0 point for f'c over 5000 psi" (35 MPa).
    // F3, 3/4 in, 5500 psi: 6.0 - 1.0 - 1.5 = 3.5 % is the least. What is permitted is not
    // demanded: up to 7.5 % still holds, and air that only the permission saves deserves a look.
    const auto [reporting, strength, percent, verdict] =
        GENERATE(table<std::string, std::string, double, Verdict>({
            {"us", "5500 psi", 3.4, Verdict::fails},
            {"us", "5500 psi", 3.5, Verdict::watch},
            {"us", "5500 psi", 5.0, Verdict::watch}, // saved by the permission alone
            {"us", "5500 psi", 6.0, Verdict::holds},
            {"us", "5500 psi", 6.5, Verdict::holds},
            {"us", "5500 psi", 7.5, Verdict::holds},
            {"us", "5001 psi", 3.5, Verdict::watch},
            {"us", "5000 psi", 3.5, Verdict::fails},
            {"us", "5000 psi", 4.0, Verdict::fails},
            {"si", "40 MPa", 3.4, Verdict::fails},
            {"si", "40 MPa", 3.5, Verdict::watch},
            {"si", "35.1 MPa", 3.5, Verdict::watch},
            {"si", "35 MPa", 4.0, Verdict::fails},
        }));
    CAPTURE(strength, percent);
    CHECK(
        air_check({.reporting = reporting, .strength = strength, .air_percent = percent}).verdict ==
        verdict);
}
