// Maturity, strength by age and stripping, as printed.

#include <boardmark/core/forms/stripping.hpp>
#include <boardmark/core/strength/maturity.hpp>
#include <boardmark/core/strength/strength_gain.hpp>
#include <boardmark/core/wall/soffit.hpp>
#include <boardmark/core/weather/cold_protection.hpp>

#include "as_printed.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

const core::CuringRules& rules() {
    return tables_in(UnitSystem::us).placing->curing;
}

const core::TemperatureHistory day_at_ten{{24, 10}};
const core::TemperatureHistory cooling{{12, 15}, {12, 8}, {24, 5}};

} // namespace

TEST_CASE("temperature-time factor of ASTM C1074") {
    // 24 h at 10 degC: 240 degC h over 0 degC, 480 over -10 degC; 12 h at 15, 12 h at 8, 24 h at 5
    // degC: 396 (worked by hand).
    const auto& maturity = rules().maturity;
    CHECK(core::temperature_time_factor_c_h(day_at_ten, maturity.datum_c.value) == 240);
    CHECK_THAT(core::temperature_time_factor_c_h(day_at_ten, maturity.classic_datum_c.value),
               WithinAbs(480, exact));
    CHECK(core::temperature_time_factor_c_h(cooling, maturity.datum_c.value) == 396);
    CHECK(core::temperature_time_factor_c_h({{5, -3}, {1, 7}}, 0) == 7); // no time is lost again
}

TEST_CASE("equivalent age") {
    // ASTM C1074 with 5000 K and 20 degC; EN 1992-1-1 B.10. Recomputed from the printed formulas.
    const auto& maturity = rules().maturity;
    CHECK_THAT(core::equivalent_age_h(day_at_ten, maturity), WithinAbs(13.14, 0.005));
    CHECK_THAT(core::en_equivalent_age_h(day_at_ten, maturity), WithinAbs(14.79, 0.005));
    CHECK_THAT(core::equivalent_age_h(cooling, maturity), WithinAbs(24.29, 0.005));
    CHECK(core::equivalent_age_h({{48, -2}}, maturity) == 0);
}

TEST_CASE("strength by age of ACI 209R") {
    // t / (a + b t), a and b from memory; the parts of the strength at 28 d follow from them.
    const auto [cement, age_d, part] =
        GENERATE(table<std::string, double, double>({{"I, moist", 1, 0.206},
                                                     {"I, moist", 3, 0.458},
                                                     {"I, moist", 7, 0.704},
                                                     {"I, moist", 14, 0.881},
                                                     {"I, moist", 28, 1.007},
                                                     {"I, moist", 56, 1.085},
                                                     {"III, moist", 1, 0.311},
                                                     {"III, moist", 3, 0.593},
                                                     {"III, moist", 7, 0.801},
                                                     {"III, moist", 28, 0.998}}));
    INFO(cement << " at " << age_d);
    const auto& gain = rules().strength_gain.at(cement);
    CHECK_THAT(core::strength_part(age_d, gain), WithinAbs(part, 0.0005));
    CHECK_THAT(*core::age_for_part_d(core::strength_part(age_d, gain), gain),
               WithinAbs(age_d, 1e-9));
    CHECK_FALSE(core::age_for_part_d(1.3, gain));
    CHECK(rules().strength_gain.at("I, steam").a_d == 1.0);
    CHECK(rules().strength_gain.at("III, steam").b == 0.98);
}

TEST_CASE("strength by age of EN 1992-1-1") {
    // exp(s (1 - sqrt(28/t))), s 0.20 R, 0.25 N, 0.38 S: read in two reproductions of 3.1.2.
    const auto [cement, age_d, part] =
        GENERATE(table<std::string, double, double>({{"N", 1, 0.342},
                                                     {"N", 3, 0.598},
                                                     {"N", 7, 0.779},
                                                     {"N", 14, 0.902},
                                                     {"N", 28, 1.000},
                                                     {"N", 56, 1.076},
                                                     {"R", 3, 0.663},
                                                     {"R", 7, 0.819},
                                                     {"S", 3, 0.458},
                                                     {"S", 7, 0.684}}));
    INFO(cement << " at " << age_d);
    const auto& gain = rules().en_strength_gain.at(cement);
    CHECK_THAT(core::strength_part(age_d, gain), WithinAbs(part, 0.0005));
    CHECK_THAT(*core::age_for_part_d(core::strength_part(age_d, gain), gain),
               WithinAbs(age_d, 1e-9));
}

TEST_CASE("earliest stripping") {
    // ACI 347: 12 h in air above 50 degF (10 degC), cumulative.
    core::StrippedLift lift{.air = {{8, 15}, {12, 6}, {12, 12}}};
    const auto by_time = core::stripping_age(lift, rules());
    REQUIRE(by_time.by_time_h);
    CHECK_THAT(*by_time.by_time_h, WithinAbs(24, exact)); // 8 h, a night, 4 h
    CHECK_FALSE(by_time.earliest_h());                    // nothing is known of the concrete

    // 2 MPa of 20 MPa with cement N: part 0.1, root 1 + ln 10 / 0.25 = 10.2103, 28 d / 104.25 =
    // 0.26858 d = 6.446 h at 20 degC; by B.10 an hour at 10 degC is worth 14.79 / 24 of one.
    lift.strength_28d_mpa = 20;
    lift.gain = rules().en_strength_gain.at("N");
    lift.concrete = {{100, 10}};
    const auto by_strength = core::stripping_age(lift, rules());
    REQUIRE(by_strength.by_strength_h);
    CHECK_THAT(*by_strength.by_strength_h, WithinAbs(6.446 * 24 / 14.79, 0.01));
    CHECK(by_strength.earliest_h() == by_strength.by_time_h); // the later of the two

    lift.frost = true; // 5 MPa in frost: CIRIA 136, from memory
    CHECK(core::stripping_age(lift, rules()).needed_mpa == 5);
    CHECK(core::stripping_age(lift, rules()).by_strength_h > by_strength.by_strength_h);

    lift.air = {{40, 9}}; // never warm enough: the history ends
    lift.concrete = {};
    CHECK_FALSE(core::stripping_age(lift, rules()).earliest_h());
}

TEST_CASE("days before a soffit is struck as printed") {
    // ACI 347, as a trade journal sums it up: live load less / greater than dead load; on a
    // boundary of spans the longer. Slabs 4/3, 7/4, 10/7 d; joists and beams 7/4, 14/7, 21/14 d.
    const auto [span_ft, slab_less, slab_more, beam_less, beam_more] =
        GENERATE(table<double, double, double, double, double>({{9.9, 4, 3, 7, 4},
                                                                {10, 7, 4, 14, 7},
                                                                {19.9, 7, 4, 14, 7},
                                                                {20, 10, 7, 21, 14},
                                                                {40, 10, 7, 21, 14}}));
    INFO(span_ft << " ft");
    core::Soffit soffit{.part = "", .span_m = inside(span_ft, "ft") / 1000, .dead_load_kpa = 4};
    const auto days = [&](core::SoffitKind kind, std::optional<double> live_load_kpa) {
        soffit.kind = kind;
        soffit.live_load_kpa = live_load_kpa;
        return core::soffit_days(soffit, rules().soffits);
    };
    CHECK(days(core::SoffitKind::slab, 3.9) == slab_less);
    CHECK(days(core::SoffitKind::slab, 4) == slab_less);
    CHECK(days(core::SoffitKind::slab, std::nullopt) == slab_less);
    CHECK(days(core::SoffitKind::slab, 4.1) == slab_more);
    CHECK(days(core::SoffitKind::beam, 3.9) == beam_less);
    CHECK(days(core::SoffitKind::beam, 4.1) == beam_more);
}

TEST_CASE("days of protection in the cold as printed") {
    // ACI 306R length of protection, normal / accelerated, from memory: no load, not exposed 2/1;
    // no load, exposed 3/2; partial load, exposed 6/4. 500 psi before freezing; EN 13670 5 MPa.
    // Greatest fall in 24 h: below 12 in 50 degF, to 36 in 40 degF: read in two handbooks.
    const auto& weather = tables_in(UnitSystem::us).weather;
    core::ColdPour pour{.coldest_c = inside(39, "degF"),
                        .thinnest_mm = inside(8, "in"),
                        .thickest_mm = inside(14, "in")};
    const auto days = [&](bool exposed, std::optional<bool> loaded, bool accelerated) {
        pour.exposed = exposed;
        pour.loaded = loaded;
        pour.accelerated = accelerated;
        return core::cold_plan(pour, rules(), weather)->days;
    };
    CHECK(days(false, false, false) == 2);
    CHECK(days(false, false, true) == 1);
    CHECK(days(true, false, false) == 3);
    CHECK(days(true, std::nullopt, true) == 2);
    CHECK(days(true, true, false) == 6);
    CHECK(days(true, true, true) == 4);
    CHECK_THAT(in_unit(rules().strength_before_freezing_mpa.value, "psi"), WithinAbs(500, exact));
    CHECK(rules().strength_before_freezing_en_mpa.value == 5);
    const auto plan = core::cold_plan(pour, rules(), weather);
    CHECK_THAT(in_unit(plan->least_c.value, "degF"), WithinAbs(55, exact)); // the thinnest
    CHECK_THAT(plan->most_fall_k.value, WithinAbs(40 / 1.8, exact));        // the thickest
    CHECK_FALSE(plan->freezes);
    pour.coldest_c = inside(40, "degF");
    CHECK_FALSE(core::cold_plan(pour, rules(), weather));
    pour.coldest_c = 0;
    CHECK(core::cold_plan(pour, rules(), weather)->freezes);
}

TEST_CASE("when it bears the first frost, at the temperature held") {
    // 500 psi of 5000 psi: part 0.1, EN 1992-1-1 class S: root 1 + ln 10 / 0.38 = 7.05943, 28 d /
    // 49.8356 = 0.561847 d = 13.484 h at 20 degC; by B.10 an hour at 10 degC is 14.79 / 24 of one.
    core::ColdPour pour{.coldest_c = -5,
                        .thinnest_mm = 250,
                        .thickest_mm = 250,
                        .frost_strength_mpa = rules().strength_before_freezing_mpa.value,
                        .held_at_c = 10,
                        .held = {{1000, 10}},
                        .lift = {.strength_28d_mpa = inside(5000, "psi"),
                                 .gain = rules().en_strength_gain.at("S")}};
    const auto plan = core::cold_plan(pour, rules(), tables_in(UnitSystem::us).weather);
    CHECK_THAT(*plan->frost_strength_h, WithinAbs(13.484 * 24 / 14.79, 0.02));
    CHECK_THAT(*plan->fall_k, WithinAbs(15, exact));
}

TEST_CASE("one stripping age for all lifts") {
    const core::StrippingAge early{18, std::nullopt, 2};
    const core::StrippingAge late{24, 30, 2};
    const core::StrippingAge unknown{std::nullopt, std::nullopt, 2};
    CHECK(core::uniform_stripping_age_h({early, late, early}) == 30.0);
    CHECK_FALSE(core::uniform_stripping_age_h({early, unknown}));
    CHECK_FALSE(core::uniform_stripping_age_h({}));
}

TEST_CASE("least curing as printed") {
    // ACI 318 26.5.3: 7 d, high-early 3 d; ACI 308R: I 7, II 10, III 3, IV and V 14 d; from memory.
    const auto [cement, high_early, days] = GENERATE(table<std::string, bool, double>(
        {{"I", false, 7}, {"II", false, 10}, {"III", true, 3}, {"V", false, 14}, {"", false, 7}}));
    INFO(cement);
    CHECK(core::curing_time_d(cement, high_early, rules()).value == days);
    CHECK_THAT(in_unit(rules().least_c.value, "degF"), WithinAbs(50, exact));
    // ACI 306R, from memory: 500 psi before freezing.
    CHECK_THAT(in_unit(rules().strength_before_freezing_mpa.value, "psi"), WithinAbs(500, exact));
}
