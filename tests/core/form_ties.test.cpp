// Tie loads, their check, and the rate of rise that a form allows.

#include "form_support.hpp"

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

core::TieGrid grid() {
    return {.row_heights_m = core::row_heights(
                {.first_m = foot_m, .spacing_m = 2 * foot_m, .top_m = 10 * foot_m}),
            .column_spacing_m = 2 * foot_m};
}

} // namespace

TEST_CASE("rows of ties share the form between them") {
    const auto rows = core::tie_loads(wall_pressure(), grid());
    REQUIRE(rows.size() == 5); // at 1, 3, 5, 7, 9 ft
    double area_m2 = 0;
    double force_kn = 0;
    for (const auto& row : rows) {
        area_m2 += row.area_m2;
        force_kn += row.average_load_kn;
        CHECK(row.average_kpa <= row.highest_kpa);
        CHECK(row.average_load_kn <= row.load_kn);
    }
    CHECK_THAT(area_m2 / (foot_m * foot_m), WithinAbs(20, 1e-9));
    // 2 ft of wall: (804.545 x 5.5486 / 2 + 804.545 x 4.4514) x 2 = 11627 lb
    CHECK_THAT(in_pounds(force_kn), WithinAbs(11627, 1));
}

TEST_CASE("a row is loaded by the highest pressure of its strip") {
    const auto rows = core::tie_loads(wall_pressure(), grid());
    CHECK_THAT(in_pounds(rows.front().load_kn), WithinAbs(3218, 0.5));
    // at 9 ft: the strip from 0 to 2 ft deep, w h = 290 psf at its foot, 145 on average, on 4 ft2
    CHECK_THAT(in_pounds(rows.back().load_kn), WithinAbs(1160, 1e-6));
    CHECK_THAT(in_pounds(rows.back().average_load_kn), WithinAbs(580, 1e-6));
}

TEST_CASE("one row holds all the form, a row above the concrete none") {
    const auto rows = core::tie_loads(
        wall_pressure(), {.row_heights_m = {4 * foot_m, 11 * foot_m}, .column_spacing_m = 1});
    REQUIRE(rows.size() == 1);
    CHECK_THAT(rows.front().strip_m / foot_m, WithinAbs(10, 1e-9));
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
        core::tie_check(wall_pressure(), grid(),
                        core::TieRating{.kn = pound_kn(pounds), .breaking = breaking}, us());
    CHECK(check.id == "forms.tie");
    CHECK(check.verdict == verdict);
    CHECK(speaks_of({check.message}, "breaking") == breaking);
}

TEST_CASE("a tie without a rating is not checked") {
    CHECK(core::tie_check(wall_pressure(), grid(), std::nullopt, us()).verdict ==
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

TEST_CASE("ties of a working load bear a pressure on their area") {
    // 3000 lb on 2 ft by 2 ft: 750 psf
    CHECK_THAT(in_psf(core::pressure_of_ties_kpa({pound_kn(3000), 4 * foot_m * foot_m})),
               WithinAbs(750, 1e-6));
}
