// When the forms of a wall may come off: which rule speaks, and that what is not known asks for
// tests of strength. The rules' own figures are held in tests/published/curing.test.cpp.

#include <boardmark/core/wall_plan.hpp>

#include "base_mix.hpp"
#include "walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

const std::string effect = "water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}";
const std::string portland = "{cement: 100 %}";

struct Poured {
    core::AfterPlacing after;
    std::vector<core::Check> checks;
};

struct Pour {
    std::optional<double> air_c, concrete_c;
    std::string binder = portland;
    std::string reducer = effect + ", retards: no";
    double strip_after_h = 72;
};

Poured poured(const Pour& pour) {
    const Solved mix = solve(text({.requirements = "  average_strength: 6000 psi\n",
                                   .reducer = pour.reducer,
                                   .binder = pour.binder}));
    core::Wall wall = wall_of(run_of(5, 2, 250));
    wall.mix = mix.mix;
    wall.placing.air_c = pour.air_c;
    wall.placing.concrete_c = pour.concrete_c;
    wall.placing.strip_after_h = pour.strip_after_h;
    Poured result{{}, {}};
    result.after = core::after_placing(wall, mix.proportions, mix.tables, result.checks);
    return result;
}

} // namespace

TEST_CASE("the later of the two rules of stripping speaks") {
    // 2 MPa of 5000 psi = 34.474 MPa, EN 1992-1-1 class S: root 1 + ln(17.237) / 0.38 = 8.4921,
    // 28 d / 72.116 = 9.318 h at 20 degC; an hour at 10 degC is worth 14.79 / 24 of one, at 15 degC
    // exp(13.65 - 4000 / 288) = 0.7875. ACI 347: 12 h in air above 10 degC.
    const auto [air_c, concrete_c, earliest_h, verdict] =
        GENERATE(table<double, double, double, Verdict>({
            {15, 20, 12, Verdict::holds},                 // by time; by strength 11.83 h
            {15, 10, 9.318 * 24 / 14.79, Verdict::watch}, // by strength, the concrete is colder
            {10, 20, 9.318 * 24 / 14.79, Verdict::watch}, // by time nothing counts
        }));
    const Poured wall = poured({.air_c = air_c, .concrete_c = concrete_c});
    REQUIRE(wall.after.strip.earliest_h());
    CHECK_THAT(*wall.after.strip.earliest_h(), WithinAbs(earliest_h, 0.01));
    REQUIRE(wall.checks.size() == 1);
    CHECK(wall.checks.front().verdict == verdict);
    const Poured early =
        poured({.air_c = air_c, .concrete_c = concrete_c, .strip_after_h = earliest_h - 1});
    CHECK(early.checks.front().verdict == Verdict::fails);
}

TEST_CASE("in frost the face needs more, and below freezing no strength is counted") {
    CHECK(poured({.air_c = 0, .concrete_c = 10}).after.strip.needed_mpa == 5);
    const Poured frozen = poured({.air_c = -1, .concrete_c = 10});
    CHECK_FALSE(frozen.after.strip.earliest_h());
    CHECK(frozen.checks.front().verdict == Verdict::not_checked);
}

TEST_CASE("the curve of strength holds for portland cement that nothing delays") {
    const auto [pour, by_strength] = GENERATE(table<Pour, bool>({
        {{.air_c = 8, .concrete_c = 15}, true},
        {{.air_c = 8, .concrete_c = 15, .binder = "{cement: 75 %, slag: 25 %}"}, false},
        {{.air_c = 8, .concrete_c = 15, .reducer = effect}, false}, // nobody asked its paper
        {{.air_c = 8, .concrete_c = 15, .reducer = effect + ", retards: yes"}, false},
        {{.air_c = 8, .concrete_c = std::nullopt}, false},
        {{.air_c = std::nullopt, .concrete_c = 15}, false},
    }));
    const Poured wall = poured(pour);
    CHECK(wall.after.strip.by_strength_h.has_value() == by_strength);
    CHECK((wall.checks.front().verdict == Verdict::not_checked) != by_strength);
    CHECK(wall.after.strip_open.size() == (by_strength ? 1 : 2));
}
