// The class of flow by which the forms are loaded: never stiffer than the slump tells. The ends of
// the classes are held in tests/published/flow_classes.test.cpp.

#include "core/wall/flow_of_pour.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include "base_mix.hpp"
#include "walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;

TEST_CASE("DIN's class is the more fluid of the stated one and the slump's") {
    // Slump of 4 in with its tolerance of 1 in: 127 mm, F3 (to 150 mm); 7 in with 1 1/2 in: 216 mm,
    // F5 or F6 (above 210 mm). ASTM C94 for the tolerances.
    const auto [slump, stated, spread_mm, governs, watched] =
        GENERATE(table<std::string, std::optional<int>, std::optional<double>, std::string, bool>({
            {"4 in", 3, {}, "F3", false},
            {"4 in", 2, {}, "F3", true},
            {"4 in", 4, {}, "F4", true},
            {"4 in", {}, 480, "F3", false}, // F3 ends there
            {"4 in", {}, 400, "F3", true},
            {"4 in", {}, 500, "F4", true},
            {"7 in", 5, {}, "F5", false},
            {"7 in", 6, {}, "F6", false},
            {"7 in", 4, {}, "F6", true}, // slump does not tell which of the two
        }));
    INFO(slump << ", F" << stated.value_or(0) << ", " << spread_mm.value_or(0) << " mm");
    const Solved mix =
        solve(text({.requirements = "  average_strength: 6000 psi\n", .slump = slump}));
    core::Wall wall = wall_of(run_of(5, 2, 250));
    wall.mix = mix.mix;
    wall.placing.flow_class = stated;
    wall.placing.spread_mm = spread_mm;
    const core::FormCase pour = core::form_case(wall, mix.proportions, 2, 1, mix.tables);
    CHECK(pour.flow_class == governs);
    const auto check = core::check_flow_class(wall, pour, mix.tables.forms->flow);
    CHECK(check.has_value() == watched);
    if (check) {
        CHECK(check->verdict == core::Verdict::watch);
    }
}
