// Tie loads, their check, and the rate of rise that a form allows.

#include "form_support.hpp"
#include "walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::AllowableRise;
using core::FormCase;
using core::FormPressure;
using core::Verdict;

namespace {

const core::Tables& us() {
    return form_tables_in(core::UnitSystem::us);
}

/// 10 ft at 804.5 psf, a liquid down to 5.55 ft.
FormPressure wall_pressure() {
    return core::aci_form_pressure(us_wall(), us());
}

/// Rows at 1, 3, 5, 7, 9 ft, columns at 2 ft.
core::TieLayout ties_of(double height_m = 10 * foot_m) {
    return core::tie_layout(run_of(20 * foot_m, height_m, 300),
                            {.kind = core::TieKind::stainless_steel,
                             .across_mm = 2000 * foot_m,
                             .up_mm = 2000 * foot_m});
}

} // namespace

TEST_CASE("a row is loaded by the highest pressure of its strip") {
    const auto rows = core::tie_loads(wall_pressure(), ties_of());
    REQUIRE(rows.size() == 5);
    CHECK(rows.front().stations_m.size() == 10);
    CHECK_THAT(in_pounds(rows.front().load_kn), WithinAbs(3218, 0.5));
    // at 9 ft: the strip from 0 to 2 ft deep, w h = 290 psf at its foot, on 4 ft2
    CHECK_THAT(in_pounds(rows.back().load_kn), WithinAbs(1160, 1e-6));
    CHECK_THAT(in_pounds(core::hardest_tie_kn(wall_pressure(), ties_of())), WithinAbs(3218, 0.5));
}

TEST_CASE("a tie carries the pressure on its own field, not on rows moved closer") {
    // ACI 347R-14, retarder: 1.2 (150 + 9000 x 4 / 55) = 965.5 psf. 7.5 ft of form on rows at 1, 3,
    // 5 and 7 ft: 965.5 x 2 x 2 = 3862 lb; four equal strips of 1.875 ft would make it 3620.
    FormCase pour = us_wall({.height_ft = 7.5});
    pour.retards = true;
    const FormPressure pressure = core::aci_form_pressure(pour, us());
    CHECK_THAT(in_pounds(core::hardest_tie_kn(pressure, ties_of(7.5 * foot_m))),
               WithinAbs(1.2 * (150 + 9000 * 4.0 / 55) * 4, 0.1));
}

TEST_CASE("a tie is held against its working load, a breaking load is halved") {
    const auto [pounds, breaking, verdict] = GENERATE(table<double, bool, Verdict>({
        {3219, false, Verdict::holds},
        {3000, false, Verdict::fails},
        {4500, true, Verdict::fails}, // 2250 lb
        {6437, true, Verdict::holds}, // 3218.5 lb
    }));
    CAPTURE(pounds, breaking);
    const auto check =
        core::tie_check(wall_pressure(), ties_of(),
                        core::TieRating{.kn = pound_kn(pounds), .breaking = breaking}, us());
    CHECK(check.id == "forms.tie");
    CHECK(check.verdict == verdict);
    CHECK(speaks_of({check.message}, "breaking") == breaking);
    CHECK((check.source.citation == us().forms->tie_safety_factor.source.citation) == breaking);
}

TEST_CASE("a tie without a rating is not checked") {
    CHECK(core::tie_check(wall_pressure(), ties_of(), std::nullopt, us()).verdict ==
          Verdict::not_checked);
}

TEST_CASE("a stated design pressure is held against the greatest pressure") {
    const auto [psf, verdict] =
        GENERATE(table<double, Verdict>({{805, Verdict::holds}, {750, Verdict::fails}}));
    CHECK(core::form_pressure_check(wall_pressure(), psf_kpa(psf), us()).verdict == verdict);
    CHECK(core::form_pressure_check(wall_pressure(), std::nullopt, us()).verdict ==
          Verdict::not_checked);
}

TEST_CASE("spacing of ties is rounded down to whole inches or centimetres, never to nothing") {
    using core::UnitSystem;
    CHECK_THAT(*core::tie_spacing_m({40, 0.6, 13.9}, UnitSystem::si), WithinAbs(0.57, 1e-12));
    CHECK_FALSE(core::tie_spacing_m({40, 0.6, 0.1}, UnitSystem::si));
}

TEST_CASE("the rate of rise that a form allows is the formula turned round") {
    // 150 + 9000 R / 55 = 804.545 at R 4; 700 psf: (700 - 150) x 55 / 9000 = 3.361 ft/h
    const auto [psf, rise_ft_h, usable_ft_h] = GENERATE(table<double, double, double>({
        {150 + 9000 * 4.0 / 55, 4, 4},
        {700, 3.361, 3.3},
        {1300, 7.0893, 7.0}, // (1300 - 150) x 55 = 43400 + 2800 R
    }));
    FormCase pour = us_wall();
    pour.rise_m_h.reset(); // the rate is what is asked for
    const AllowableRise rise = core::allowable_rise(pour, psf_kpa(psf), us());
    REQUIRE(rise.rise_m_h);
    CHECK_THAT(*rise.rise_m_h / foot_m, WithinAbs(rise_ft_h, 0.0006));
    CHECK_THAT(*rise.usable_m_h / foot_m, WithinAbs(usable_ft_h, 1e-6));
}

TEST_CASE("no rate of rise where full head governs, where the form bears it, or below the floor") {
    FormCase pour = us_wall();
    const AllowableRise bears = core::allowable_rise(pour, psf_kpa(1450), us());
    CHECK(bears.any);
    CHECK_FALSE(bears.rise_m_h);
    const AllowableRise floor = core::allowable_rise(pour, psf_kpa(590), us());
    CHECK_FALSE(floor.any);
    CHECK_FALSE(floor.rise_m_h);
    CHECK(speaks_of({floor.reason}, "slow enough"));
    pour.highest_slump_mm = 200;
    const AllowableRise fluid = core::allowable_rise(pour, psf_kpa(1000), us());
    CHECK_FALSE(fluid.any);
    CHECK_FALSE(fluid.rise_m_h);
    CHECK(speaks_of({fluid.reason}, "full liquid head"));
}

TEST_CASE("a form rated at a method's least pressure has a rate of rise") {
    // ACI 347R-14: never less than 600 Cw psf, 30 Cw kPa. 150 + 9000 R / 55 = 600 at R 2.75 ft/h;
    // 7.2 + 785 R / 27.8 = 30 at R 0.807 m/h. Below that none; DIN 18218 F3: 25 kPa, 18 + 14 v at
    // v 0.5 m/h.
    const auto [system, kpa, method, rise_m_h] =
        GENERATE(table<core::UnitSystem, double, core::PressureMethod, std::optional<double>>({
            {core::UnitSystem::us, psf_kpa(600), core::aci_form_pressure, 2.75 * foot_m},
            {core::UnitSystem::us, psf_kpa(599), core::aci_form_pressure, std::nullopt},
            {core::UnitSystem::si, 30, core::aci_form_pressure, 22.8 * 27.8 / 785},
            {core::UnitSystem::si, 29.9, core::aci_form_pressure, std::nullopt},
            {core::UnitSystem::si, 25, core::din_form_pressure, 0.5},
            {core::UnitSystem::si, 24.9, core::din_form_pressure, std::nullopt},
        }));
    CAPTURE(kpa);
    FormCase pour = system == core::UnitSystem::us ? us_wall() : si_wall();
    pour.fresh_density_kg_m3 = 2320;
    pour.flow_class = "F3";
    pour.set_time_h = 5;
    const auto rise = core::allowable_rise(pour, kpa, form_tables_in(system), method);
    REQUIRE(rise.rise_m_h.has_value() == rise_m_h.has_value());
    if (rise_m_h) {
        CHECK_THAT(*rise.rise_m_h, WithinAbs(*rise_m_h, 1e-4));
    } else {
        CHECK(speaks_of({rise.reason}, "slow enough"));
    }
}

TEST_CASE("ties allow the rise at which their hardest row carries its working load") {
    // 150 + 9000 R / 55 on 4 ft2 = 3000 lb: 750 psf at R 3.667 ft/h
    const core::TieLayout layout = ties_of();
    const auto rise = core::allowable_rise(
        us_wall(),
        {.asked =
             [&](const FormPressure& pressure) { return core::hardest_tie_kn(pressure, layout); },
         .borne = pound_kn(3000),
         .measure = core::Measure::force},
        us(), core::aci_form_pressure);
    REQUIRE(rise.usable_m_h);
    CHECK_THAT(*rise.usable_m_h / foot_m, WithinAbs(3.6, 1e-6));
    CHECK(speaks_of({rise.reason}, "no tie carries more"));
}

TEST_CASE("what the pressure assumes is no promise") {
    FormCase pour = us_wall();
    CHECK(core::form_pressure_check(core::aci_form_pressure(pour, us()), psf_kpa(805), us())
              .verdict == Verdict::holds);
    const int which = GENERATE(0, 1, 2);
    CAPTURE(which);
    if (which == 0) {
        pour.vibration.depth_m.reset();
    } else if (which == 1) {
        pour.retards.reset();
    } else {
        pour.cement = core::FormCement::unknown;
    }
    for (const FormPressure& pressure :
         {core::aci_form_pressure(pour, us()), core::ciria_form_pressure(pour, us())}) {
        // The head is 10 ft x 145 lb/ft3, 1450 psf, and 5800 lb on 4 ft2: what bears it bears any
        // coefficient.
        CHECK(core::form_pressure_check(pressure, psf_kpa(1440), us()).verdict == Verdict::watch);
        CHECK(core::form_pressure_check(pressure, psf_kpa(2000), us()).verdict == Verdict::holds);
        CHECK(core::form_pressure_check(pressure, psf_kpa(100), us()).verdict == Verdict::fails);
        CHECK(core::tie_check(pressure, ties_of(), core::TieRating{pound_kn(5700)}, us()).verdict ==
              Verdict::watch);
        CHECK(core::tie_check(pressure, ties_of(), core::TieRating{pound_kn(9000)}, us()).verdict ==
              Verdict::holds);
    }
}
