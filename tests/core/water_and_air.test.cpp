// How the tables of water and air are entered. Table values: ACI 211.1-91 Table 6.3.3.

#include <boardmark/core/basis/unresolved.hpp>

#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

const std::string average = "  average_strength: 5000 psi\n";

Solved with(const std::string& requirements, const std::string& selections = "{}") {
    return solve(text({.requirements = average + requirements, .selections = selections}));
}

double table_water_lb(const Solved& solved) {
    return in_unit(*solved.proportions.selection.table_water_kg_m3, "lb/yd3");
}

} // namespace

TEST_CASE("which columns apply follows the class or the stated air") {
    struct Case {
        std::string requirements;
        std::string selections;
        double water_lb;
        double air_percent;
    };
    // 3/4 in, 3 to 4 in: 305 air-entrained, 340 not; entrapped air 2 %.
    const auto [requirements, selections, water_lb, air_percent] = GENERATE(values<Case>({
        {"  exposure: [F2]\n", "{}", 305, 6.0},
        {"  exposure: [F1]\n", "{}", 305, 5.0},
        {"  exposure: [F0]\n", "{}", 340, 2.0},
        {"", "{}", 340, 2.0},
        {"  exposure: [F2]\n  air: none\n", "{}", 340, 2.0},
        {"  air: 4 %\n", "{}", 305, 4.0},
        {"  air: 3 %\n", "{}", 305, 3.0},   // one point above the entrapped 2 %
        {"  air: 2.9 %\n", "{}", 340, 2.9}, // less than one point above
        {"", "{air: 5 %}", 305, 5.0},
        {"", "{air: 2.5 %}", 340, 2.5},
        {"  air: 6 %\n", "{air: 2 %}", 340, 2.0},       // selected before required
        {"  exposure: [F2]\n", "{air: 2 %}", 305, 2.0}, // the class asks for entrained air
    }));
    INFO(requirements << selections);
    const Solved solved = with(requirements, selections);
    CHECK_THAT(table_water_lb(solved), WithinAbs(water_lb, 1e-6));
    CHECK(solved.proportions.selection.air_percent == air_percent);
    CHECK_THAT(*solved.ingredient("air").volume_m3, WithinAbs(air_percent / 100, 1e-12));
}

TEST_CASE("no entrained air in a frost class fails") {
    const Solved solved = with("  exposure: [F2]\n  air: none\n");
    CHECK(solved.check("air.exposure")->verdict == core::Verdict::fails);
}

TEST_CASE("air that no ingredient entrains is to be watched") {
    std::string without = text({.requirements = average + "  exposure: [F2]\n"});
    CHECK(solve(without).check("air.agent")->verdict == core::Verdict::holds);
    without.replace(without.find(", agent: as needed"), 18, "");
    CHECK(solve(without).check("air.agent")->verdict == core::Verdict::watch);
    // Types IA, IIA and IIIA of ASTM C150 are the air-entraining cements.
    std::string cement = without;
    cement.replace(cement.find("ASTM C150 II"), 12, "ASTM C150 IIA");
    CHECK(solve(cement).check("air.agent")->verdict == core::Verdict::holds);
}

TEST_CASE("each reducer takes its part of what the one before left") {
    std::string two = text({.requirements = average + "  exposure: [F2]\n"});
    two.replace(two.find("  agent:"), 2,
                "  plain: {kind: water reducer, standard: ASTM C494 A, "
                "water_reduction: standard minimum}\n  ");
    two.replace(two.find("{reducer: 8"), 1, "{plain: 3 fl oz/cwt, ");
    const Solved solved = solve(two);
    // 1 - 0.95 × 0.84 = 20.2 %
    CHECK_THAT(*solved.proportions.selection.water_reduction_percent, WithinAbs(20.2, 1e-9));
}

TEST_CASE("a dose between points is linear and from zero to the first marked") {
    struct Case {
        std::string dose;
        double percent;
        core::Marks marks;
    };
    using core::Mark;
    const auto [dose, percent, marks] = GENERATE(values<Case>({
        {"4 fl oz/cwt", 8, {}},
        {"8 fl oz/cwt", 16, {}},
        {"6 fl oz/cwt", 12, {Mark::interpolated}},
        {"2 fl oz/cwt", 4, {Mark::interpolated, Mark::estimate}},
    }));
    INFO(dose);
    const Solved solved = solve(text({.requirements = average, .dose = dose}));
    CHECK_THAT(*solved.proportions.selection.water_reduction_percent, WithinAbs(percent, 1e-9));
    CHECK(solved.step("water_reduction")->marks == marks);
}

TEST_CASE("a reducer of which none goes in saves no water") {
    for (const char* reducer : {"water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}",
                                "water_reduction: standard minimum"}) {
        INFO(reducer);
        const std::string none = text({.reducer = reducer, .dose = "0 fl oz/cwt"});
        const Solved solved = solve(none);
        CHECK(solved.proportions.selection.water_reduction_percent.value_or(0) == 0);
        // 305 lb/yd3 are of air-entrained concrete; this mix has none: 340, Table 6.3.3.
        CHECK_THAT(in_unit(solved.proportions.totals.water_kg_m3, "lb/yd3"), WithinAbs(340, 1e-6));
    }
}

TEST_CASE("a dose above the curve leads to no mix") {
    try {
        solve(text({.requirements = average, .dose = "9 fl oz/cwt"}));
        FAIL("a mix followed");
    } catch (const core::Unresolved& unresolved) {
        CHECK_THAT(unresolved.what.text, Contains("above the last point"));
    }
}

TEST_CASE("with a slump before the reducer its reduction is not taken off") {
    const Solved solved =
        solve(text({.requirements = average + "  exposure: [F2]\n  slump_before_reducer: 2 in\n",
                    .reducer = "",
                    .slump = "8 in"}));
    CHECK_THAT(table_water_lb(solved), WithinAbs(280, 1e-6)); // 1 to 2 in band
    CHECK(*solved.proportions.selection.water_reduction_percent == 0);
    CHECK_THAT(solved.proportions.selection.slump_mm, WithinAbs(203.2, 1e-9));
}

TEST_CASE("a dose by mass needs the density and one by volume does not change the curve") {
    // 4 fl oz/cwt of a product of relative density 1.07: 4 × 231/128/1728 ft3 × 1.07 × 62.4 lb/ft3
    // over 100 lb is 0.278924 % by mass.
    const Solved by_volume = solve(text({.requirements = average, .dose = "4 fl oz/cwt"}));
    const Solved by_mass = solve(text({.requirements = average, .dose = "0.278924 %"}));
    CHECK_THAT(by_mass.ingredient("reducer").kg_m3,
               WithinAbs(by_volume.ingredient("reducer").kg_m3, 1e-5));
    CHECK_THAT(*by_mass.proportions.selection.water_reduction_percent, WithinAbs(8, 1e-4));
}

TEST_CASE("the liquid of the admixtures is part of the mixing water") {
    const Solved solved = solve(text({.requirements = average}));
    const auto& totals = solved.proportions.totals;
    const double liquid = solved.ingredient("reducer").kg_m3 * 0.65; // 35 % solids
    CHECK_THAT(solved.ingredient("water").kg_m3 + liquid, WithinAbs(totals.water_kg_m3, 1e-9));
    CHECK_THAT(totals.water_kg_m3, WithinAbs(solved.proportions.selection.water_kg_m3, 1e-9));
}

TEST_CASE("without stated solids the whole liquid counts as water and a pigment has none") {
    std::string yaml = text({.requirements = average});
    yaml.replace(yaml.find(", solids: 35 %"), 14, "");
    yaml.replace(yaml.find("  agent:"), 2, "  red: {kind: pigment}\n  ");
    yaml.replace(yaml.find("{reducer: 8"), 1, "{red: 3 %, ");
    const Solved solved = solve(yaml);
    CHECK(solved.ingredient("reducer").liquid_kg_m3 == solved.ingredient("reducer").kg_m3);
    CHECK(solved.ingredient("red").liquid_kg_m3 == 0);
    CHECK_THAT(solved.ingredient("red").kg_m3,
               WithinAbs(0.03 * solved.proportions.totals.binder_kg_m3, 1e-9));
}

TEST_CASE("the least reduction follows the standard and type that are stated") {
    struct Case {
        std::string standard;
        double percent;
    };
    // ASTM C494 Table 1: F and G at most 88 % of the control's water, A and D at most 95 %; EN
    // 934-2 asks the same of superplasticizers and plasticizers.
    const auto [standard, percent] = GENERATE(values<Case>({
        {"ASTM C494 F", 12},
        {"ASTM C494 G", 12},
        {"ASTM C494 A", 5},
        {"ASTM C494/C494M Type D", 5},
        {"EN 934-2", 12},
        {"a product sheet", 12}, // by kind
    }));
    INFO(standard);
    std::string yaml =
        text({.requirements = average, .reducer = "water_reduction: standard minimum"});
    yaml.replace(yaml.find("ASTM C494 F"), 11, standard);
    const Solved solved = solve(yaml);
    CHECK_THAT(*solved.proportions.selection.water_reduction_percent, WithinAbs(percent, 1e-9));
    CHECK(solved.step("water_reduction")->marks == core::Marks{core::Mark::typical});

    yaml.replace(yaml.find(standard), standard.size(), "ASTM C494 S");
    CHECK_THROWS_AS(solve(yaml), core::Unresolved);
}

TEST_CASE("solids that are not stated are told") {
    std::string yaml = text({.requirements = average});
    yaml.replace(yaml.find(", solids: 35 %"), 14, "");
    const Solved solved = solve(yaml);
    REQUIRE(solved.step("solids") != nullptr);
    CHECK(solved.step("solids")->marks == core::Marks{core::Mark::typical});
}
