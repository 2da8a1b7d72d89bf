// The working case of this program's own documents, a terrace of walls on a quay, recomputed by
// hand from the published tables and rules; beside each value stands where it comes from. Held
// against the JSON that the program prints and, in lb/yd3, against the amounts of the text.

#include <boardmark/report/mix/mix_report.hpp>

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

const std::string quay = R"(boardmark: 1
title: Quay terrace, bench and retaining walls
reporting: us
method: ACI 211.1
requirements:
  code: ACI 318-19
  exposure: [F2, S1, W1, C2]
  reinforced: yes
  strength: 5000 psi
  strength_records: {tests: 18, standard_deviation: 480 psi, strength: 5000 psi, age: 9 months}
  strength_curve: {0.36: 6900 psi, 0.40: 6200 psi, 0.45: 5400 psi}
  slump: 4 in
  air: exposure
  section: {thickness: 10 in, clear_bar_spacing: 5 in, clear_cover: 2 in}
  finish: board-marked
materials:
  cement: {kind: portland cement, relative_density: 3.15}
  slag: {kind: slag cement, relative_density: 2.90}
  stone:
    kind: coarse aggregate
    nominal_max_size: 3/4 in
    relative_density: 2.68
    relative_density_basis: ssd
    absorption: 0.5 %
    dry_rodded_density: 100 lb/ft3
    moisture: 2.0 %
  sand:
    kind: fine aggregate
    relative_density: 2.64
    absorption: 0.7 %
    fineness_modulus: 2.8
    moisture: 6.0 %
  reducer:
    kind: high-range water reducer
    standard: ASTM C494 F
    relative_density: 1.07
    solids: 35 %
    water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %, 12 fl oz/cwt: 22 %}
  air_agent: {kind: air-entraining admixture, relative_density: 1.01, solids: 8 %}
mixture:
  binder: {cement: 75 %, slag: 25 %}
  coarse: {stone: 100 %}
  fine: {sand: 100 %}
  admixtures: {reducer: 8 fl oz/cwt, air_agent: as needed}
)";

nlohmann::json printed_json() {
    const Solved mix = solve(quay);
    return nlohmann::json::parse(report::json({.command = "proportion",
                                               .title = "Quay terrace, bench and retaining walls",
                                               .requirements = core::requirements_of(mix.mix),
                                               .proportions = mix.proportions,
                                               .checks = mix.checks}));
}

const nlohmann::json& find(const nlohmann::json& list, const char* key, const std::string& value) {
    for (const auto& item : list) {
        if (item.at(key) == value) {
            return item;
        }
    }
    throw std::runtime_error("no " + value);
}

} // namespace

TEST_CASE("quay terrace selections in JSON") {
    // required average: ACI 318-11 Tables 5.3.1.2 and 5.3.2.1, 18 tests 1.112 times 480 = 533.76,
    //   5000 + 2.33 times 533.76 - 500 = 5743.7 psi
    // w_cm_by_strength: log strength linear between 6200 and 5400 psi, 0.40 + 0.05 times
    //   ln(6200/5743.7) / ln(6200/5400) = 0.05 times 0.5534
    // w_cm_by_exposure: C2, ACI 318-19 Table 19.3.2.1; air: F2, Table 19.3.3.1
    // water: 305 lb/yd3, ACI 211.1-91 Table 6.3.3; bulk volume Table 6.3.6
    const auto [pointer, value, tolerance] = GENERATE(table<std::string, double, double>({
        {"/selection/specified_strength_mpa", 34.47, 0.005},
        {"/selection/required_average_strength_mpa", 39.60, 0.005},
        {"/selection/slump_mm", 101.6, 0.05},
        {"/selection/nominal_max_size_mm", 19.05, 0.005},
        {"/selection/air_percent", 6.0, 0.05},
        {"/selection/w_cm", 0.40, 0.005},
        {"/selection/w_cm_by_strength", 0.428, 0.0005},
        {"/selection/w_cm_by_exposure", 0.40, 0.005},
        {"/selection/table_water_kg_m3", 180.9, 0.05},
        {"/selection/water_reduction_percent", 16.0, 0.05},
        {"/selection/water_kg_m3", 152.0, 0.05},
        {"/selection/binder_kg_m3", 380.0, 0.05},
        {"/selection/coarse_volume", 0.62, 0.005},
        {"/selection/fineness_modulus", 2.8, 0.05},
    }));
    INFO(pointer);
    CHECK_THAT(printed_json().at(nlohmann::json::json_pointer(pointer)).get<double>(),
               WithinAbs(value, tolerance));
}

TEST_CASE("quay terrace amounts and totals in JSON") {
    // cement 0.75 times 380.0 at relative density 3.15; density 143.6 lb/ft3; paste 4.1087 + 2.4437
    // + 0.8845 ft3 and 0.018 of the reducer's solids of 27; mortar all but 1682.4/(2.68 times 62.4)
    // ft3
    const auto [pointer, value, tolerance] = GENERATE(table<std::string, double, double>({
        {"/ingredients/1/kg_m3", 285.0, 0.05},
        {"/ingredients/1/dry_kg_m3", 285.0, 0.05},
        {"/ingredients/1/volume_m3", 0.0905, 0.00005},
        {"/totals/fresh_density_kg_m3", 2300, 0.5},
        {"/totals/volume_m3", 1.0, exact},
        {"/totals/water_kg_m3", 152.0, 0.05},
        {"/totals/binder_kg_m3", 380.0, 0.05},
        {"/totals/w_cm", 0.40, 0.005},
        {"/totals/paste_percent", 27.6, 0.05},
        {"/totals/mortar_percent", 62.7, 0.05},
    }));
    INFO(pointer);
    CHECK_THAT(printed_json().at(nlohmann::json::json_pointer(pointer)).get<double>(),
               WithinAbs(value, tolerance));
}

TEST_CASE("quay terrace names and verdicts in JSON") {
    // The form of the object; C2 governs w/cm by ACI 318-19 Table 19.3.2.1
    const auto [pointer, word] = GENERATE(table<std::string, std::string>({
        {"/command", "proportion"},
        {"/title", "Quay terrace, bench and retaining walls"},
        {"/method", "ACI 211.1-91"},
        {"/selection/w_cm_governed_by", "exposure"},
        {"/ingredients/0/role", "water"},
        {"/ingredients/1/name", "cement"},
        {"/ingredients/1/role", "binder"},
    }));
    INFO(pointer);
    const auto json = printed_json();
    CHECK(json.at(nlohmann::json::json_pointer(pointer)).get<std::string>() == word);
    CHECK(json.at("boardmark") == 1);
}

TEST_CASE("quay terrace check of w/cm in JSON") {
    // C2: 0.40, ACI 318-19 Table 19.3.2.1
    const auto json = printed_json();
    const auto& check = find(json.at("checks"), "id", "w_cm.exposure");
    CHECK(check.at("verdict") == "holds");
    CHECK_THAT(check.at("value").get<double>(), WithinAbs(0.40, exact));
    CHECK_THAT(check.at("limit").get<double>(), WithinAbs(0.40, exact));
    CHECK(check.at("unit") == "1");
    CHECK(check.at("requirement") == "C2");
    CHECK(check.at("source") == "ACI 318-19 Table 19.3.2.1");
}

TEST_CASE("quay terrace step of the table's water in JSON") {
    // 305 lb/yd3: ACI 211.1-91 Table 6.3.3, air-entrained, 3 to 4 in, 3/4 in
    const auto json = printed_json();
    const auto& step = find(json.at("steps"), "quantity", "water");
    CHECK_THAT(step.at("value").get<double>(), WithinAbs(180.9, 0.05));
    CHECK(step.at("unit") == "kg/m3");
    CHECK(step.at("source") == "ACI 211.1-91 Table 6.3.3");
}

TEST_CASE("quay terrace in pounds to the cubic yard") {
    // By hand: water 305 times 0.84 = 256.2, of it 65 % of 51.2 fl oz (3.57 lb) in the reducer;
    // binder 256.2/0.40 = 640.5, three quarters cement; stone 0.62 times 27 times 100 = 1674 dry,
    // 1682.4 SSD; sand in what is left of 27 ft3 with 1.62 ft3 of air
    const auto [what, unit, printed, tolerance] =
        GENERATE(table<std::string, std::string, double, double>({
            {"mixing water", "lb/yd3", 256, 0.5},
            {"water", "lb/yd3", 254, 0.5},
            {"cement", "lb/yd3", 480, 0.5},
            {"slag", "lb/yd3", 160, 0.5},
            {"stone", "lb/yd3", 1682, 0.5},
            {"sand", "lb/yd3", 1296, 0.5},
            {"density", "lb/ft3", 143.6, 0.05},
        }));
    INFO(what);
    CHECK_THAT(figure(solve(quay), what, unit), WithinAbs(printed, tolerance));
}

TEST_CASE("quay terrace dose of the reducer in fluid ounces") {
    // 8 fl oz for each 100 lb of 640.5 lb: 51 fl oz; the air-entraining admixture is dosed by trial
    const Solved mix = solve(quay);
    const double volume_m3 = mix.ingredient("reducer").volume_m3.value() * inside(1, "yd3");
    CHECK_THAT(in_unit(volume_m3, "fl oz"), WithinAbs(51, 0.5));
    CHECK(mix.ingredient("air_agent").by_trial);
    CHECK_THAT(mix.ingredient("air_agent").kg_m3, WithinAbs(0, exact));
}
