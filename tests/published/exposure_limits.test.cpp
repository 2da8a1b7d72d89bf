// Limits by exposure class: ACI 318-19 Table 19.3.2.1 and Table 19.3.1.1. Read in digests and
// summaries of the 2014 and 2019 editions, all but F3, W1, S3 without pozzolan and the dry classes
// in two or more.

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;
using core::Verdict;

namespace {

constexpr double no_limit = 0;

/// What a submitted mix is asked about.
struct Wall {
    std::string reporting = "us";
    std::string exposure;
    std::string strength = "5000 psi";
    bool reinforced = true;
    std::string second_binder = "";
};

Solved check(const Wall& wall) {
    const bool blend = !wall.second_binder.empty();
    return solve(
        fmt::format(R"(boardmark: 1
title: exposure
reporting: {}
requirements: {{code: ACI 318-19, exposure: [{}], strength: {}, slump: 3 in, reinforced: {}}}
materials:
  cement: {{kind: portland cement, chloride: 0 %}}
  other: {{kind: {}, chloride: 0 %}}
  stone: {{kind: coarse aggregate, nominal_max_size: 3/4 in}}
proportions: {{volume: 1 yd3, water: 240 lb, cement: 450 lb, air: 6 %{}}}
)",
                    wall.reporting, wall.exposure, wall.strength, wall.reinforced ? "yes" : "no",
                    blend ? wall.second_binder : "slag cement", blend ? ", other: 150 lb" : ""),
        input::Purpose::check);
}

/// The highest w/cm that a check allows, or no_limit.
double most_w_cm(const Solved& mix) {
    const core::Check* found = mix.check("w_cm.exposure");
    return found ? found->limit.value().high.value() : no_limit;
}

double least_strength(const Solved& mix, const std::string& unit) {
    return in_unit(mix.check("strength.exposure")->limit.value().low.value(), unit);
}

} // namespace

TEST_CASE("w/cm and least strength by exposure class") {
    // ACI 318-19 Table 19.3.2.1; S3 as for plain portland cement, its option with more strength
    const auto [exposure, w_cm, psi, mpa] = GENERATE(table<std::string, double, double, double>({
        {"F0", no_limit, 2500, 17},
        {"F1", 0.55, 3500, 24},
        {"F2", 0.45, 4500, 31},
        {"F3", 0.40, 5000, 35},
        {"S0", no_limit, 2500, 17},
        {"S1", 0.50, 4000, 28},
        {"S2", 0.45, 4500, 31},
        {"S3", 0.40, 5000, 35},
        {"W0", no_limit, 2500, 17},
        {"W1", no_limit, 2500, 17},
        {"W2", 0.50, 4000, 28},
        {"C0", no_limit, 2500, 17},
        {"C1", no_limit, 2500, 17},
        {"C2", 0.40, 5000, 35},
    }));
    INFO(exposure);
    const Solved us = check({.reporting = "us", .exposure = exposure});
    const Solved si = check({.reporting = "si", .exposure = exposure});
    CHECK_THAT(most_w_cm(us), WithinAbs(w_cm, exact));
    CHECK_THAT(most_w_cm(si), WithinAbs(w_cm, exact));
    CHECK_THAT(least_strength(us, "psi"), WithinAbs(psi, exact));
    CHECK_THAT(least_strength(si, "MPa"), WithinAbs(mpa, exact));
}

TEST_CASE("plain concrete in F3 has the limits of F2") {
    // ACI 318-19 Table 19.3.2.1, row F3, note on plain concrete: 0.45 and 4500 psi (31 MPa)
    const Solved us = check({.exposure = "F3", .reinforced = false});
    const Solved si = check({.reporting = "si", .exposure = "F3", .reinforced = false});
    CHECK_THAT(most_w_cm(us), WithinAbs(0.45, exact));
    CHECK_THAT(least_strength(us, "psi"), WithinAbs(4500, exact));
    CHECK_THAT(least_strength(si, "MPa"), WithinAbs(31, exact));
}

TEST_CASE("S3 with pozzolan or slag allows more w/cm and less strength") {
    // ACI 318-19 Table 19.3.2.1, row S3: option 1 with pozzolan or slag 0.45 and 4500 psi (31 MPa),
    // option 2 0.40 and 5000 psi (35 MPa). Limestone is neither pozzolan nor slag.
    const auto [binder, w_cm, psi, mpa] = GENERATE(table<std::string, double, double, double>({
        {"slag cement", 0.45, 4500, 31},
        {"fly ash", 0.45, 4500, 31},
        {"silica fume", 0.45, 4500, 31},
        {"natural pozzolan", 0.45, 4500, 31},
        {"ground limestone", 0.40, 5000, 35},
    }));
    INFO(binder);
    const Solved us = check({.exposure = "S3", .second_binder = binder});
    const Solved si = check({.reporting = "si", .exposure = "S3", .second_binder = binder});
    CHECK_THAT(most_w_cm(us), WithinAbs(w_cm, exact));
    CHECK_THAT(least_strength(us, "psi"), WithinAbs(psi, exact));
    CHECK_THAT(least_strength(si, "MPa"), WithinAbs(mpa, exact));
}

TEST_CASE("the strictest of several classes governs") {
    // Cells of ACI 318-19 Table 19.3.2.1, the lowest w/cm and the highest strength by hand
    const auto [exposure, w_cm, psi, mpa, governing] =
        GENERATE(table<std::string, double, double, double, std::string>({
            {"F3, S1, W2, C2", 0.40, 5000, 35, "F3, C2"},
            {"F2, S1, W1, C2", 0.40, 5000, 35, "C2"},
            {"F2, S1, W2, C1", 0.45, 4500, 31, "F2"},
            {"F2, S2, W1, C1", 0.45, 4500, 31, "F2, S2"},
            {"F1, S1, W2, C1", 0.50, 4000, 28, "S1, W2"},
            {"F1, S0, W1, C1", 0.55, 3500, 24, "F1"},
        }));
    INFO(exposure);
    const Solved us = check({.exposure = exposure});
    const Solved si = check({.reporting = "si", .exposure = exposure});
    CHECK_THAT(most_w_cm(us), WithinAbs(w_cm, exact));
    CHECK_THAT(least_strength(us, "psi"), WithinAbs(psi, exact));
    CHECK_THAT(least_strength(si, "MPa"), WithinAbs(mpa, exact));
    CHECK(us.check("w_cm.exposure")->requirement == governing);
}

TEST_CASE("proportioning takes the lowest w/cm of the stated classes") {
    // Cells of ACI 318-19 Table 19.3.2.1; 2500 psi on average asks more than 0.60 everywhere
    // (ACI 211.1-91 Table 6.3.4(a)), so that exposure governs
    const auto [exposure, w_cm] = GENERATE(table<std::string, double>({
        {"F3, S1, W2, C2", 0.40},
        {"F2, S0, W0, C1", 0.45},
        {"F0, S1, W0, C0", 0.50},
        {"F1, S0, W0, C0", 0.55},
    }));
    INFO(exposure);
    const Solved mix = solve(fmt::format(R"(boardmark: 1
title: exposure governs
reporting: us
requirements:
  {{code: ACI 318-19, exposure: [{}], strength: 2500 psi, average_strength: 2500 psi, slump: 3 in}}
materials:
  cement: {{kind: portland cement}}
  stone: {{kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.65,
          absorption: 1 %, dry_rodded_density: 100 lb/ft3}}
  sand: {{kind: fine aggregate, relative_density: 2.65, absorption: 1 %, fineness_modulus: 2.8}}
mixture: {{binder: {{cement: 100 %}}, coarse: {{stone: 100 %}}, fine: {{sand: 100 %}}}}
)",
                                         exposure));
    CHECK_THAT(figure(mix, "w/cm", ""), WithinAbs(w_cm, exact));
    CHECK(mix.proportions.selection.w_cm_governed_by == core::Governor::exposure);
}

TEST_CASE("a strength that equals the other system's print meets it") {
    // ACI 318-19 and ACI 318M-19 Table 19.3.2.1 print pairs that are rounded apart: 31 MPa is
    // 4496 psi, 5000 psi is 34.5 MPa. Each print is the limit of its own edition.
    const auto [system, exposure, strength, verdict] =
        GENERATE(table<std::string, std::string, std::string, Verdict>({
            {"us", "F1", "24 MPa", Verdict::holds}, // 3481 psi
            {"us", "F2", "31 MPa", Verdict::holds},
            {"us", "S0", "17 MPa", Verdict::holds}, // 2466 psi
            {"us", "F2", "30.9 MPa", Verdict::fails},
            {"us", "F2", "4480 psi", Verdict::fails},
            {"si", "C2", "5000 psi", Verdict::holds},
            {"si", "F3", "5000 psi", Verdict::holds},
            {"si", "W2", "4000 psi", Verdict::holds}, // 27.6 MPa
            {"si", "C2", "4990 psi", Verdict::fails},
            {"si", "C2", "34.4 MPa", Verdict::fails},
        }));
    CAPTURE(system, exposure, strength);
    const Solved mix = check({.reporting = system, .exposure = exposure, .strength = strength});
    CHECK(mix.check("strength.exposure")->verdict == verdict);
}

TEST_CASE("F3 goes with C2 in reinforced concrete") {
    // ACI 318-19 Table 19.3.1.1: deicing salt is both F3 and C2
    const auto [exposure, verdict] = GENERATE(table<std::string, Verdict>({
        {"F3, C2", Verdict::holds},
        {"F3, C1", Verdict::watch},
        {"F3", Verdict::watch},
    }));
    INFO(exposure);
    const Solved mix = check({.exposure = exposure});
    REQUIRE(mix.check("exposure.consistent"));
    CHECK(mix.check("exposure.consistent")->verdict == verdict);
}
