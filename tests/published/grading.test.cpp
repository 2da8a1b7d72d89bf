// Gradings. Fine aggregate: ASTM C33, No. 50 and No. 100 read in a state's specification (older
// editions 10 to 30 and 2 to 10), the other rows from memory. Maximum density line: percent passing
// 100 (d/D)^0.45, FHWA and university notes; the expected cells are those of the formula, worked by
// hand: (1/2)^0.45 = 0.7320, (1/4)^0.45 = 0.5359, (1/8)^0.45 = 0.3923.

#include <boardmark/core/mix/grading.hpp>

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;
using core::Verdict;

namespace {

/// A submitted mix whose aggregates state these sieves; equal volumes of stone and sand.
Solved with_sieves(const std::string& sand, const std::string& stone = "") {
    return solve(fmt::format(R"(boardmark: 1
title: grading
reporting: si
requirements: {{strength: 30 MPa, slump: 100 mm}}
materials:
  cement: {{kind: portland cement}}
  stone: {{kind: coarse aggregate, nominal_max_size: 20 mm, relative_density: 2.70, absorption: 0 %{}}}
  sand: {{kind: fine aggregate, relative_density: 2.60, absorption: 0 %, sieves: {{{}}}}}
proportions: {{volume: 1 m3, water: 170 kg, cement: 350 kg, stone: 945 kg, sand: 910 kg, air: 2 %}}
)",
                             stone.empty() ? "" : ", sieves: {" + stone + "}", sand),
                 input::Purpose::check);
}

std::string sand_with(const std::string& sieve, double percent) {
    std::map<double, std::pair<std::string, double>> all{
        {9.5, {"9.5 mm", 100}},  {4.75, {"4.75 mm", 98}}, {2.36, {"2.36 mm", 85}},
        {1.18, {"1.18 mm", 65}}, {0.6, {"0.6 mm", 42}},   {0.3, {"0.3 mm", 18}},
        {0.15, {"0.15 mm", 4}}};
    std::string text;
    for (const auto& [opening, cell] : all) {
        text += (text.empty() ? "" : ", ") + cell.first + ": " +
                fmt::format("{} %", cell.first == sieve ? percent : cell.second);
    }
    return text;
}

} // namespace

TEST_CASE("limits of fine aggregate by sieve") {
    const auto [sieve, percent, verdict] = GENERATE(table<std::string, double, Verdict>({
        {"4.75 mm", 95, Verdict::holds},
        {"4.75 mm", 94, Verdict::watch},
        {"2.36 mm", 80, Verdict::holds},
        {"2.36 mm", 79, Verdict::watch},
        {"1.18 mm", 85, Verdict::holds},
        {"1.18 mm", 50, Verdict::holds},
        {"1.18 mm", 49, Verdict::watch},
        {"0.6 mm", 60, Verdict::holds},
        {"0.6 mm", 61, Verdict::watch},
        {"0.6 mm", 25, Verdict::holds},
        {"0.6 mm", 24, Verdict::watch},
        {"0.3 mm", 30, Verdict::holds},
        {"0.3 mm", 31, Verdict::watch},
        {"0.3 mm", 5, Verdict::holds},
        {"0.3 mm", 4.5, Verdict::watch},
        {"0.15 mm", 10, Verdict::holds},
        {"0.15 mm", 11, Verdict::watch},
    }));
    INFO(percent << " % passes " << sieve);
    const Solved mix = with_sieves(sand_with(sieve, percent));
    REQUIRE(mix.check("sand.grading"));
    CHECK(mix.check("sand.grading")->verdict == verdict);
}

TEST_CASE("most of a fine aggregate between two sieves is 45 percent") {
    // ASTM C33, read in a state's specification. 85 to 40 is 45, 85 to 39 is 46.
    const std::string start = "4.75 mm: 100 %, 2.36 mm: 95 %, 1.18 mm: 85 %, 0.6 mm: ";
    const std::string end = " %, 0.3 mm: 10 %, 0.15 mm: 2 %";
    CHECK(with_sieves(start + "40" + end).check("sand.grading")->verdict == Verdict::holds);
    CHECK(with_sieves(start + "39" + end).check("sand.grading")->verdict == Verdict::watch);
}

TEST_CASE("line of maximum density") {
    const core::GradingRules& rules = tables_in(UnitSystem::si).grading;
    const auto [opening_mm, percent] = GENERATE(
        table<double, double>({{19, 100}, {9.5, 73.20}, {4.75, 53.59}, {2.375, 39.23}, {0, 0}}));
    CHECK_THAT(core::density_line_percent(opening_mm, 19, rules), WithinAbs(percent, 0.005));
}

TEST_CASE("line of maximum density up to 19 mm at the usual sieves") {
    // The same formula, worked to 0.1 for D = 19 mm.
    const core::GradingRules& rules = tables_in(UnitSystem::si).grading;
    const auto [opening_mm, percent] = GENERATE(table<double, double>({{12.5, 82.8},
                                                                       {9.5, 73.2},
                                                                       {4.75, 53.6},
                                                                       {2.36, 39.1},
                                                                       {1.18, 28.6},
                                                                       {0.6, 21.1},
                                                                       {0.3, 15.5},
                                                                       {0.15, 11.3}}));
    CHECK_THAT(core::density_line_percent(opening_mm, 19, rules), WithinAbs(percent, 0.05));
}

TEST_CASE("the combined grading is the shares' sum by volume") {
    // Equal volumes (945 / 2.70 = 910 / 2.60): the mean of the two curves at each sieve.
    const Solved mix =
        with_sieves(sand_with("", 0), "25 mm: 100 %, 19 mm: 96 %, 9.5 mm: 40 %, 4.75 mm: 6 %");
    const core::Grading combined = core::combined_grading(mix.proportions);
    REQUIRE(combined.size() == 9);
    CHECK(core::maximum_size_mm(combined) == 25.0);
    CHECK_THAT(core::passing_anywhere_percent(combined, 19), WithinAbs(98, 1e-6));
    CHECK_THAT(core::passing_anywhere_percent(combined, 9.5), WithinAbs(70, 1e-6));
    CHECK_THAT(core::passing_anywhere_percent(combined, 4.75), WithinAbs(52, 1e-6));
    // Stone below its finest sieve falls off in proportion to the opening: 6 % times 2.36 / 4.75.
    CHECK_THAT(core::passing_anywhere_percent(combined, 2.36),
               WithinAbs((85 + 6 * 2.36 / 4.75) / 2, 1e-6));
    CHECK(core::combined_grading(with_sieves(sand_with("", 0)).proportions).empty());
}
