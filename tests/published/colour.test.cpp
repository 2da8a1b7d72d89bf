// Pigments and white cement.
// Dose: ASTM C979, at most 10 percent of the mass of cement; colour gains little near 5 percent and
// beyond (trade text). Whether cement counts supplementary materials is not said: only what is
// above 10 percent by both counts fails. White cement is proportioned like grey (trade text). No
// calcium chloride beside pigments, more water is paler (two trade texts). No table of the water
// that a pigment asks for was found: it is the figure of its paper.

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

struct Coloured {
    std::string binder = "cement: 100 %";
    std::string dose = "4 %";
    std::string pigment = "relative_density: 4.5";
    std::string cement = "portland cement";
    std::string more = "";
    std::string more_doses = "";
};

Solved coloured(const Coloured& about) {
    return solve(fmt::format(R"(boardmark: 1
title: planter of the quay
reporting: si
requirements: {{strength: 30 MPa, slump: 75 mm, air: none}}
materials:
  cement: {{kind: {}}}
  slag: {{kind: slag cement}}
  ash: {{kind: fly ash}}
  stone: {{kind: coarse aggregate, nominal_max_size: 19 mm, relative_density: 2.68, absorption: 0.5 %,
          dry_rodded_density: 1600 kg/m3}}
  sand: {{kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, fineness_modulus: 2.8}}
  rust: {{kind: pigment, {}}}
{}
mixture:
  binder: {{{}}}
  coarse: {{stone: 100 %}}
  fine: {{sand: 100 %}}
  admixtures: {{rust: {}{}}}
)",
                             about.cement, about.pigment, about.more, about.binder, about.dose,
                             about.more_doses),
                 input::Purpose::proportion);
}

} // namespace

TEST_CASE("the dose of a pigment against its standard") {
    const auto [dose, binder, verdict] = GENERATE(table<std::string, std::string, Verdict>({
        {"5 %", "cement: 100 %", Verdict::holds},
        {"5.2 %", "cement: 100 %", Verdict::watch},
        {"10 %", "cement: 100 %", Verdict::watch},
        {"10.2 %", "cement: 100 %", Verdict::fails},
        {"4 %", "cement: 75 %, slag: 25 %", Verdict::watch}, // 5.3 % of the cement
        {"9 %", "cement: 75 %, slag: 25 %", Verdict::watch}, // 12 % of the cement, 9 % of all
        {"11 %", "cement: 75 %, slag: 25 %", Verdict::fails},
        {"as needed", "cement: 100 %", Verdict::not_checked},
    }));
    INFO(dose << " with " << binder);
    const Solved mix = coloured({.binder = binder, .dose = dose});
    REQUIRE(mix.check("pigment.dose"));
    CHECK(mix.check("pigment.dose")->verdict == verdict);
}

TEST_CASE("two pigments together keep to the smaller highest dose") {
    const Solved mix = coloured({.dose = "2 %",
                                 .pigment = "relative_density: 4.5, maximum_dose: 6 %",
                                 .more = "  ochre: {kind: pigment, maximum_dose: 3 %}",
                                 .more_doses = ", ochre: 2 %"});
    CHECK(mix.check("pigment.dose")->verdict == Verdict::watch); // 4 % together, above 3 %
}

TEST_CASE("the water of a pigment is that of its paper") {
    const Solved without = coloured({});
    const Solved with = coloured({.pigment = "relative_density: 4.5, added_water: 3 %"});
    CHECK(without.check("pigment.water")->verdict == Verdict::not_checked);
    CHECK(with.check("pigment.water")->verdict == Verdict::holds);
    CHECK_THAT(with.proportions.selection.water_kg_m3,
               WithinAbs(1.03 * without.proportions.selection.water_kg_m3, 1e-9));
    CHECK_THAT(with.proportions.selection.w_cm,
               WithinAbs(without.proportions.selection.w_cm, 1e-12));
}

TEST_CASE("chloride beside a pigment") {
    const auto [accelerator, verdict] = GENERATE(table<std::string, Verdict>({
        {"", Verdict::holds},
        {"  fast: {kind: accelerator, chloride: 0 %}", Verdict::holds},
        {"  fast: {kind: accelerator, chloride: 20 %}", Verdict::watch},
        {"  fast: {kind: accelerator}", Verdict::not_checked},
    }));
    const Solved mix =
        coloured({.more = accelerator, .more_doses = accelerator.empty() ? "" : ", fast: 1 %"});
    INFO(accelerator);
    CHECK(mix.check("pigment.chloride")->verdict == verdict);
}

TEST_CASE("white cement is proportioned like grey and told what greys it") {
    const Solved grey = coloured({.dose = "2 %"});
    const Solved white = coloured({.dose = "2 %", .cement = "white cement"});
    const Solved with_ash =
        coloured({.binder = "cement: 80 %, ash: 20 %", .dose = "2 %", .cement = "white cement"});
    CHECK(white.proportions.selection.water_kg_m3 == grey.proportions.selection.water_kg_m3);
    CHECK(white.proportions.selection.binder_kg_m3 == grey.proportions.selection.binder_kg_m3);
    CHECK_FALSE(grey.check("colour.binder"));
    CHECK(white.check("colour.binder")->verdict == Verdict::holds);
    CHECK(with_ash.check("colour.binder")->verdict == Verdict::watch);
    CHECK(white.check("colour.constancy")->verdict ==
          Verdict::watch); // nobody can hold it by a file
}
