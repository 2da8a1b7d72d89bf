// Largest aggregate: ACI 318-19 26.4.2.1(a)(5), at most 1/5 of the narrowest dimension between the
// forms and 3/4 of the clear spacing of the bars (read in published answers and in Army text). 3/4
// of the clear cover is advice for exposed faces, ACI 303R from memory.

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

Solved check(const std::string& size, const std::string& section, const char* reinforced = "yes") {
    return solve(fmt::format(R"(boardmark: 1
title: size of the stone
reporting: us
requirements: {{strength: 4000 psi, slump: 3 in, reinforced: {}, section: {{{}}}}}
materials:
  cement: {{kind: portland cement}}
  stone: {{kind: coarse aggregate, nominal_max_size: {}}}
proportions: {{volume: 1 yd3, water: 280 lb, cement: 600 lb, air: 2 %}}
)",
                             reinforced, section, size),
                 input::Purpose::check);
}

constexpr const char* ten_inch_wall =
    "thickness: 10 in, clear_bar_spacing: 3 in, clear_cover: 2 in";

} // namespace

TEST_CASE("largest stone in a 10 in wall with bars 3 in apart") {
    // ACI 318-19 26.4.2.1(a)(5) by hand: 10/5 = 2.0 in and 3 times 3/4 = 2.25 in; 2 times 3/4 = 1.5
    const auto [id, most_in] = GENERATE(table<std::string, double>({
        {"size.form", 2.0},
        {"size.bars", 2.25},
        {"size.cover", 1.5},
    }));
    INFO(id);
    const Solved mix = check("3/4 in", ten_inch_wall);
    REQUIRE(mix.check(id));
    CHECK_THAT(in_unit(mix.check(id)->limit.value().high.value(), "in"), WithinAbs(most_in, exact));
    CHECK(mix.check(id)->verdict == Verdict::holds);
}

TEST_CASE("stone at and above what it must pass") {
    // ACI 318-19 26.4.2.1(a)(5) in the same wall; the cover only advises
    const auto [size, form, bars, cover] = GENERATE(table<std::string, Verdict, Verdict, Verdict>({
        {"1 1/2 in", Verdict::holds, Verdict::holds, Verdict::holds},
        {"2 in", Verdict::holds, Verdict::holds, Verdict::watch},
        {"2.25 in", Verdict::fails, Verdict::holds, Verdict::watch},
        {"3 in", Verdict::fails, Verdict::fails, Verdict::watch},
    }));
    INFO(size);
    const Solved mix = check(size, ten_inch_wall);
    CHECK(mix.check("size.form")->verdict == form);
    CHECK(mix.check("size.bars")->verdict == bars);
    CHECK(mix.check("size.cover")->verdict == cover);
}

TEST_CASE("plain concrete has no bars to pass") {
    // ACI 318-19 26.4.2.1(a)(5): the spacing is that of reinforcement
    const Solved mix = check("3/4 in", "thickness: 10 in", "no");
    CHECK(mix.check("size.form")->verdict == Verdict::holds);
    CHECK_FALSE(mix.check("size.bars"));
    CHECK_FALSE(mix.check("size.cover"));
}
