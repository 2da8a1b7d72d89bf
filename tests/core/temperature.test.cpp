// Temperatures of a mix file: what is checked, what is advised, what is left alone.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/batch.hpp>

#include "support.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <variant>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

/// A mix with places for what it says of temperatures.
struct Weather {
    std::string placing = "";
    std::string stone_c = "40 degF";
    std::string sand_c = "45 degF";
    std::string cement_c = "60 degF";
    std::string water = "water_temperature: 60 degF";
    std::string moisture = "moisture: 6.0 %";
};

std::string text(const Weather& weather) {
    return R"(boardmark: 1
title: Quay terrace in winter
reporting: us
requirements:
  strength: 4500 psi
  slump: 4 in
  section: {thickness: 10 in}
)" + (weather.placing.empty() ? "" : "  placing: {" + weather.placing + "}\n") +
           "materials:\n  cement: {kind: portland cement, temperature: " + weather.cement_c +
           "}\n"
           "  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.68, "
           "absorption: 0.5 %, moisture: 2.0 %, dry_rodded_density: 100 lb/ft3, temperature: " +
           weather.stone_c +
           "}\n  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, "
           "fineness_modulus: 2.8, temperature: " +
           weather.sand_c + (weather.moisture.empty() ? "" : ", " + weather.moisture) +
           "}\nmixture:\n  binder: {cement: 100 %}\n  coarse: {stone: 100 %}\n"
           "  fine: {sand: 100 %}\n" +
           (weather.water.empty() ? "" : "  " + weather.water + "\n");
}

/// The base mix with all its parts at one temperature, which the concrete has too.
std::string all_at(const std::string& degrees, const std::string& placing) {
    return text({.placing = placing,
                 .stone_c = degrees,
                 .sand_c = degrees,
                 .cement_c = degrees,
                 .water = "water_temperature: " + degrees});
}

/// The base mix without any word of temperatures.
std::string silent() {
    std::string yaml = text({.water = ""});
    for (const char* part :
         {", temperature: 40 degF", ", temperature: 45 degF", ", temperature: 60 degF"}) {
        yaml.erase(yaml.find(part), std::string{part}.size());
    }
    return yaml;
}

} // namespace

TEST_CASE("a file that says nothing of temperatures gets no check of them") {
    const Solved mix = solve(silent());
    CHECK_FALSE(mix.proportions.temperature);
    CHECK_FALSE(mix.check("temperature.placing"));
    CHECK_FALSE(mix.check("temperature.mixed"));
    CHECK_FALSE(mix.check("evaporation"));
}

TEST_CASE("what is missing is named and nothing is assumed") {
    const Solved mix = solve(text({.water = "", .moisture = ""}));
    const core::Check* check = mix.check("temperature.placing");
    REQUIRE(check);
    CHECK(check->verdict == Verdict::not_checked);
    CHECK(mix.proportions.temperature->missing ==
          std::vector<std::string>{"materials.sand.moisture", "mixture.water_temperature"});
    CHECK_FALSE(mix.step("mixture_temperature"));
}

TEST_CASE("free water counts at the temperature of its aggregate") {
    const Solved mix = solve(text({}));
    // Sums by hand over the ingredients of 1 m3.
    double held = 0;
    double heat = 0;
    double free_water = 0;
    for (const auto& [name, degrees_f, free_percent] :
         {std::tuple{"cement", 60.0, 0.0}, std::tuple{"stone", 40.0, 1.5},
          std::tuple{"sand", 45.0, 5.3}}) {
        const core::Ingredient& one = mix.ingredient(name);
        const double water = one.dry_kg_m3.value() * free_percent / 100;
        held += 0.22 * one.kg_m3 + water;
        heat += (0.22 * one.kg_m3 + water) * degrees_f;
        free_water += water;
    }
    const double batched = mix.ingredient("water").kg_m3 - free_water;
    const double mixed_f = (heat + 60 * batched) / (held + batched);
    CHECK_THAT(in_unit(*mix.proportions.temperature->mixed_c, "degF"), WithinAbs(mixed_f, 1e-9));
    CHECK_THAT(*mix.step("mixture_temperature")->value,
               WithinAbs(*mix.proportions.temperature->mixed_c, 1e-12));
}

TEST_CASE("in cold air a cold mixture fails and hot water mends it") {
    const std::string placing = "air_temperature: 25 degF, haul: 40 min";
    const Solved cold = solve(text({.placing = placing}));
    CHECK(cold.check("temperature.placing")->verdict == Verdict::fails);
    CHECK(cold.check("temperature.mixed")->verdict == Verdict::watch);
    // 10 in of wall, air between 0 and 30 degF: 65 degF as mixed (ACI 306R).
    CHECK_THAT(in_unit(*cold.check("temperature.mixed")->limit->low, "degF"), WithinAbs(65, 1e-9));
    const core::Step* advice = cold.step("advised_water_temperature");
    REQUIRE(advice);
    const std::string water = std::to_string(in_unit(*advice->value, "degF"));
    const Solved mended =
        solve(text({.placing = placing, .water = "water_temperature: " + water + " degF"}));
    CHECK(mended.check("temperature.placing")->verdict == Verdict::holds);
    CHECK(mended.check("temperature.mixed")->verdict == Verdict::holds);
    CHECK_FALSE(mended.step("advised_water_temperature"));
}

TEST_CASE("what a temperature as placed is worth, in cold air and without it") {
    // 10 in of wall. ACI 306R: in air below 40 degF at least 55 degF as placed and 20 more at most;
    // ACI 301: 95 degF at most, before 90. Water freezes at 32 degF: then there is no hydration.
    struct Row {
        std::string concrete; // all its parts
        std::string placing;
        Verdict verdict;
        std::string source;
    };
    const std::string cold = "air_temperature: 35 degF, haul: 0 min";
    const std::string mild = "air_temperature: 60 degF, haul: 0 min";
    const auto row = GENERATE_COPY(values<Row>({
        {"50 degF", mild, Verdict::holds, "ACI 301"},
        {"80 degF", mild, Verdict::holds, "ACI 301"},
        {"91 degF", mild, Verdict::watch, "ACI 301"},
        {"96 degF", mild, Verdict::fails, "ACI 301"},
        {"54 degF", cold, Verdict::fails, "ACI 306R"},
        {"56 degF", cold, Verdict::holds, "ACI 306R"},
        {"74 degF", cold, Verdict::holds, "ACI 306R"},
        {"76 degF", cold, Verdict::watch, "ACI 306R"},
        {"96 degF", cold, Verdict::fails, "ACI 301"},
    }));
    CAPTURE(row.concrete, row.placing);
    const Solved mix = solve(all_at(row.concrete, row.placing));
    const core::Check* check = mix.check("temperature.placing");
    REQUIRE(check);
    CHECK(check->verdict == row.verdict);
    CHECK(check->source.citation.starts_with(row.source));
    CHECK(check->limit->low.has_value() == (row.placing == cold));
    CHECK((mix.check("temperature.mixed") != nullptr) == (row.placing == cold));
    CHECK_FALSE(mix.check("evaporation"));
}

TEST_CASE("what is placed is not known without the air and the way") {
    // ACI 306R and ACI 301 limit the temperature as placed: what is mixed tells it only where it is
    // beyond mending on the way.
    struct Row {
        std::string concrete; // all its parts
        std::string placing;
        Verdict verdict;
        std::string lacking;
    };
    const auto row = GENERATE(values<Row>({
        {"50 degF", "", Verdict::not_checked,
         "'requirements.placing.air_temperature', 'requirements.placing.haul'"},
        {"50 degF", "air_temperature: 35 degF", Verdict::fails, ""}, // 55 degF at least
        {"60 degF", "air_temperature: 35 degF", Verdict::not_checked,
         "'requirements.placing.haul'"},
        {"60 degF", "haul: 40 min", Verdict::not_checked, "'requirements.placing.air_temperature'"},
        {"91 degF", "", Verdict::not_checked,
         "'requirements.placing.air_temperature', 'requirements.placing.haul'"},
        {"96 degF", "", Verdict::fails, ""}, // 95 degF at most
    }));
    CAPTURE(row.concrete, row.placing);
    const Solved mix = solve(all_at(row.concrete, row.placing));
    const core::Check* check = mix.check("temperature.placing");
    REQUIRE(check);
    CHECK(check->verdict == row.verdict);
    const bool names = std::ranges::any_of(check->message.arguments, [&](const auto& argument) {
        const auto* word = std::get_if<std::string>(&argument.value);
        return word && *word == row.lacking;
    });
    CHECK(names == !row.lacking.empty());
}

TEST_CASE("concrete that freezes fails without a word of the air") {
    const Solved mix = solve(text({.stone_c = "15 degF",
                                   .sand_c = "15 degF",
                                   .cement_c = "20 degF",
                                   .water = "water_temperature: 40 degF"}));
    CHECK(in_unit(*mix.proportions.temperature->mixed_c, "degF") < 32);
    CHECK(mix.check("temperature.placing")->verdict == Verdict::fails);
}

TEST_CASE("where the hottest water is not enough it says so") {
    const Solved frozen = solve(text({.placing = "air_temperature: -10 degF",
                                      .stone_c = "10 degF",
                                      .sand_c = "10 degF",
                                      .cement_c = "20 degF"}));
    CHECK_FALSE(frozen.step("advised_water_temperature"));
    CHECK(std::ranges::any_of(frozen.proportions.worksheet.cautions, [](const core::Phrase& told) {
        return told.text.find("heat the aggregates") != std::string::npos;
    }));
}

TEST_CASE("in hot air ice mends a mixture that is too hot") {
    const Weather hot{.placing = "air_temperature: 100 degF, haul: 60 min",
                      .stone_c = "105 degF",
                      .sand_c = "100 degF",
                      .cement_c = "150 degF",
                      .water = "water_temperature: 85 degF"};
    const Solved mix = solve(text(hot));
    CHECK(mix.check("temperature.placing")->verdict == Verdict::fails);
    CHECK_FALSE(mix.check("temperature.mixed")); // a matter of cold weather
    const core::Step* advice = mix.step("advised_ice");
    REQUIRE(advice);
    Weather iced = hot;
    iced.water += "\n  ice: " + std::to_string(*advice->value + 0.001) + " kg/m3";
    const Solved mended = solve(text(iced));
    // 95 degF exactly: a watch, because older specifications stop at 90.
    CHECK(mended.check("temperature.placing")->verdict == Verdict::watch);
    CHECK_FALSE(mended.step("advised_ice"));
    // The mixing water stays what it was: ice is a part of it.
    CHECK_THAT(mended.proportions.totals.water_kg_m3,
               WithinAbs(mix.proportions.totals.water_kg_m3, 1e-9));
}

TEST_CASE("more ice than water to batch is no mix") {
    CHECK_THROWS_AS(solve(text({.water = "water_temperature: 60 degF\n  ice: 290 lb/yd3"})),
                    core::Unresolved);
}

TEST_CASE("a batch says how much of its water is ice") {
    const Solved mix = solve(text({.water = "ice: 20 lb/yd3"}), input::Purpose::batch);
    const core::Batch batch = boardmark::test::made(core::batch(
        mix.proportions, {.volume_m3 = inside(2, "yd3")}, mix.tables.water_density_kg_m3));
    const auto told = std::ranges::find_if(batch.order, [](const core::Phrase& caution) {
        return caution.text.find("of the water as ice") != std::string::npos;
    });
    REQUIRE(told != batch.order.end());
    const auto ice = std::get<core::Quantity>(told->arguments.at(0).value);
    CHECK_THAT(in_unit(ice.value, "lb"), WithinAbs(40, 1e-9));
}

TEST_CASE("a submitted mix states its water's temperature among its amounts") {
    const Solved mix = solve(R"(boardmark: 1
title: submitted
reporting: us
requirements: {strength: 4000 psi, slump: 4 in}
materials:
  cement: {kind: portland cement, temperature: 70 degF}
  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.68, absorption: 0 %,
          moisture: 0 %, temperature: 40 degF}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0 %, moisture: 7.7049180328 %,
         temperature: 40 degF}
proportions: {volume: 1 yd3, water: 244 lb, water_temperature: 140 degF, cement: 611 lb,
              stone: 1780 lb, sand: 1220 lb, air: 2 %}
)",
                             input::Purpose::check);
    // The example of ACI 306R: 3000 lb of aggregate with 94 lb of water on it, 150 lb
    // batched: 58.3.
    CHECK_THAT(in_unit(*mix.proportions.temperature->mixed_c, "degF"), WithinAbs(58.3, 0.05));
    CHECK(mix.check("temperature.placing")->verdict == Verdict::not_checked); // no way stated
}

TEST_CASE("evaporation needs the air and the concrete") {
    const Solved mix = solve(
        text({.placing = "air_temperature: 40 degF, haul: 0 min, wind: 20 mph, humidity: 60 %",
              .stone_c = "70 degF",
              .sand_c = "70 degF",
              .cement_c = "70 degF",
              .water = "water_temperature: 70 degF"}));
    // Concrete at 70 degF in this air: 0.314 lb/ft2/h, above 0.2 (the worked check of the warm
    // mix).
    const core::Check* check = mix.check("evaporation");
    REQUIRE(check);
    CHECK(check->verdict == Verdict::watch);
    CHECK_THAT(*check->value, WithinAbs(0.314 * 4.88243, 0.003));
    const Solved half = solve(text({.placing = "wind: 20 mph"}));
    CHECK(half.check("evaporation")->verdict == Verdict::not_checked);
}

TEST_CASE("evaporation names what it lacks, and nothing else") {
    // ACI 305R: temperature of the concrete and of the air, humidity, wind.
    const std::string water = "water_temperature: 60 degF";
    const auto [placing, stated_water, lacking] =
        GENERATE_COPY(table<std::string, std::string, std::string>({
            {"haul: 0 min, wind: 12 mph, humidity: 60 %", water,
             "'requirements.placing.air_temperature'"},
            {"haul: 0 min, air_temperature: 60 degF, humidity: 60 %", water,
             "'requirements.placing.wind'"},
            {"haul: 0 min, air_temperature: 60 degF, wind: 12 mph", water,
             "'requirements.placing.humidity'"},
            {"air_temperature: 60 degF, wind: 12 mph, humidity: 60 %", "",
             "'mixture.water_temperature'"},
            {"air_temperature: 60 degF, wind: 12 mph, humidity: 60 %", water,
             "'requirements.placing.haul'"},
            {"haul: 0 min, wind: 12 mph", water,
             "'requirements.placing.air_temperature', 'requirements.placing.humidity'"},
        }));
    CAPTURE(placing, stated_water);
    const Solved mix = solve(text({.placing = placing, .water = stated_water}));
    const core::Check* check = mix.check("evaporation");
    REQUIRE(check);
    CHECK(check->verdict == Verdict::not_checked);
    CHECK_FALSE(check->requirement.empty());
    CHECK(std::get<std::string>(check->message.arguments.at(0).value) == lacking);
}

TEST_CASE("silica fume halves the evaporation from which to protect, in blended cement too") {
    // 0.2 lb/ft2/h, 0.1 with silica fume: ACI 305R and a paper on silica fume
    const auto [cement, binder, limit] = GENERATE(table<std::string, std::string, double>({
        {"portland cement", "cement: 100 %", 0.2},
        {"blended cement, contains: {slag cement: 30 %}", "cement: 100 %", 0.2},
        {"blended cement, contains: {slag cement: 30 %, silica fume: 5 %}", "cement: 100 %", 0.1},
        {"portland cement", "cement: 92 %, fume: 8 %", 0.1},
    }));
    INFO(cement << "; " << binder);
    std::string yaml =
        text({.placing = "air_temperature: 60 degF, haul: 0 min, wind: 12 mph, humidity: 60 %"});
    const auto swap = [&](const std::string& before, const std::string& after) {
        yaml.replace(yaml.find(before), before.size(), after);
    };
    swap("kind: portland cement", "kind: " + cement);
    swap("materials:\n", "materials:\n  fume: {kind: silica fume, temperature: 60 degF}\n");
    swap("cement: 100 %", binder);
    const Solved mix = solve(yaml);
    const core::Check* check = mix.check("evaporation");
    REQUIRE(check);
    CHECK_THAT(*check->limit->high, WithinAbs(limit * 0.45359237 / (0.3048 * 0.3048), 1e-9));
}
