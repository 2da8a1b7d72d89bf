// The library's front: files in; results, faults with their places, reports out.

#include <boardmark/boardmark.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <limits>

using namespace boardmark;
using Catch::Matchers::Contains;
using Catch::Matchers::Equals;
using Catch::Matchers::WithinAbs;

namespace {

std::string example(const std::string& name) {
    return std::string{BOARDMARK_SOURCE} + "/examples/" + name;
}

std::string text_of(const std::string& path) {
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

std::string changed(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

/// A mix that a program has built.
core::Mix in_memory() {
    core::Mix mix{.title = "Quay terrace",
                  .system = core::UnitSystem::si,
                  .requirements = {.strength_mpa = 20, .slump_mm = 75}};
    core::Material stone{.name = "stone", .kind = core::Kind::coarse_aggregate};
    stone.relative_density = 2.68;
    stone.aggregate.absorption_percent = 0.5;
    stone.aggregate.moisture_percent = 1;
    stone.aggregate.nominal_max_size_mm = 19;
    stone.aggregate.dry_rodded_density_kg_m3 = 1600;
    core::Material sand{.name = "sand", .kind = core::Kind::fine_aggregate};
    sand.relative_density = 2.64;
    sand.aggregate.absorption_percent = 0.7;
    sand.aggregate.moisture_percent = 3;
    sand.aggregate.fineness_modulus = 2.8;
    mix.binder = {{core::Material{.name = "cement", .kind = core::Kind::portland_cement}, 100}};
    mix.coarse = {{stone, 100}};
    mix.fine = {{sand, 100}};
    return mix;
}

} // namespace

TEST_CASE("a mix file is opened, worked through and reported") {
    const auto mix = open(example("quay-wall.yaml"));
    REQUIRE(mix);
    CHECK_THAT(mix.told(), Equals(""));
    const WorkedMix& worked = mix.value();
    CHECK_THAT(worked.title(), Contains("Quay terrace"));
    CHECK_FALSE(worked.checks().empty());
    CHECK_THAT(worked.text(), Contains(worked.title()));
    CHECK(worked.text(true).size() > worked.text().size());
    CHECK_THAT(worked.json(), Contains("\"command\": \"proportion\""));
    CHECK_THAT(worked.csv(), Contains("cement"));
    CHECK_THAT(worked.html(), Contains("</html>"));
}

TEST_CASE("submitted amounts are checked by the same door") {
    const auto mix = open(example("submitted-mix.yaml"));
    REQUIRE(mix);
    CHECK(mix.value().proportions().submitted);
    CHECK_THAT(mix.value().json(), Contains("\"command\": \"check\""));
}

TEST_CASE("a batch weighs what the proportions hold") {
    const auto mix = open(example("quay-wall.yaml"), Purpose::batch);
    const auto batch = mix.value().batch(0.5);
    REQUIRE(batch);
    CHECK_THAT(batch.value().mass_kg,
               WithinAbs(0.5 * *mix.value().proportions().totals.fresh_density_kg_m3, 1e-6));
    CHECK_FALSE(mix.value().batch(0));
    CHECK_THROWS_AS(mix.value().batch(-1).value(), Faulty);
}

TEST_CASE("a batch is not weighed of what the program refuses to weigh") {
    const auto mix = open(example("quay-wall.yaml"), Purpose::batch);
    for (const double volume_m3 : {1e308, 1e5, 1e-6, std::numeric_limits<double>::quiet_NaN(),
                                   std::numeric_limits<double>::infinity()}) {
        INFO(volume_m3);
        CHECK_THAT(mix.value().batch(volume_m3).told(), Contains("the volume of a batch"));
    }
    const std::string submittal = "boardmark: 1\n"
                                  "reporting: si\n"
                                  "title: Quay terrace\n"
                                  "requirements: {strength: 30 MPa, slump: 75 mm}\n"
                                  "materials:\n"
                                  "  cement: {kind: portland cement}\n"
                                  "  stone: {kind: coarse aggregate, nominal_max_size: 19 mm}\n"
                                  "proportions:\n"
                                  "  {volume: 1 m3, water: 165 kg, cement: 370 kg, air: 2 %}\n";
    const auto without = read(submittal, "mix.yaml");
    INFO(without.told());
    REQUIRE(without);
    CHECK_THAT(without.value().batch(1).told(),
               Contains("no coarse aggregate") && Contains("no fine aggregate"));
    core::Mix usual = in_memory();
    usual.coarse[0].material.edit().aggregate.typical = true;
    const auto estimate = work(usual);
    INFO(estimate.told());
    REQUIRE(estimate);
    CHECK_THAT(estimate.value().batch(1).told(), Contains("must not be batched"));
}

TEST_CASE("a site in memory asks what the same site asks in a file") {
    // ACI 318-19 Table 19.3.1.1: freezing, wet and deicer: F3; sea spray on steel: C2; 0.15 % of
    // sulfate in the soil: S1
    core::Mix mix = in_memory();
    mix.requirements.exposure.clear();
    mix.requirements.site = core::Site{true, true, true, core::Sea::spray, 0.15};
    const auto worked = work(mix);
    INFO(worked.told());
    REQUIRE(worked);
    const auto& asked = worked.value().requirements();
    for (const char* name : {"F3", "S1", "C2"}) {
        INFO(name);
        CHECK(std::ranges::count(asked.exposure, name) == 1);
        CHECK(std::ranges::count(asked.exposure_by_site, name) == 1);
    }
    CHECK(worked.value().proportions().totals.w_cm < 0.4 + 1e-9); // C2: Table 19.3.2.1
}

TEST_CASE("a wrong file gives its faults with their places, and throws only where asked") {
    const std::string text =
        changed(text_of(example("submitted-mix.yaml")), "strength: ", "strenth: ");
    const auto mix = read(text, "mix.yaml");
    REQUIRE_FALSE(mix);
    REQUIRE_FALSE(mix.faults().empty());
    CHECK(mix.faults().front().file == "mix.yaml");
    CHECK(mix.faults().front().line > 0);
    CHECK_THAT(mix.told(), Contains("strenth"));
    CHECK_FALSE(mix.unresolved());
    CHECK_THROWS_AS(mix.value(), Faulty);
    CHECK_THROWS_WITH(mix.value(), Contains("strenth"));
}

TEST_CASE("a file that is not there is a fault") {
    const auto mix = open(example("no-such-file.yaml"));
    REQUIRE(mix.faults().size() == 1);
    CHECK_THAT(mix.faults().front().message, Contains("No such file"));
}

TEST_CASE("a well-formed file from which nothing follows says what would settle it") {
    std::string text = text_of(example("first-trial.yaml"));
    const auto sound = read(text, "mix.yaml");
    REQUIRE(sound);
    const std::size_t at = text.find("  slump:");
    REQUIRE(at != std::string::npos);
    text.replace(at, text.find('\n', at) - at, "  slump: 11 in");
    const auto mix = read(text, "mix.yaml");
    INFO(mix.told());
    REQUIRE_FALSE(mix);
    REQUIRE(mix.unresolved());
    CHECK_FALSE(mix.unresolved()->ways_out.empty());
    CHECK_THROWS_AS(mix.value(), NothingFollows);
    CHECK_THROWS_AS(mix.value(), std::exception);
}

TEST_CASE("a text without a loader names no other file") {
    const auto mix = read(text_of(example("quay-wall-by-results.yaml")), "mix.yaml");
    REQUIRE_FALSE(mix);
    CHECK_THAT(mix.told(), Contains("no loader"));
}

TEST_CASE("a text of any kind without a loader names no other file") {
    // by hand: each names a file of its own beside it
    const auto wall = read_wall(text_of(example("terrace-walls.yaml")), "wall.yaml", {});
    CHECK_THAT(wall.told(), Contains("no loader"));
    const auto trial = read_trial(text_of(example("quay-wall-trial.yaml")), "trial.yaml", {});
    CHECK_THAT(trial.told(), Contains("no loader"));
    const auto results =
        read_results(text_of(example("strength-results.yaml")), "r.yaml", {}, 20000);
    CHECK_THAT(results.told(), Contains("no loader"));
}

TEST_CASE("a name that is no UTF-8 is written with a sign in its place") {
    core::Mix mix = in_memory();
    mix.title = "Quay \xFF terrace";
    CHECK_THAT(work(mix).value().json(), Contains("Quay \xEF\xBF\xBD terrace"));
}

TEST_CASE("a mix that was built in memory is told its faults by member") {
    core::Mix mix{.title = "Quay terrace",
                  .system = core::UnitSystem::si,
                  .requirements = {.strength_mpa = 25, .slump_mm = 75}};
    const auto worked = work(mix);
    REQUIRE(worked.faults().size() == 3);
    CHECK_THAT(worked.told(), Equals("Quay terrace: binder is missing; concrete holds some\n"
                                     "Quay terrace: coarse is missing; concrete holds some\n"
                                     "Quay terrace: fine is missing; concrete holds some\n"));
}

TEST_CASE("a wall file is planned with its mix") {
    const auto wall = open_wall(example("terrace-walls.yaml"));
    REQUIRE(wall);
    CHECK_FALSE(wall.value().plan().checks.empty());
    CHECK_THAT(wall.value().text(), Contains(wall.value().wall().title));
    CHECK_THAT(wall.value().json(), Contains("\"command\""));
    CHECK_FALSE(wall.value().csv().empty());
    CHECK_THAT(wall.value().html(), Contains("</html>"));
}

TEST_CASE("a trial file is opened with its mix: its yield, its checks, the next trial") {
    const auto trial = open_trial(example("quay-wall-trial.yaml"));
    REQUIRE(trial);
    const WorkedTrial& worked = trial.value();
    CHECK(worked.next().has_value());
    CHECK_FALSE(worked.checks().empty());
    // mass of the batch over its density, by definition
    CHECK_THAT(worked.yield().volume_m3 * worked.yield().density_kg_m3,
               WithinAbs(worked.yield().batch_mass_kg, 1e-9));
    CHECK_THAT(worked.text(), Contains("Quay terrace"));
    CHECK(worked.text(true).size() > worked.text().size());
    CHECK_THAT(worked.json(), Contains("\"command\": \"yield\""));
    CHECK_THAT(worked.csv(), Contains("cement"));
    CHECK_THAT(worked.html(), Contains("</html>"));
}

TEST_CASE("a trial of a day to come is told with its place") {
    const auto trial = open_trial(example("quay-wall-trial.yaml"), 0);
    REQUIRE_FALSE(trial);
    REQUIRE(trial.faults().size() == 1);
    CHECK(trial.faults().front().line > 0);
    CHECK_THAT(trial.told(), Contains("trial.date"));
}

TEST_CASE("strength results are opened and judged") {
    const int today = 20782; // 2026-11-25
    const auto results = open_results(example("strength-results.yaml"), today);
    REQUIRE(results);
    const WorkedResults& worked = results.value();
    CHECK_FALSE(worked.findings().checks.empty());
    CHECK_THAT(worked.text(), Contains(worked.record().title));
    CHECK_THAT(worked.json(), Contains("\"command\": \"strength\""));
    CHECK_FALSE(worked.csv().empty());
    CHECK_THAT(worked.html(), Contains("</html>"));
    CHECK_THAT(open_results(example("no-such.yaml"), today).told(), Contains("cannot be read"));
}
