// What the place of a wall asks: ACI 318-19 Table 19.3.1.1, read in digests and summaries of the
// 2014 and 2019 editions (two or more agree). Where the wording leaves a choice the safer class is
// expected: spray counts as sea water, the tide as asking for low permeability.

#include <boardmark/core/code/site.hpp>
#include <boardmark/reference/tables.hpp>

#include "as_printed.hpp"
#include "core/base_mix.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using core::Sea;
using core::Site;
using core::Verdict;

namespace {

const std::optional<bool> open;
const std::optional<Sea> open_sea;
const std::optional<double> open_soil;
const std::string none;

std::string class_of(char category, const Site& site, bool reinforced = true) {
    const core::CodeTables code = reference::tables(core::UnitSystem::us).code;
    const auto named =
        std::ranges::find(code.categories, std::string{category}, &core::ExposureCategory::name);
    const auto classes = core::site_classes(site, reinforced, code.site);
    const auto found = classes.begin() + (named - code.categories.begin());
    REQUIRE(found != classes.end());
    CHECK_FALSE(found->reason.text.empty());
    CHECK(found->source.citation == "ACI 318-19 Table 19.3.1.1");
    return found->name;
}

Solved at(const std::string& site, const std::string& exposure = "") {
    return solve(text({.requirements = "  average_strength: 6000 psi\n  site: " + site + "\n" +
                                       (exposure.empty() ? "" : "  exposure: " + exposure + "\n"),
                       .selections = "{w_cm: 0.38}"}));
}

} // namespace

TEST_CASE("freezing: F0 none, F1 seldom wet, F2 often wet, F3 with deicing salt") {
    struct Case {
        std::optional<bool> freezing, wet, deicer;
        std::optional<Sea> sea;
        std::string expected;
    };
    const auto row = GENERATE(values<Case>({
        {false, open, open, open_sea, "F0"},
        {false, false, true, Sea::tidal, "F0"},
        {true, false, false, Sea::none, "F1"},
        {true, true, false, Sea::none, "F2"},
        {true, true, true, Sea::none, "F3"},
        {true, true, false, Sea::spray, "F2"}, // the table counts deicing chemicals, not the sea's
        {true, open, false, Sea::tidal, "F2"}, // the tide wets in any season
        {true, open, true, Sea::tidal, "F3"},
        {open, open, open, open_sea, none},
        {open, true, true, Sea::spray, "F3"}, // what is wet when it freezes stands where it freezes
        // F1 at least: the most severe class that an answer may give
        {true, open, false, Sea::spray, "F2"},
        {true, open, false, open_sea, "F2"},
        {true, open, true, Sea::none, "F3"},
        {true, open, open, Sea::spray, "F3"},
        {true, true, open, Sea::none, "F3"},
        {true, open, open, Sea::tidal, "F3"},
        {true, false, open, Sea::none,
         "F1"}, // seldom wet, and by the row above salt does not change it
    }));
    const Site site{row.freezing, row.wet, row.deicer, row.sea, open_soil};
    CHECK(class_of('F', site) == row.expected);
}

TEST_CASE("sulfate: percent by mass of the soil, or sea water") {
    // S0 below 0.10, S1 from 0.10 to below 0.20 or sea water, S2 from 0.20 to 2.00, S3 above 2.00
    const auto [percent, sea, expected] =
        GENERATE(table<std::optional<double>, std::optional<Sea>, std::string>({
            {0.0, Sea::none, "S0"},
            {0.099, Sea::none, "S0"},
            {0.10, Sea::none, "S1"},
            {0.199, Sea::none, "S1"},
            {0.20, Sea::none, "S2"},
            {2.00, Sea::none, "S2"},
            {2.01, Sea::none, "S3"},
            {0.0, Sea::spray, "S1"},
            {0.0, Sea::tidal, "S1"},
            {0.20, Sea::tidal, "S2"},
            {2.01, Sea::spray, "S3"},
            {open_soil, Sea::tidal, "S1"},
            {open_soil, Sea::none, none},
            {open_soil, open_sea, none},
            {0.05, open_sea, none}, // the sea would ask more
            {0.15, open_sea, "S1"}, // the sea would ask no more
        }));
    CHECK(class_of('S', {open, open, open, sea, percent}) == expected);
}

TEST_CASE("water: W0 dry, W1 wet, W2 where low permeability is needed") {
    const auto [freezing, wet, deicer, sea, expected] =
        GENERATE(table<std::optional<bool>, std::optional<bool>, std::optional<bool>,
                       std::optional<Sea>, std::string>({
            {open, open, open, Sea::tidal, "W2"},
            {open, open, open, Sea::spray, "W1"},
            {true, true, false, Sea::none, "W1"},
            {open, open, true, Sea::none, "W1"},
            {true, false, false, Sea::none, "W1"}, // rained on, the safe side
            {false, open, false, Sea::none, none}, // nothing says that it stays dry
            {true, true, true, open_sea, "W2"},    // W1 at least; the tide may ask W2
            {open, open, true, open_sea, "W2"},
            {false, open, false, open_sea, none},
        }));
    CHECK(class_of('W', {freezing, wet, deicer, sea, open_soil}) == expected);
}

TEST_CASE("corrosion: C0 dry, C1 moist, C2 moist with chloride of deicers, sea or spray") {
    const auto [freezing, wet, deicer, sea, expected] =
        GENERATE(table<std::optional<bool>, std::optional<bool>, std::optional<bool>,
                       std::optional<Sea>, std::string>({
            {open, open, true, open_sea, "C2"},
            {open, open, open, Sea::spray, "C2"},
            {false, open, false, Sea::tidal, "C2"},
            {true, true, false, Sea::none, "C1"},
            {true, false, false, Sea::none, "C1"}, // rained on, the safe side
            {false, open, false, Sea::none, none},
            // C1 at least: moist; salt that is not ruled out asks C2
            {true, true, open, Sea::none, "C2"},
            {true, true, false, open_sea, "C2"},
            {false, open, open, open_sea, none},
        }));
    const Site site{freezing, wet, deicer, sea, open_soil};
    CHECK(class_of('C', site) == expected);
    CHECK(class_of('C', site, false) == none);
}

TEST_CASE("classes of the site are held like stated ones") {
    const Solved quay = at("{freezing: yes, wet_when_freezing: yes, deicer: yes, sea: spray}");
    REQUIRE(quay.check("w_cm.exposure") != nullptr);
    CHECK(quay.check("w_cm.exposure")->limit->high.value() ==
          Approx(0.40)); // ACI 318-19, F3 and C2
    CHECK(quay.check("exposure.stated")->verdict == Verdict::holds);
    CHECK(quay.check("exposure.site")->verdict == Verdict::not_checked); // the soil is not known
    for (const char* step :
         {"exposure_freezing", "exposure_sulfate", "exposure_water", "exposure_corrosion"}) {
        CHECK(quay.step(step) != nullptr);
    }
}

TEST_CASE("a stated class wins over the site, and is watched where it is milder") {
    const auto [stated, verdict] = GENERATE(table<std::string, Verdict>({
        {"F1", Verdict::watch},
        {"F2", Verdict::holds},
        {"F3", Verdict::holds},
    }));
    const Solved wall = at("{freezing: yes, wet_when_freezing: yes, deicer: no, sea: none, "
                           "soil_sulfate: 0.05 %}",
                           "[" + stated + "]");
    CHECK(wall.check("exposure.site")->verdict == verdict);
    // ACI 318-19 Table 19.3.2.1: the limit held is that of the stated class
    const double limit = stated == "F1" ? 0.55 : stated == "F2" ? 0.45 : 0.40;
    CHECK(wall.check("w_cm.exposure")->limit->high.value() == Approx(limit));
}

TEST_CASE("a site that says nothing of a category leaves it to the designer") {
    const Solved wall = at("{freezing: no}");
    CHECK(wall.check("exposure.stated")->verdict == Verdict::not_checked);
    CHECK(std::ranges::count(wall.checks, "exposure.stated", &core::Check::id) == 3);
    CHECK(wall.step("exposure_water") == nullptr);
}

TEST_CASE("an answer that is missing leaves its class open and asks the most severe one") {
    const Solved wall =
        at("{freezing: yes, wet_when_freezing: yes, sea: none, soil_sulfate: 0.05 %}");
    // F3 and C2: w/cm at most 0.40 (ACI 318-19 Table 19.3.2.1)
    CHECK(wall.check("w_cm.exposure")->limit->high.value() == Approx(0.40));
    CHECK(wall.check("exposure.stated")->verdict == Verdict::not_checked);
    CHECK(std::ranges::count(wall.checks, "exposure.stated", &core::Check::id) == 2);
    CHECK_FALSE(wall.check("exposure.site"));
}

TEST_CASE("a stated class is enough where the site can ask no more, whatever is missing") {
    const auto [stated, verdict] = GENERATE(table<std::string, Verdict>({
        {"F1", Verdict::not_checked},
        {"F2", Verdict::not_checked},
        {"F3", Verdict::holds},
    }));
    const Solved wall = at("{freezing: yes, wet_when_freezing: yes, sea: none, "
                           "soil_sulfate: 0.05 %}",
                           "[" + stated + "]");
    CHECK(wall.check("exposure.site")->verdict == verdict);
}
