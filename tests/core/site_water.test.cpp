// Water kept back for the site, and how much may go in there.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/site_water.hpp>

#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::WaterLimit;

namespace {

Solved mix_with(const std::string& requirements, const std::string& selections,
                const std::string& average = "5000 psi") {
    return solve(text({.requirements = "  average_strength: " + average + "\n" + requirements,
                       .selections = selections,
                       .strength = "3000 psi"}),
                 input::Purpose::batch);
}

core::SiteWater water_of(const Solved& mix, const core::HoldBack& asked) {
    const core::Batch batch = boardmark::test::made(
        core::batch(mix.proportions, {.volume_m3 = 0.1}, mix.tables.water_density_kg_m3));
    return boardmark::test::made(core::site_water(mix.proportions, batch, asked, mix.tables));
}

core::HoldBack share(double percent) {
    return {.percent = percent, .kg = std::nullopt};
}

core::HoldBack amount(double kg) {
    return {.percent = std::nullopt, .kg = kg};
}

/// The mix of the tests without its high-range reducer.
Solved without_reducer() {
    std::string yaml = text({.requirements = "  average_strength: 5000 psi\n"});
    yaml.replace(yaml.find("{reducer: 8 fl oz/cwt, "), 23, "{");
    return solve(yaml, input::Purpose::batch);
}

} // namespace

TEST_CASE("water held back by share or by amount leaves the mixer") {
    const Solved mix = mix_with("", "{}");
    const double water_kg = boardmark::test::made(core::batch(mix.proportions, {.volume_m3 = 0.1},
                                                              mix.tables.water_density_kg_m3))
                                .items.front()
                                .kg;
    const auto [asked, held_kg] = GENERATE_COPY(table<core::HoldBack, double>({
        {share(0), 0},
        {share(10), water_kg / 10},
        {amount(0.5), 0.5},
        {{.percent = std::nullopt, .kg = 0.53, .resolution_kg = 0.2}, 0.6}, // to the scale
    }));
    const core::SiteWater water = water_of(mix, asked);
    CHECK_THAT(water.held_back.kg, WithinAbs(held_kg, 1e-12));
    CHECK_THAT(water.at_mixer.kg + water.held_back.kg, WithinAbs(water_kg, 1e-12));
    CHECK_THAT(water.at_mixer.litres,
               WithinAbs(1000 * water.at_mixer.kg / (62.4 * 16.01846), 1e-4));
}

TEST_CASE("all of the water or more cannot be held back") {
    const Solved mix = mix_with("", "{}");
    const double water_kg = water_of(mix, share(0)).at_mixer.kg;
    for (const core::HoldBack& asked : {share(100), amount(water_kg), amount(100)}) {
        CHECK_THROWS_AS(water_of(mix, asked), core::Unresolved);
    }
}

TEST_CASE("the lowest ratio of exposure and strength limits the water") {
    // ACI 318-19 Table 19.3.2.1: F2 0.45, C2 0.40. 5000 psi, air-entrained: 0.40 and, without air,
    // 0.48 by ACI 211.1-91 Table 6.3.4(a).
    struct Case {
        std::string requirements;
        std::string selections;
        std::string average;
        double limit;
        WaterLimit by;
    };
    const auto [requirements, selections, average, limit, by] = GENERATE(values<Case>({
        {"  exposure: [F2, C2]\n", "{w_cm: 0.35}", "5000 psi", 0.40, WaterLimit::exposure},
        {"  exposure: [F2]\n", "{w_cm: 0.35}", "5000 psi", 0.40, WaterLimit::strength},
        {"  exposure: [F2]\n", "{w_cm: 0.35}", "4000 psi", 0.45, WaterLimit::exposure},
        {"", "{w_cm: 0.35}", "5000 psi", 0.48, WaterLimit::strength},
        {"", "{w_cm: 0.35}", "12000 psi", 0.35, WaterLimit::mix}, // beyond any table
        {"  exposure: [F2]\n", "{w_cm: 0.35}", "12000 psi", 0.35, WaterLimit::mix},
        {"  exposure: [F2]\n", "{w_cm: 0.47}", "12000 psi", 0.45, WaterLimit::exposure},
    }));
    INFO(requirements << selections << average);
    const core::SiteWater water = water_of(mix_with(requirements, selections, average), share(10));
    CHECK_THAT(water.w_cm_limit, WithinAbs(limit, 1e-9));
    // With a reducer no more goes in than was held back, however far the limit is.
    CHECK(water.limited_by ==
          (selections == "{w_cm: 0.35}" && by != WaterLimit::mix ? WaterLimit::reducer : by));
}

TEST_CASE("a mix at its limit takes back what was held back and no more") {
    const Solved mix = mix_with("  exposure: [C2]\n", "{w_cm: 0.40}");
    CHECK_THAT(water_of(mix, share(10)).may_be_added.kg,
               WithinAbs(water_of(mix, share(10)).held_back.kg, 1e-9));
    const core::SiteWater none = water_of(mix, share(0));
    CHECK(none.may_be_added.kg == 0);
    CHECK(none.advice.front().text == "No water may be added on site.");
}

TEST_CASE("a mix above its limit takes back less than was held back") {
    const Solved mix = mix_with("  exposure: [C2]\n", "{w_cm: 0.42}");
    const core::SiteWater some = water_of(mix, share(20));
    CHECK(some.may_be_added.kg > 0);
    CHECK(some.may_be_added.kg < some.held_back.kg);
    CHECK_THAT(some.w_cm_then, WithinAbs(0.40, 1e-12));
    const core::SiteWater none = water_of(mix, share(0));
    CHECK(none.may_be_added.kg == 0);
    CHECK_THAT(none.w_cm_then, WithinAbs(0.42, 1e-9));
}

TEST_CASE("with a high-range reducer the flow is adjusted by it and no slump is promised") {
    CHECK_FALSE(water_of(mix_with("", "{w_cm: 0.35}"), share(10)).slump_gain_mm);
    const core::SiteWater plain = water_of(without_reducer(), share(10));
    // PCA EB001: 10 lb/yd3 of water to the inch of slump
    CHECK_THAT(in_unit(*plain.slump_gain_mm, "in"),
               WithinAbs(in_unit(plain.may_be_added_kg_m3, "lb/yd3") / 10, 1e-9));
}
