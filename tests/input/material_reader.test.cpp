// Materials: every key arrives in SI in its own field, and the rules between keys of one material.

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinRel;
using core::DoseBasis;
using core::Material;

namespace {

constexpr double lb_ft3 = 0.45359237 / 0.028316846592;     // kg/m3
constexpr double fl_oz_cwt = 29.5735295625e-6 / 45.359237; // m3/kg

using Get = double (*)(const Material&);

Material cement_with(const std::string& keys) {
    return mix_of(with_cement(keys)).binder[0].material;
}
Material stone_with(const std::string& keys) {
    return mix_of(with_stone(keys)).coarse[0].material;
}
Material sand_of(const std::string& yaml) {
    return mix_of(yaml).fine[0].material;
}
Material sand_with(const std::string& keys) {
    return sand_of(with_sand(keys));
}
Material reducer_with(const std::string& keys) {
    return mix_of(with_dose("8 fl oz/cwt", keys)).admixtures[0].material;
}

using Faults = std::vector<std::string>;

} // namespace

TEST_CASE("the aggregates of the sound mix arrive in SI") {
    const core::Mix mix = mix_of(sound_mix);
    const core::Material& stone = mix.coarse.at(0).material;
    CHECK(stone.name == "stone");
    CHECK(stone.kind == core::Kind::coarse_aggregate);
    CHECK(stone.relative_density == 2.68);
    CHECK(stone.aggregate.absorption_percent == 0.5);
    CHECK_THAT(*stone.aggregate.nominal_max_size_mm, WithinRel(19.05, 1e-9));
    CHECK_THAT(*stone.aggregate.dry_rodded_density_kg_m3, WithinRel(100 * lb_ft3, 1e-9));
    CHECK(mix.fine.at(0).material->aggregate.fineness_modulus == 2.8);
}

TEST_CASE("what holds where a figure of a material is left out") {
    const core::Mix mix = mix_of(sound_mix);
    const core::Material& stone = mix.coarse.at(0).material;
    CHECK_FALSE(stone.aggregate.relative_density_is_oven_dry);
    CHECK_FALSE(stone.aggregate.moisture_percent);
    CHECK_FALSE(stone.aggregate.typical);
    const core::Material& cement = mix.binder.at(0).material;
    CHECK(cement.standard.empty());
    CHECK_FALSE(cement.relative_density);
    CHECK_FALSE(cement.chloride_percent);
    CHECK(cement.binder.contains.empty());
    CHECK_FALSE(cement.binder.c3a_percent);
}

TEST_CASE("every number of a cement arrives in its own field") {
    const auto [keys, get, expected] = GENERATE(table<std::string, Get, double>({
        {"    relative_density: 3.15\n", [](const Material& m) { return *m.relative_density; },
         3.15},
        {"    chloride: 0.01 %\n", [](const Material& m) { return *m.chloride_percent; }, 0.01},
        {"    c3a: 7 %\n", [](const Material& m) { return *m.binder.c3a_percent; }, 7},
        {"    contains: {slag cement: 30 %, silica fume: 5 %}\n",
         [](const Material& m) { return m.binder.contains.at(0).percent; }, 30},
        {"    contains: {slag cement: 30 %, silica fume: 5 %}\n",
         [](const Material& m) { return m.binder.contains.at(1).percent; }, 5},
    }));
    INFO(keys);
    CHECK_THAT(get(cement_with(keys)), WithinRel(expected, 1e-12));
}

TEST_CASE("the constituents of a blended cement keep their kinds") {
    const auto contains =
        cement_with("    contains: {slag cement: 30 %, silica fume: 5 %}\n").binder.contains;
    REQUIRE(contains.size() == 2);
    CHECK(contains[0].kind == core::Kind::slag_cement);
    CHECK(contains[1].kind == core::Kind::silica_fume);
}

TEST_CASE("a standard is kept as it is written") {
    CHECK(cement_with("    standard: ASTM C150 II\n").standard == "ASTM C150 II");
}

TEST_CASE("the state of an aggregate arrives in its own field") {
    CHECK(stone_with("    moisture: 2.0 %\n").aggregate.moisture_percent == 2);
    CHECK(stone_with("    relative_density_basis: oven-dry\n")
              .aggregate.relative_density_is_oven_dry);
    CHECK_FALSE(
        stone_with("    relative_density_basis: ssd\n").aggregate.relative_density_is_oven_dry);
    CHECK(stone_with("    typical: yes\n").aggregate.typical);
}

TEST_CASE("moisture of the surface counts the absorbed water besides") {
    const auto [keys, total] = GENERATE(table<std::string, double>({
        {"    moisture: 6.0 %\n", 6.0},
        {"    moisture: 6.0 %\n    moisture_basis: total\n", 6.0},
        {"    moisture: 6.0 %\n    moisture_basis: free\n", 6.7}, // with 0.7 % absorbed
        {"    moisture: 0 %\n    moisture_basis: free\n", 0.7},
    }));
    INFO(keys);
    CHECK_THAT(*sand_with(keys).aggregate.moisture_percent, WithinRel(total, 1e-12));
}

TEST_CASE("a moisture of the command line takes the place of the file's") {
    auto options = read_options(input::Purpose::batch);
    options.moisture_percent = {{"sand", 5.2}, {"stone", 1.4}};
    const auto reading = input::read_mix(with_sand("    moisture: 6.0 %\n"), "test.yaml", options);
    REQUIRE(reading.mix);
    const core::Mix& mix = std::get<core::CompleteMix>(*reading.mix);
    CHECK(mix.fine[0].material->aggregate.moisture_percent == 5.2);
    CHECK(mix.coarse[0].material->aggregate.moisture_percent == 1.4); // the file has none
}

TEST_CASE("sieves stand in for the fineness modulus in whatever order they are written") {
    const std::string passing = "0.15 mm: 5 %, 4.75 mm: 98 %, 2.36 mm: 85 %, 1.18 mm: 65 %, "
                                "0.6 mm: 45 %, 0.3 mm: 20 %";
    const auto sieves =
        sand_of(changed(sound_mix, "fineness_modulus: 2.8", "sieves: {" + passing + "}"))
            .aggregate.sieves;
    REQUIRE(sieves.size() == 6);
    CHECK(sieves.front().opening_mm == 4.75);
    CHECK(sieves.front().percent == 98);
    CHECK(sieves.back().opening_mm == 0.15);
    CHECK(sieves.back().percent == 5);
}

TEST_CASE("sieves that give no fineness modulus") {
    struct Case {
        std::string passing;
        std::string fault;
    };
    const auto [passing, fault] =
        GENERATE(values<Case>({
            {"4.75 mm: 98 %, 2.36 mm: 85 %", "19:5 materials.sand.sieves has no figure for a sieve "
                                             "that the fineness modulus needs"},
            {"4.75 mm: 98 %, 2.36 mm: 85 %, 1.18 mm: 65 %, 0.6 mm: 45 %, 0.3 mm: 20 %",
             "19:5 materials.sand.sieves has no figure for a sieve that the fineness modulus "
             "needs"}, // the finest
            {"4.75 mm: 85 %, 2.36 mm: 98 %, 1.18 mm: 65 %, 0.6 mm: 45 %, 0.3 mm: 20 %, 0.15 mm: 5 "
             "%",
             "19:38 materials.sand.sieves: more passes 2.36 mm than 4.75 mm"},
        }));
    INFO(passing);
    CHECK(faults_in(changed(sound_mix, "fineness_modulus: 2.8", "sieves: {" + passing + "}")) ==
          Faults{fault});
}

TEST_CASE("fineness modulus and sieves together are one too many") {
    const std::string passing = "{4.75 mm: 98 %, 2.36 mm: 85 %, 1.18 mm: 65 %, 0.6 mm: 45 %, "
                                "0.3 mm: 20 %, 0.15 mm: 5 %}";
    CHECK(faults_in(with_sand("    sieves: " + passing + "\n")) ==
          Faults{"20:5 materials.sand.fineness_modulus and 'sieves' say the same thing twice"});
}

TEST_CASE("the product data of a reducer arrive in SI") {
    const Material reducer =
        reducer_with("solids: 35 %, water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}");
    CHECK(reducer.admixture.solids_percent == 35);
    CHECK_FALSE(reducer.admixture.standard_minimum_reduction);
    const auto& curve = reducer.admixture.water_reduction;
    REQUIRE(curve.size() == 2);
    CHECK(curve[1].dose.basis == DoseBasis::volume);
    CHECK_THAT(curve[1].dose.amount, WithinRel(8 * fl_oz_cwt, 1e-9));
    CHECK(curve[1].percent == 16);
}

TEST_CASE("doses in percent keep their basis") {
    const auto curve = reducer_with("water_reduction: {0.8 %: 12 %}").admixture.water_reduction;
    REQUIRE(curve.size() == 1);
    CHECK(curve[0].dose.basis == DoseBasis::percent);
    CHECK(curve[0].dose.amount == 0.8);
}

TEST_CASE("the standard's minimum is kept as such") {
    const auto figures = reducer_with("water_reduction: standard minimum").admixture;
    CHECK(figures.standard_minimum_reduction);
    CHECK(figures.water_reduction.empty());
}

TEST_CASE("rules of a product curve") {
    const auto [curve, fault] = GENERATE(table<std::string, std::string>({
        {"{8 fl oz/cwt: 16 %, 4 fl oz/cwt: 8 %}",
         "materials.reducer.water_reduction: the doses do not increase"},
        {"{4 fl oz/cwt: 8 %, 4.0 fl oz/cwt: 8 %}",
         "materials.reducer.water_reduction: the doses do not increase"},
        {"{4 fl oz/cwt: 16 %, 8 fl oz/cwt: 8 %}",
         "materials.reducer.water_reduction: a higher dose saves less water"},
        {"{0.5 %: 8 %, 8 fl oz/cwt: 16 %}",
         "materials.reducer.water_reduction: the doses are in two kinds of unit"},
    }));
    INFO(curve);
    const auto faults = faults_in(with_dose("as needed", "water_reduction: " + curve));
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].ends_with(" " + fault));
}

TEST_CASE("a product curve may level off") {
    CHECK(faults_in(
              with_dose("6 fl oz/cwt", "water_reduction: {4 fl oz/cwt: 16 %, 8 fl oz/cwt: 16 %}"))
              .empty());
}

TEST_CASE("keys belong to materials of some kinds only") {
    struct Case {
        std::string text;
        std::string fault;
    };
    const auto [text, fault] = GENERATE(values<Case>({
        {with_cement("    absorption: 1 %\n"),
         "10:5 materials.cement.absorption: this key belongs to coarse aggregate and fine "
         "aggregate; cement is portland cement"},
        {with_cement("    solids: 40 %\n"),
         "10:5 materials.cement.solids: this key belongs to admixtures; cement is portland "
         "cement"},
        {with_sand("    nominal_max_size: 3/8 in\n"),
         "17:5 materials.sand.nominal_max_size: this key belongs to coarse aggregate; sand is "
         "fine aggregate"},
        {with_stone("    c3a: 7 %\n"),
         "11:5 materials.stone.c3a: this key belongs to cements and supplementary materials; "
         "stone is coarse aggregate"},
    }));
    INFO(text);
    CHECK(faults_in(text) == Faults{fault});
}

TEST_CASE("only water reducers save water") {
    const std::string retarder =
        changed(sound_mix, "high-range water reducer, water_reduction: standard minimum",
                "retarder, water_reduction: {4 fl oz/cwt: 8 %}");
    CHECK(faults_in(retarder) ==
          Faults{"20:29 materials.reducer.water_reduction: this key belongs to water reducers; "
                 "reducer is retarder"});
}

TEST_CASE("what a cement contains is cementitious and at most the whole of it") {
    const auto [contains, fault] = GENERATE(table<std::string, std::string>({
        {"{slag cement: 60 %, fly ash: 40 %}", ""},
        {"{slag cement: 70 %, fly ash: 40 %}",
         "10:5 materials.cement.contains adds up to more than 100 %"},
        {"{fine aggregate: 30 %}",
         "10:16 materials.cement.contains: fine aggregate is not a cementitious material"},
    }));
    INFO(contains);
    const Faults expected = fault.empty() ? Faults{} : Faults{fault};
    CHECK(faults_in(with_cement("    contains: " + contains + "\n")) == expected);
}

TEST_CASE("a material has a kind and a name that the format does not use itself") {
    const auto [line, fault] = GENERATE(table<std::string, std::string>({
        {"  lime: {relative_density: 2.7}\n", "21:3 materials.lime has no 'kind'"},
        {"  lime: {}\n", "21:3 materials.lime has no 'kind'"},
        {"  water: {kind: pigment}\n",
         "21:3 'water' is a word of 'proportions' and cannot name a material"},
        {"  air: {kind: pigment}\n",
         "21:3 'air' is a word of 'proportions' and cannot name a material"},
        {"  volume: {kind: pigment}\n",
         "21:3 'volume' is a word of 'proportions' and cannot name a material"},
        {"  water_includes_admixtures: {kind: pigment}\n",
         "21:3 'water_includes_admixtures' is a word of 'proportions' and cannot name a material"},
    }));
    INFO(line);
    CHECK(faults_in(changed(sound_mix, "mixture:\n", line + "mixture:\n")) == Faults{fault});
}

TEST_CASE("keys that other calculations use are read without a fault") {
    const std::string keys = "    price: 165 USD/short ton\n"
                             "    carbon: 0.92 kg/kg\n"
                             "    alkali: 0.55 %\n"
                             "    source: \"mill certificate of May\"\n";
    CHECK(faults_in(with_cement(keys)).empty());
    CHECK(faults_in(with_dose("8 fl oz/cwt",
                              "water_reduction: standard minimum, maximum_dose: 8 fl oz/cwt, "
                              "slump_gain: {4 fl oz/cwt: 2 in}, retains: {30 min: 85 %}, "
                              "retards: yes"))
              .empty());
}
