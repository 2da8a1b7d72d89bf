// A figure that is not finite reaches no report.

#include <boardmark/core/wall/wall_plan.hpp>
#include <boardmark/report/wall/wall_report.hpp>

#include "core/base_mix.hpp"
#include "core/walls.hpp"
#include "made.hpp"
#include "wall_support.hpp"

#include <catch2/catch.hpp>

#include <functional>
#include <limits>
#include <stdexcept>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;

namespace {

struct Planned {
    core::Wall wall;
    core::WallPlan plan;
};

Planned planned() {
    const Solved mix = solve(test::text({}));
    core::Wall wall = wall_of(run_of(5, 2, 250));
    wall.mix = mix.mix;
    wall.placing.rise_m_h = 1;
    core::WallPlan plan = boardmark::test::made(core::plan_wall(entered(wall), mix.tables));
    return {std::move(wall), std::move(plan)};
}

constexpr double nowhere = std::numeric_limits<double>::quiet_NaN();
constexpr double endless = std::numeric_limits<double>::infinity();

} // namespace

TEST_CASE("a sound plan is written in every form") {
    const Planned sound = planned();
    const report::WallResult result{sound.wall, sound.plan, "mix.yaml"};
    CHECK_NOTHROW(report::json(result));
    CHECK_NOTHROW(report::text(result, {}));
}

TEST_CASE("the JSON stops at a figure that is not finite and names its place") {
    const auto [value, place] = GENERATE(table<double, std::string>(
        {{nowhere, "pressure.0.kpa"}, {endless, "pressure.0.kpa"}, {-endless, "pressure.0.kpa"}}));
    Planned wrong = planned();
    wrong.plan.forces.front().pressures.front().kpa = value;
    CHECK_THROWS_WITH(report::json(report::WallResult{wrong.wall, wrong.plan, "mix.yaml"}),
                      Contains("not finite") && Contains(place));
}

TEST_CASE("so does a sentence, and a table of the text") {
    Planned wrong = planned();
    wrong.plan.forces.front().rise.stated_m_h = endless;
    CHECK_THROWS_AS(report::text(report::WallResult{wrong.wall, wrong.plan, "mix.yaml"}, {}),
                    std::logic_error);
    wrong = planned();
    wrong.plan.forces.front().pressures.front().kpa = nowhere;
    CHECK_THROWS_AS(report::text(report::WallResult{wrong.wall, wrong.plan, "mix.yaml"}, {}),
                    std::logic_error);
}
