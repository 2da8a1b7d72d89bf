// Requirements: every key arrives in SI in its own field, and the rules between keys.

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinRel;
using core::AirBasis;
using core::Requirements;

namespace {

constexpr double psi = 0.45359237 * 9.80665 / (0.0254 * 0.0254) / 1e6; // MPa
constexpr double inch = 25.4;                                          // mm
constexpr double lb_yd3 = 0.45359237 / 0.764554857984;                 // kg/m3

using Get = double (*)(const Requirements&);

Requirements requirements_of(const std::string& line) {
    return mix_of(with_requirement(line)).requirements;
}

std::vector<std::string> faults_with(const std::string& line) {
    return faults_in(with_requirement(line));
}

} // namespace

TEST_CASE("the required keys arrive in SI") {
    const Requirements requirements = mix_of(sound_mix).requirements;
    CHECK_THAT(requirements.strength_mpa, WithinRel(4500 * psi, 1e-9));
    CHECK_THAT(requirements.slump_mm, WithinRel(4 * inch, 1e-9));
}

TEST_CASE("what holds where a requirement is left out") {
    const Requirements requirements = mix_of(sound_mix).requirements;
    CHECK(requirements.code.empty());
    CHECK(requirements.exposure.empty());
    CHECK(requirements.reinforced);
    CHECK(requirements.strength_age_d == 28);
    CHECK_FALSE(requirements.records);
    CHECK(requirements.strength_curve.empty());
    CHECK_FALSE(requirements.average);
    CHECK_FALSE(requirements.slump_before_reducer_mm);
    CHECK_FALSE(requirements.slump_window);
    CHECK(requirements.air.basis == AirBasis::exposure);
    CHECK(requirements.air_loss_percent == 0);
    CHECK_FALSE(requirements.section.thickness_mm);
    CHECK_FALSE(requirements.section.clear_bar_spacing_mm);
    CHECK_FALSE(requirements.section.clear_cover_mm);
    CHECK_FALSE(requirements.minimum_binder_kg_m3);
    CHECK_FALSE(requirements.board_marked);
}

TEST_CASE("every optional number arrives in SI in its own field") {
    const auto [line, get, expected] = GENERATE(table<std::string, Get, double>({
        {"strength_age: 56 d", [](const Requirements& r) { return r.strength_age_d; }, 56},
        {"strength_age: 3 months", [](const Requirements& r) { return r.strength_age_d; },
         3 * 365.25 / 12},
        {"strength_records: {tests: 18, standard_deviation: 480 psi}",
         [](const Requirements& r) { return double(r.records->tests); }, 18},
        {"strength_records: {tests: 18, standard_deviation: 480 psi}",
         [](const Requirements& r) { return r.records->standard_deviation_mpa; }, 480 * psi},
        {"strength_records: {tests: 18, standard_deviation: 480 psi, strength: 4000 psi}",
         [](const Requirements& r) { return *r.records->strength_mpa; }, 4000 * psi},
        {"strength_records: {tests: 18, standard_deviation: 480 psi, age: 9 months}",
         [](const Requirements& r) { return *r.records->age_d; }, 9 * 365.25 / 12},
        {"strength_curve: {0.40: 6200 psi, 0.45: 5400 psi}",
         [](const Requirements& r) { return r.strength_curve.at(0).w_cm; }, 0.40},
        {"strength_curve: {0.40: 6200 psi, 0.45: 5400 psi}",
         [](const Requirements& r) { return r.strength_curve.at(1).strength_mpa; }, 5400 * psi},
        {"average_strength: 5900 psi",
         [](const Requirements& r) { return r.average->strength_mpa; }, 5900 * psi},
        {"slump_window: 3 in to 5 in", [](const Requirements& r) { return r.slump_window->low_mm; },
         3 * inch},
        {"slump_window: 3 in to 5 in",
         [](const Requirements& r) { return r.slump_window->high_mm; }, 5 * inch},
        {"air: 5.5 %", [](const Requirements& r) { return r.air.percent; }, 5.5},
        {"air_loss: 1.5 %", [](const Requirements& r) { return r.air_loss_percent; }, 1.5},
        {"section: {thickness: 10 in}",
         [](const Requirements& r) { return *r.section.thickness_mm; }, 10 * inch},
        {"section: {clear_bar_spacing: 5 in}",
         [](const Requirements& r) { return *r.section.clear_bar_spacing_mm; }, 5 * inch},
        {"section: {clear_cover: 2 in}",
         [](const Requirements& r) { return *r.section.clear_cover_mm; }, 2 * inch},
        {"minimum_binder: 560 lb/yd3",
         [](const Requirements& r) { return *r.minimum_binder_kg_m3; }, 560 * lb_yd3},
    }));
    INFO(line);
    CHECK_THAT(get(requirements_of(line)), WithinRel(expected, 1e-9));
}

TEST_CASE("the words of air select its basis") {
    const auto [line, basis] = GENERATE(table<std::string, AirBasis>({
        {"air: exposure", AirBasis::exposure},
        {"air: none", AirBasis::none},
        {"air: 6 %", AirBasis::stated},
        {"air: 0 %", AirBasis::stated},
    }));
    INFO(line);
    CHECK(requirements_of(line).air.basis == basis);
}

TEST_CASE("texts and switches of the requirements") {
    CHECK_FALSE(requirements_of("reinforced: no").reinforced);
    CHECK(requirements_of("finish: board-marked").board_marked);
    CHECK(requirements_of("finish: board-formed").board_marked);
    CHECK(requirements_of("code: ACI 318-19").code == "ACI 318-19");
    CHECK(requirements_of("code: ACI 318-19\n  exposure: [F2, C1]").exposure ==
          std::vector<std::string>{"F2", "C1"});
    CHECK(requirements_of("average_strength: 5900 psi\n  average_strength_basis: \"trials\"")
              .average->basis == "trials");
}

TEST_CASE("the slump before the reducer arrives where a reducer is in the mix") {
    const std::string text = changed(with_dose("8 fl oz/cwt"), "  slump: 4 in\n",
                                     "  slump: 8 in\n  slump_before_reducer: 3 in\n");
    CHECK_THAT(*mix_of(text).requirements.slump_before_reducer_mm, WithinRel(3 * inch, 1e-9));
}

TEST_CASE("rules between the keys of the requirements") {
    const auto [line, fault] = GENERATE(table<std::string, std::string>({
        {"exposure: [F2]", "4:1 requirements has no 'code'; exposure classes are a code's"},
        {"code: EN 207", "7:9 requirements.code: 'EN 207' is not a code known here"},
        {"code: ACI 318-19\n  exposure: [F4]",
         "8:14 requirements.exposure: 'F4' is not an exposure class of ACI 318-19"},
        {"code: ACI 318-19\n  exposure: [F2, F3]",
         "8:18 requirements.exposure: F3 and F2 are of one category"},
        {"code: ACI 318-19\n  exposure: [C1, f2]",
         "8:18 requirements.exposure: 'f2' is not an exposure class of ACI 318-19"},
        {"code: ACI 318-19\n  exposure: [F2, F2]",
         "8:18 requirements.exposure: F2 is given a second time"},
        {"strength_records: {tests: 18}",
         "7:3 requirements.strength_records has no 'standard_deviation'"},
        {"strength_records: {standard_deviation: 480 psi}",
         "7:3 requirements.strength_records has no 'tests'"},
        {"strength_curve: {0.40: 6200 psi}", "7:3 requirements.strength_curve has a single point"},
        {"strength_curve: {0.45: 5400 psi, 0.40: 6200 psi}",
         "7:36 requirements.strength_curve: the ratios do not increase"},
        {"strength_curve: {0.40: 5400 psi, 0.45: 5400 psi}",
         "7:42 requirements.strength_curve: strength does not fall as w/cm rises"},
        {"average_strength: 4499 psi",
         "7:21 requirements.average_strength is below 'strength': half of all tests would fail"},
        {"average_strength_basis: \"trials\"",
         "7:3 requirements.average_strength_basis is given without 'average_strength'"},
        {"slump_window: 5 in to 8 in",
         "7:17 requirements.slump_window does not include the required slump"},
        {"slump_window: 2 in to 3 in",
         "7:17 requirements.slump_window does not include the required slump"},
    }));
    INFO(line);
    CHECK(faults_with(line) == std::vector<std::string>{fault});
}

TEST_CASE("limits of the rules between the keys") {
    const auto line =
        GENERATE(as<std::string>{},
                 "average_strength: 4500 psi", // equal to the strength
                 "slump_window: 4 in to 6 in", // the slump is one of its ends
                 "slump_window: 2 in to 4 in", "strength_curve: {0.40: 5401 psi, 0.41: 5400 psi}");
    INFO(line);
    CHECK(faults_with(line).empty());
}

TEST_CASE("a class of strength is told in its own words") {
    const auto [written, told] = GENERATE(table<std::string, bool>({
        {"C35/44", true},
        {"\"C35/44\"", true},
        {"35/45", false},
        {"Class 35", false},
    }));
    INFO(written);
    const auto faults = faults_in(changed(sound_mix, "4500 psi", written));
    REQUIRE(faults.size() == 1);
    CHECK((faults[0] ==
           "5:13 requirements.strength: 'C35/44' is not a strength class known here") == told);
}

TEST_CASE("a required key that is missing is told at its section") {
    const auto [key, fault] = GENERATE(table<std::string, std::string>({
        {"  strength: 4500 psi\n", "4:1 requirements has no 'strength'"},
        {"  slump: 4 in\n", "4:1 requirements has no 'slump'"},
    }));
    INFO(key);
    CHECK(faults_in(changed(sound_mix, key, "")) == std::vector<std::string>{fault});
}
