// When the forms of a wall may come off: which rule speaks, and that what is not known asks for
// tests of strength. The rules' own figures are held in tests/published/curing.test.cpp, the
// verdicts of whole files in tests/unsafe/cold.situations.

#include <boardmark/core/wall/wall_plan.hpp>

#include "base_mix.hpp"
#include "walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

const std::string effect = "water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}";
const std::string portland = "{cement: 100 %}";

struct Poured {
    core::AfterPlacing after;
    core::Check face;
};

struct Pour {
    std::optional<double> air_c, concrete_c;
    std::string binder = portland;
    std::string reducer = effect + ", retards: no";
    double strip_after_h = 72;
    core::WallPlacing placing = {}; ///< what else is stated
};

Poured poured(const Pour& pour) {
    const Solved mix = solve(text({.requirements = "  average_strength: 6000 psi\n",
                                   .reducer = pour.reducer,
                                   .binder = pour.binder}));
    core::Wall wall = wall_of(run_of(5, 2, 250));
    wall.mix = mix.mix;
    wall.placing = pour.placing;
    wall.placing.air_c = pour.air_c;
    wall.placing.concrete_c = pour.concrete_c;
    wall.placing.strip_after_h = pour.strip_after_h;
    std::vector<core::Check> checks;
    Poured result{core::after_placing(wall, mix.proportions, mix.tables, checks), {}};
    const auto face = std::ranges::find(checks, "stripping.age", &core::Check::id);
    REQUIRE(face != checks.end());
    CHECK(face->part == "wall");
    result.face = *face;
    return result;
}

} // namespace

TEST_CASE("the later of the two rules of stripping speaks") {
    // 2 MPa of 5000 psi = 34.474 MPa, EN 1992-1-1 class S: root 1 + ln(17.237) / 0.38 = 8.4921,
    // 28 d / 72.116 = 9.318 h at 20 degC; an hour at 10 degC is worth 14.79 / 24 of one, at 15 degC
    // exp(13.65 - 4000 / 288) = 0.7875. ACI 347: 12 h in air above 10 degC; where none counts, the
    // strength, but not before the 24 h of the older list.
    const auto [air_c, concrete_c, earliest_h, verdict] =
        GENERATE(table<double, double, double, Verdict>({
            {15, 20, 12, Verdict::holds},                 // by time; by strength 11.83 h
            {15, 10, 9.318 * 24 / 14.79, Verdict::holds}, // by strength 15.12 h, colder concrete
            {10, 20, 24, Verdict::watch},                 // by time nothing counts
            {2, 20, 24, Verdict::watch}, // 9.318 / exp(13.65 - 4000 / 275) = 22.8 h by strength
            {1, 20, 9.318 / 0.3872, Verdict::watch}, // exp(13.65 - 4000 / 274) = 0.3872
        }));
    const core::WallPlacing known{.setting_h = 4, .lowest_air_c = air_c};
    const Poured wall = poured({.air_c = air_c, .concrete_c = concrete_c, .placing = known});
    REQUIRE(wall.after.strip.earliest_h());
    CHECK_THAT(*wall.after.strip.earliest_h(), WithinAbs(earliest_h, 0.02));
    CHECK(wall.face.verdict == verdict);
    const double found_h = *wall.after.strip.earliest_h();
    for (const auto& [age_h, expected] :
         {std::pair{found_h + 0.01, Verdict::watch}, {found_h - 0.1, Verdict::fails}}) {
        CHECK(poured({.air_c = air_c,
                      .concrete_c = concrete_c,
                      .strip_after_h = age_h,
                      .placing = known})
                  .face.verdict == expected);
    }
}

TEST_CASE("hours count at the temperature held, then in the coldest air") {
    // ACI 347: 12 h above 10 degC; 9 h under blankets at 13 degC and the rest never in air of 5
    // degC; 30 h under them are 12 after 12.
    const auto [until_h, by_time_h] =
        GENERATE(table<double, std::optional<double>>({{9, std::nullopt}, {30, 12.0}, {12, 12.0}}));
    const Poured wall =
        poured({.air_c = 8,
                .concrete_c = 15,
                .placing = {.lowest_air_c = 5, .held_at_c = 13, .protected_until_h = until_h}});
    CHECK(wall.after.strip.by_time_h == by_time_h);
}

TEST_CASE("an age that holds by the older list cites the list, not the guide") {
    // ACI 347R-14 has 12 h in air above 10 degC; from 24 h on, time alone tells it, by the upper
    // end of a list of 12 to 24 h that is older. 2 MPa is there after 9.3 h at 20 degC.
    const auto [strip_after_h, verdict, work] = GENERATE(table<double, Verdict, std::string>(
        {{12, Verdict::watch, "ACI 347R-14"}, {24, Verdict::holds, "Older removal times"}}));
    const Poured wall = poured({.air_c = 15,
                                .concrete_c = 20,
                                .strip_after_h = strip_after_h,
                                .placing = {.setting_h = 4, .lowest_air_c = 15}});
    CHECK(wall.face.verdict == verdict);
    CHECK_THAT(wall.face.source.citation, Catch::Matchers::StartsWith(work));
}

TEST_CASE("a form does not come off before the concrete has set") {
    const core::WallPlacing slow{.setting_h = 4, .end_of_set_h = 20, .lowest_air_c = 15};
    const Poured wall = poured({.air_c = 15, .concrete_c = 20, .placing = slow});
    CHECK(wall.after.strip.by_time_h == 12.0);
    CHECK(wall.after.strip.earliest_h() == 20.0);
}

TEST_CASE("in frost the face needs more, and below freezing no strength is counted") {
    CHECK(poured({.air_c = 0, .concrete_c = 10}).after.strip.needed_mpa == 5);
    // 2 degC and no forecast: frost may come. With a forecast that says no it needs 2 MPa.
    CHECK(poured({.air_c = 2, .concrete_c = 10}).after.strip.needed_mpa == 5);
    CHECK(poured({.air_c = 2, .concrete_c = 10, .placing = {.lowest_air_c = 1}})
              .after.strip.needed_mpa == 2);
    const Poured frozen = poured({.air_c = -1, .concrete_c = 10});
    CHECK_FALSE(frozen.after.strip.earliest_h());
    CHECK(frozen.face.verdict == Verdict::fails);
}

TEST_CASE("the curve of strength holds for portland cement that nothing delays") {
    const auto [pour, by_strength, verdict] = GENERATE(table<Pour, bool, Verdict>({
        {{.air_c = 8, .concrete_c = 15}, true, Verdict::watch},
        {{.air_c = 8, .concrete_c = 15, .binder = "{cement: 75 %, slag: 25 %}"},
         false,
         Verdict::fails},
        {{.air_c = 8, .concrete_c = 15, .reducer = effect}, false, Verdict::fails}, // not asked
        {{.air_c = 8, .concrete_c = 15, .reducer = effect + ", retards: yes"},
         false,
         Verdict::fails},
        {{.air_c = 8, .concrete_c = std::nullopt}, false, Verdict::fails}, // no hour counts
        {{.air_c = 15, .concrete_c = std::nullopt}, false, Verdict::not_checked},
        {{.air_c = std::nullopt, .concrete_c = 15}, false, Verdict::not_checked},
    }));
    const Poured wall = poured(pour);
    CHECK(wall.after.strip.by_strength_h.has_value() == by_strength);
    CHECK(wall.face.verdict == verdict);
    CHECK(wall.after.strip.earliest_h().has_value() == by_strength);
}

TEST_CASE("soffits by span, by load, by the engineer's strength") {
    // ACI 347, read in a trade journal's summary: days for slab and beam. Cantilevers have no row.
    // 75 % of the strength by EN 1992-1-1 class S: root 1 - ln(0.75) / 0.38 = 1.75706, 28 d
    // / 3.0873 = 9.0695 d; an hour at 20 degC is worth exp(13.65 - 4000 / 293) = 0.99812 by B.10.
    const Solved mix = solve(text(
        {.requirements = "  average_strength: 6000 psi\n", .reducer = effect + ", retards: no"}));
    core::Wall wall = wall_of(run_of(5, 2, 250));
    wall.mix = mix.mix;
    wall.runs.front().openings = {{.name = "niche",
                                   .width_mm = 900,
                                   .height_mm = 900,
                                   .depth_mm = 100,
                                   .sill_m = {},
                                   .at_m = {},
                                   .count = 1},
                                  {.name = "gate",
                                   .width_mm = 1200,
                                   .height_mm = 1500,
                                   .depth_mm = {},
                                   .sill_m = {},
                                   .at_m = {},
                                   .count = 1},
                                  {.name = "gap to the top of 2 m, without a head",
                                   .width_mm = 2000,
                                   .height_mm = 1400,
                                   .depth_mm = {},
                                   .sill_m = 0.6,
                                   .at_m = {1},
                                   .count = 1}};
    wall.benches = {
        {.name = "spanning",
         .length_m = 3,
         .depth_mm = 500,
         .thickness_mm = 150,
         .span_m = 2,
         .live_load_kpa = 4.8},
        {.name = "standing out",
         .length_m = 3,
         .depth_mm = 500,
         .thickness_mm = 150,
         .overhang_mm = 200},
        {.name = "resting", .length_m = 3, .depth_mm = 500, .thickness_mm = 150, .span_m = 0}};
    wall.placing.lowest_air_c = wall.placing.air_c = wall.placing.concrete_c = 20;
    wall.placing.soffit_strength_percent = 75;
    std::vector<core::Check> checks;
    const auto after = core::after_placing(wall, mix.proportions, mix.tables, checks);
    REQUIRE(after.soffits.size() == 3);
    const auto& head = after.soffits[0];
    CHECK(head.soffit.opening == "gate");
    CHECK(head.days == 7.0);
    CHECK(head.by_time_h == 168.0);
    const auto& bench = after.soffits[1]; // 4.8 kPa above 150 mm x 24 kN/m3 = 3.6 kPa
    CHECK(bench.days == 3.0);
    CHECK_THAT(*bench.by_strength_h, WithinAbs(24 * 9.0695 / 0.99812, 0.05));
    CHECK(bench.earliest_h() == bench.by_strength_h);
    const auto& cantilever = after.soffits[2];
    CHECK_FALSE(cantilever.days);
    CHECK_THAT(*cantilever.needed_mpa, WithinAbs(0.75 * 34.474, 0.001));
}
