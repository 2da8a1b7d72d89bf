// One concrete has one temperature: what the wall file states beside what the mix file computes.

#include <boardmark/core/wall/concrete_temperatures.hpp>

#include "walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::TemperatureOrigin;

namespace {

using Degrees = std::optional<double>;

constexpr auto wall = TemperatureOrigin::wall_file;
constexpr auto mix = TemperatureOrigin::mix_file;

core::ConcreteTemperatures temperatures(Degrees wall_c, Degrees mixed_c, Degrees placed_c) {
    core::Wall planned = wall_of(run_of(5, 2, 250));
    planned.placing.concrete_c = wall_c;
    core::Proportions proportions;
    if (mixed_c) {
        proportions.temperature = core::MixtureTemperature{};
        proportions.temperature->mixed_c = mixed_c;
        proportions.temperature->placed_c = placed_c;
    }
    return core::concrete_temperatures(planned, proportions);
}

} // namespace

TEST_CASE("the colder and the warmer of two files' concrete are told apart") {
    const auto [wall_c, mixed_c, placed_c, colder_c, colder_from, warmer_c, warmer_from] = GENERATE(
        table<Degrees, Degrees, Degrees, double, TemperatureOrigin, double, TemperatureOrigin>({
            {18, 15, 12, 12, mix, 18, wall},           // after the haul, which is what is placed
            {18, 15, std::nullopt, 15, mix, 18, wall}, // without a haul as mixed
            {10, 25, 24, 10, wall, 24, mix},
            {18, std::nullopt, std::nullopt, 18, wall, 18, wall},
            {std::nullopt, 25, 24, 24, mix, 24, mix},
        }));
    const auto found = temperatures(wall_c, mixed_c, placed_c);
    REQUIRE(found.concrete);
    CHECK_THAT(found.concrete->colder.value_c, WithinAbs(colder_c, 1e-12));
    CHECK_THAT(found.concrete->warmer.value_c, WithinAbs(warmer_c, 1e-12));
    CHECK(found.concrete->colder.from == colder_from);
    CHECK(found.concrete->warmer.from == warmer_from);
    CHECK(found.concrete_stated == wall_c.has_value());
    CHECK(found.after_haul == placed_c.has_value());
    CHECK_FALSE(found.air);
}

TEST_CASE("a temperature that neither file knows stays unknown") {
    CHECK_FALSE(temperatures(std::nullopt, std::nullopt, std::nullopt).concrete);
}
