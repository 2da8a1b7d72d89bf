// NIST/SEMATECH e-Handbook of Statistical Methods, 5.3.3.4.7: fractions of two-level designs. Rows
// of six factors are from memory; their resolution is computed in tests/core/panels.test.cpp.
// PCI DN-22, Acceptability of Appearance: "not less than a 20 ft (6.1 m)". German trade text on
// exposed concrete: pores of 2 to 15 mm counted in a square of 500 by 500 mm.

#include <boardmark/core/panels/panel_design.hpp>

#include "as_printed.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

const core::PanelTables& panel_tables(UnitSystem system) {
    return tables_in(system).panels;
}

std::string generators_of(int factors, int runs) {
    for (const core::PublishedDesign& design : panel_tables(UnitSystem::us).designs) {
        if (design.factors == factors && design.runs == runs) {
            std::string words;
            for (const std::string& generator : design.generators) {
                words += (words.empty() ? "" : " ") + generator;
            }
            return words;
        }
    }
    return "none";
}

} // namespace

TEST_CASE("generators of published fractions") {
    const auto [factors, runs, words] =
        GENERATE(table<int, int, std::string>({{3, 4, "C=AB"},
                                               {4, 8, "D=ABC"},
                                               {5, 8, "D=AB E=AC"},
                                               {5, 16, "E=ABCD"},
                                               {6, 8, "D=AB E=AC F=BC"},
                                               {6, 16, "E=ABC F=BCD"},
                                               {7, 8, "D=AB E=AC F=BC G=ABC"},
                                               {7, 16, "E=ABC F=BCD G=ACD"}}));
    INFO(factors << " factors in " << runs << " runs");
    CHECK(generators_of(factors, runs) == words);
}

TEST_CASE("the half fraction of three factors in four runs") {
    // C = AB, signs of the print: (- - +) (+ - -) (- + -) (+ + +). Levels may be renamed, so what
    // is held is that the product of the three signs is the same in each run.
    const auto design =
        core::published_design({{2, 2, 2}}, 4, panel_tables(UnitSystem::us).designs);
    REQUIRE(design);
    REQUIRE(design->rows.size() == 4);
    for (const core::PanelRow& row : design->rows) {
        CHECK((row[0] + row[1] + row[2]) % 2 == 0);
    }
}

TEST_CASE("viewing distance, and what is counted in which square") {
    CHECK_THAT(panel_tables(UnitSystem::us).viewing_m.value, WithinAbs(20 * 0.3048, exact));
    CHECK_THAT(panel_tables(UnitSystem::si).viewing_m.value, WithinAbs(6.1, exact));
    CHECK_THAT(panel_tables(UnitSystem::si).least_void_mm.value, WithinAbs(2, exact));
    const core::PanelField& face = panel_tables(UnitSystem::si).fields.front();
    CHECK(face.feature == core::PanelFeature::face);
    CHECK_THAT(face.length_mm, WithinAbs(500, exact));
    CHECK_THAT(face.height_mm, WithinAbs(500, exact));
}
