// AS 3600 Section 4, from memory; public pages contradict each other on B1 to C1. So nothing here may
// say more than "watch". The chloride of normal-class concrete was read in one copy.

#include "codes_support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using core::Verdict;

TEST_CASE("AS 3600: strength by class, from memory") {
    const auto [name, mpa] = GENERATE(table<std::string, double>({
        {"A1", 20},
        {"A2", 25},
        {"B1", 32},
        {"B2", 40},
        {"C1", 50},
        {"C2", 50},
    }));
    INFO(name);
    const Solved strong = hold({.code = "AS 3600", .exposure = name, .strength = "60 MPa"});
    CHECK(least_of(strong, "strength.exposure") == mpa);
    CHECK(strong.check("strength.exposure")->verdict == Verdict::watch);
    CHECK_FALSE(strong.check("w_cm.exposure")); // the code bounds none
    CHECK(strong.check("code.scope")->verdict == Verdict::watch);
    const Solved weak = hold({.code = "AS 3600", .exposure = name, .strength = "19 MPa"});
    CHECK(weak.check("strength.exposure")->verdict == Verdict::fails);
}

TEST_CASE("AS 3600: chloride of 1 m3 of concrete, 0.8 kg") {
    // Acid-soluble: never more than a watch. Read in one copy.
    const auto with_chloride = [](const std::string& percent) {
        std::string text = text_of({.code = "AS 3600", .exposure = "B2"});
        const std::string cement = "CEM I 42.5 N, chloride: 0 %";
        text.replace(text.find(cement), cement.size(), "CEM I 42.5 N, chloride: " + percent);
        return solve(text, input::Purpose::check).check("chloride.exposure")->verdict;
    };
    CHECK(with_chloride("0.15 %") == Verdict::watch); // 0.60 kg and what the water brings
    CHECK(with_chloride("0.25 %") == Verdict::fails); // 1.00 kg
}

TEST_CASE("AS 3600: frost asks strength and air, by its cycles") {
    const Solved some = hold({.code = "AS 3600", .exposure = "A2, some frost"});
    CHECK(least_of(some, "strength.exposure") == 32);
    CHECK(some.check("air.exposure")->verdict == Verdict::watch);
    const Solved much = hold({.code = "AS 3600", .exposure = "A2, much frost", .air_percent = 2});
    CHECK(least_of(much, "strength.exposure") == 40);
    CHECK(much.check("air.exposure")->verdict == Verdict::fails);
}
