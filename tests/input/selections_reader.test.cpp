// Selections: values used in place of the method's own.

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinRel;
using core::Selections;

namespace {

constexpr double lb_yd3 = 0.45359237 / 0.764554857984; // kg/m3

using Get = std::optional<double> (*)(const Selections&);

Selections selections_of(const std::string& pairs) {
    return mix_of(with_selections(pairs)).selections;
}

} // namespace

TEST_CASE("every selection arrives in SI in its own field") {
    const auto [pair, get, expected] = GENERATE(table<std::string, Get, double>({
        {"w_cm: 0.40", [](const Selections& s) { return s.w_cm; }, 0.40},
        {"water: 256 lb/yd3", [](const Selections& s) { return s.water_kg_m3; }, 256 * lb_yd3},
        {"binder: 640 lb/yd3", [](const Selections& s) { return s.binder_kg_m3; }, 640 * lb_yd3},
        {"air: 6 %", [](const Selections& s) { return s.air_percent; }, 6},
        {"coarse_volume: 0.62", [](const Selections& s) { return s.coarse_volume; }, 0.62},
        {"coarse_adjustment: -5 %", [](const Selections& s) { return s.coarse_adjustment_percent; },
         -5},
        {"fine_share: 44 %", [](const Selections& s) { return s.fine_share_percent; }, 44},
    }));
    INFO(pair);
    const auto value = get(selections_of(pair));
    REQUIRE(value);
    CHECK_THAT(*value, WithinRel(expected, 1e-9));
    CHECK_FALSE(get(selections_of("")).has_value());
}

TEST_CASE("the ratio may be that of the exposure") {
    const Selections selections = selections_of("w_cm: by exposure");
    CHECK(selections.w_cm_by_exposure);
    CHECK_FALSE(selections.w_cm);
    CHECK_FALSE(selections_of("w_cm: 0.40").w_cm_by_exposure);
}

TEST_CASE("selections that go together") {
    const auto pairs = GENERATE(
        as<std::string>{}, "w_cm: 0.40, water: 256 lb/yd3", "w_cm: 0.40, binder: 640 lb/yd3",
        "water: 256 lb/yd3, binder: 640 lb/yd3", "w_cm: by exposure, water: 256 lb/yd3",
        "w_cm: 0.40, coarse_volume: 0.62, air: 6 %");
    INFO(pairs);
    CHECK(faults_in(with_selections(pairs)).empty());
}

TEST_CASE("selections that exclude each other are told at the later one") {
    const auto [pairs, fault] = GENERATE(table<std::string, std::string>({
        {"w_cm: 0.40, water: 256 lb/yd3, binder: 640 lb/yd3",
         "25:45 selections: 'w_cm', 'water' and 'binder' cannot all be given"},
        {"w_cm: by exposure, water: 256 lb/yd3, binder: 640 lb/yd3",
         "25:52 selections: 'w_cm', 'water' and 'binder' cannot all be given"},
        {"w_cm: by exposure, binder: 640 lb/yd3",
         "25:33 selections: 'binder' leaves no room for 'w_cm: by exposure'"},
        {"coarse_volume: 0.62, fine_share: 44 %",
         "25:35 selections: 'coarse_volume' and 'fine_share' cannot both be given"},
        {"coarse_volume: 0.62, coarse_adjustment: -5 %",
         "25:35 selections: 'coarse_volume' and 'coarse_adjustment' cannot both be given"},
        {"fine_share: 44 %, coarse_adjustment: -5 %",
         "25:32 selections: 'fine_share' and 'coarse_adjustment' cannot both be given"},
    }));
    INFO(pairs);
    CHECK(faults_in(with_selections(pairs)) == std::vector<std::string>{fault});
}

TEST_CASE("ranges of the selections hold their ends") {
    const auto [pair, readable] = GENERATE(table<std::string, bool>({
        {"coarse_adjustment: -10 %", true},
        {"coarse_adjustment: 10 %", true},
        {"coarse_adjustment: -10.1 %", false},
        {"coarse_adjustment: 10.1 %", false},
        {"fine_share: 100 %", true},
        {"fine_share: 0 %", false},
        {"w_cm: 0", false},
        {"w_cm: -0.4", false},
        {"water: 0 lb/yd3", false},
        {"binder: 0 lb/yd3", false},
        {"air: 0 %", true},
        {"air: -1 %", false},
        {"coarse_volume: 0", false},
    }));
    INFO(pair);
    const auto read = input::read_mix(with_selections(pair), "test.yaml",
                                      read_options(input::Purpose::proportion));
    CHECK(!input::has_errors(read.diagnostics) == readable);
}
