// Advice for exposed faces. Most fines below 0.125 mm: DIN 1045-2, largest permitted fines up to
// C50/60 (read in a trade association's text: 300/350 kg/m3 of cement give 400/450, with 8 mm stone
// 450/500, outside frost 550, raised by at most 50). Least fines below 0.25 mm: guidance without a
// source, typed from memory. A change of 0.02 in w/c that shows in colour, w/c up to 0.50 for good
// surfaces: German exposed-concrete practice. Thirty revolutions after an addition: ASTM C94, from
// memory.

#include <boardmark/core/basis/tables.hpp>

#include "support.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

/// A submitted mix of 1 m3.
struct Submittal {
    double cement_kg = 380;
    double ash_kg = 0;
    double slag_kg = 0;
    std::string exposure = "F2, S0, W1, C1";
    std::string size = "16 mm";
    std::string sieves = "4.75 mm: 98 %, 2.36 mm: 85 %, 1.18 mm: 68 %, 0.6 mm: 47 %, 0.3 mm: 18 "
                         "%, 0.15 mm: 4 %, 0.125 mm: 0 %";
    double water_kg = 160;
    std::string requirements = "";
};

Solved submitted(const Submittal& mix) {
    return solve(fmt::format(R"(boardmark: 1
title: finish
reporting: si
requirements: {{code: ACI 318-19, exposure: [{}], strength: 35 MPa, slump: 100 mm, finish: board-marked{}}}
materials:
  cement: {{kind: portland cement}}
  ash: {{kind: fly ash}}
  slag: {{kind: slag cement}}
  stone: {{kind: coarse aggregate, nominal_max_size: {}, relative_density: 2.65, absorption: 1 %}}
  sand: {{kind: fine aggregate, relative_density: 2.65, absorption: 0 %, sieves: {{{}}}}}
proportions: {{volume: 1 m3, water: {} kg, air: 6 %, cement: {} kg, ash: {} kg, slag: {} kg,
  stone: 1000 kg, sand: 700 kg}}
)",
                             mix.exposure, mix.requirements, mix.size, mix.sieves, mix.water_kg,
                             mix.cement_kg, mix.ash_kg, mix.slag_kg),
                 input::Purpose::check);
}

} // namespace

TEST_CASE("most fines below 0.125 mm") {
    struct Case {
        Submittal mix;
        double most_kg_m3;
    };
    const auto [mix, most_kg_m3] = GENERATE(values<Case>({
        {{.cement_kg = 280}, 400},
        {{.cement_kg = 300}, 400},
        {{.cement_kg = 330}, 430}, // DIN 1045-2, linear: 400 + 30/50 of 50
        {{.cement_kg = 350}, 450},
        {{.cement_kg = 380}, 480}, // raised by the cement above 350
        {{.cement_kg = 420}, 500}, // by at most 50
        {{.cement_kg = 330, .ash_kg = 40}, 470},
        {{.cement_kg = 330, .ash_kg = 80}, 480},
        {{.cement_kg = 200, .slag_kg = 130}, 430}, // as a composite cement
        {{.cement_kg = 300, .size = "8 mm"}, 450},
        {{.cement_kg = 350, .size = "8 mm"}, 500},
        {{.cement_kg = 300, .size = "10 mm"}, 400},
        {{.cement_kg = 300, .exposure = "F0, S0, W1, C1"}, 550},
        {{.cement_kg = 400, .exposure = "F0, S0, W1, C1"}, 550},
    }));
    INFO(mix.cement_kg << " kg of cement, " << mix.ash_kg << " of ash, " << mix.size << ", "
                       << mix.exposure);
    const Solved solved = submitted(mix);
    const core::Check& check = *solved.check("finish.fines_high");
    CHECK_THAT(*check.limit->high, WithinAbs(most_kg_m3, 1e-9));
    CHECK(check.source.citation == "DIN 1045-2 largest permitted fines");
    CHECK(check.source.confidence == core::Confidence::read);
}

TEST_CASE("most fines are not published above C50/60 nor without a freezing class") {
    CHECK(submitted({.exposure = "S0, W1, C1"}).check("finish.fines_high") == nullptr);
    Solved strong = submitted({});
    core::SubmittedMix mix = std::get<core::CompleteSubmittedMix>(strong.mix);
    const auto has_maximum = [&](double strength_mpa) {
        mix.requirements.strength_mpa = strength_mpa;
        const auto checks = core::assess(entered(mix), strong.proportions, strong.tables);
        return std::ranges::count(checks, "finish.fines_high", &core::Check::id) == 1;
    };
    CHECK(has_maximum(50));
    CHECK_FALSE(has_maximum(50.5));
}

TEST_CASE("least fines below 0.25 mm by largest size") {
    const auto [size, least_kg_m3] = GENERATE(table<std::string, double>({
        {"5 mm", 525}, // the nearest size of the table
        {"8 mm", 525},
        {"12 mm", 487.5},
        {"16 mm", 450},
        {"24 mm", 425},
        {"32 mm", 400},
        {"40 mm", 400},
    }));
    INFO(size);
    CHECK_THAT(*submitted({.cement_kg = 600, .size = size}).check("finish.fines_low")->limit->low,
               WithinAbs(least_kg_m3, 1e-9));
}

TEST_CASE("a change of w/c that shows in colour, as water and as moisture of the sand") {
    // 0.02 of 380 kg/m3 is 7.6 kg of water; 7.6 of 700 kg of dry sand is 1.09 %.
    const core::Check check = *submitted({}).check("finish.w_cm_constancy");
    CHECK_THAT(*check.value, WithinAbs(7.6, 1e-9));
    const auto found =
        std::ranges::find(check.message.arguments, "moisture", &core::Argument::name);
    CHECK(check.verdict == Verdict::holds);
    // 0.02 of 150 kg/m3 is 3 kg, 0.43 % of the sand: moistures are known to 0.5 % (common
    // practice).
    CHECK(submitted({.cement_kg = 150}).check("finish.w_cm_constancy")->verdict == Verdict::watch);
    REQUIRE(found != check.message.arguments.end());
    CHECK_THAT(std::get<core::Quantity>(found->value).value, WithinAbs(1.0857, 1e-4));
}

TEST_CASE("figures that only advise on a face") {
    const auto& us = reference::tables(core::UnitSystem::us).finish;
    const auto& si = reference::tables(core::UnitSystem::si).finish;
    for (const core::FinishTables* finish : {&*us, &*si}) {
        CHECK(finish->least_paste_percent.value == 26); // 300/3150 + 0.55 * 0.300 = 0.260
        CHECK(finish->least_mortar_percent.value == 55);
        CHECK(finish->w_cm_change.value == 0.02);
        CHECK(finish->bleeding_w_cm.value == 0.50);
        CHECK(finish->bleeding_signs.value == 2);
        CHECK(finish->redosings.value == 2);
        CHECK(finish->redose_revolutions.value == 30);
        CHECK(finish->redose_revolutions.source.confidence == core::Confidence::from_memory);
        CHECK_THAT(finish->least_fines_below_mm, WithinAbs(0.25, 1e-12));
        CHECK_THAT(finish->most_fines_below_mm, WithinAbs(0.125, 1e-12));
        CHECK_THAT(finish->most_fines_strength_mpa, WithinAbs(50, 1e-9));
        CHECK(finish->constancy_source.confidence == core::Confidence::read);
        CHECK(finish->least_fines_kg_m3.source.citation == "common practice, no source");
    }
    CHECK_THAT(us->largest_size_mm.value, WithinAbs(19.05, 1e-9));
    CHECK_THAT(si->largest_size_mm.value, WithinAbs(20, 1e-9));
}
