#include <boardmark/core/placing/placing_day.hpp>
#include <boardmark/core/placing/vibration.hpp>

#include <catch2/catch.hpp>

using namespace boardmark::core;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double rounding = 1e-9;
const LiftRules rules{.least_mm = {},
                      .most_mm = {},
                      .most_architectural_mm = {},
                      .discharge_h = {1.5, {}},
                      .between_lifts_h = {},
                      .part_of_setting_percent = {}};

/// Two lifts of 2 m3 in half an hour each, then a bench of 1 m3 in a quarter.
const std::vector<UnloadedPart> wall_and_bench{{.name = "wall", .lifts = {{2, 0.5}, {2, 0.5}}},
                                               {.name = "bench", .lifts = {{1, 0.25}}}};

TruckedPour trucked(double order_m3, std::optional<double> haul_h,
                    std::optional<double> round_trip_h = {}) {
    return {.order_m3 = order_m3,
            .truck_m3 = 3,
            .parts = {},
            .round_trip_h = round_trip_h,
            .haul_h = haul_h};
}

} // namespace

// Expected values: by hand from the volumes and hours above.
TEST_CASE("lifts follow each other, parts too", "[pour]") {
    const PlacingDay day = placing_day(wall_and_bench, trucked(6, 0.5), rules);
    REQUIRE(day.lifts.size() == 3);
    CHECK(day.lifts[1].part == "wall");
    CHECK(day.lifts[1].lift == 2);
    CHECK_THAT(day.lifts[1].begins_h, WithinAbs(0.5, rounding));
    CHECK(day.lifts[2].part == "bench");
    CHECK_THAT(day.lifts[2].begins_h, WithinAbs(1, rounding));
    CHECK_THAT(day.ends_h, WithinAbs(1.25, rounding));
}

TEST_CASE("a load begins when the one before it is empty", "[pour]") {
    const PlacingDay day = placing_day(wall_and_bench, trucked(5.5, 0.5), rules);
    REQUIRE(day.loads.size() == 2);
    const LoadOfDay& first = day.loads[0];
    const LoadOfDay& second = day.loads[1];
    CHECK_THAT(first.begins_h, WithinAbs(0, rounding));
    CHECK_THAT(first.ends_h, WithinAbs(0.75, rounding)); // 2 m3 and half of the second lift
    CHECK_THAT(*first.batched_h, WithinAbs(-0.5, rounding));
    CHECK_THAT(*first.latest_end_h, WithinAbs(1, rounding)); // 90 min after batching
    CHECK_THAT(second.begins_h, WithinAbs(0.75, rounding));
    CHECK_THAT(second.ends_h, WithinAbs(1.25, rounding)); // half a cubic metre is left
    CHECK_THAT(second.volume_m3, WithinAbs(2.5, rounding));
    CHECK(second.parts == std::vector<std::string>{"wall", "bench"});
}

TEST_CASE("what no lift takes is kept for waste", "[pour]") {
    const PlacingDay day = placing_day(wall_and_bench, trucked(6.5, 0.5), rules);
    REQUIRE(day.loads.size() == 3);
    CHECK(day.loads[2].parts.empty());
    CHECK_THAT(day.loads[2].volume_m3, WithinAbs(0.5, rounding));
    CHECK_THAT(day.loads[2].begins_h, WithinAbs(1.25, rounding));
}

TEST_CASE("a load that comes too old fails by a stated haul alone", "[pour]") {
    const auto verdict = [](std::optional<double> haul_h, std::optional<double> round_trip_h) {
        return placing_day(wall_and_bench, trucked(6, haul_h, round_trip_h), rules)
            .discharge.verdict;
    };
    // The slower load takes 0.75 h, of 1.5 h.
    CHECK(verdict(0.75, {}) == Verdict::holds);
    CHECK(verdict(0.76, {}) == Verdict::fails);
    CHECK(verdict({}, 0.75) == Verdict::holds); // no haul is longer than the round trip
    CHECK(verdict({}, 0.76) == Verdict::watch);
    CHECK(verdict({}, {}) == Verdict::not_checked);
}

TEST_CASE("a pace that is not known gives no times", "[pour]") {
    auto parts = wall_and_bench;
    parts[1].lifts.clear();
    const PlacingDay day = placing_day(parts, trucked(6, 0.5), rules);
    CHECK(day.lifts.empty());
    CHECK(day.loads.empty());
    CHECK(day.discharge.verdict == Verdict::not_checked);
    const PlacingDay untrucked = placing_day(wall_and_bench, std::nullopt, rules);
    CHECK(untrucked.lifts.size() == 3);
    CHECK(untrucked.discharge.verdict == Verdict::not_checked);
}

TEST_CASE("like parts are filled one by one", "[pour]") {
    const PlacingDay day =
        placing_day({{.name = "planter", .lifts = {{1, 0.5}}, .count = 2}}, trucked(2, 0.5), rules);
    REQUIRE(day.lifts.size() == 2);
    CHECK(day.lifts[1].copy == 2);
    CHECK_THAT(day.lifts[1].begins_h, WithinAbs(0.5, rounding));
}

// 100 insertions of 15 s are 25 min.
TEST_CASE("vibrators keep up with the lift", "[pour]") {
    VibrationPlan plan{};
    plan.insertions = 100;
    plan.most_s = 15;
    CHECK(vibrators_at_work(plan, 25.0 / 60) == 1);
    CHECK(vibrators_at_work(plan, 24.0 / 60) == 2);
    CHECK(vibrators_at_work(plan, 2) == 1);
}
