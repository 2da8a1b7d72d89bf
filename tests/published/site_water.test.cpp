// Water added on site: what a gallon does to the ratio.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/batch/site_water.hpp>

#include "as_printed.hpp"
#include "made.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

TEST_CASE("a gallon to the cubic yard on 611 lb of cementitious material") {
    // 8.33 lb to the gallon, 8.33/611 = 0.0136: arithmetic on 6 1/2 sacks of 94 lb. Half of the
    // last digit is 0.4 % of it; at 62.4 lb/ft3 the gallon of 231 in3 weighs 8.342 lb, 0.14 % more.
    const Solved mix = solve(R"(boardmark: 1
title: a gallon more
reporting: us
requirements: {strength: 4000 psi, slump: 4 in, strength_curve: {0.4136: 4700 psi, 0.50: 4000 psi},
               average_strength: 4700 psi}
materials:
  cement: {kind: portland cement}
  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.68, absorption: 0 %,
          moisture: 0 %}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0 %, moisture: 0 %}
proportions: {volume: 1 yd3, water: 244.4 lb, cement: 611 lb, stone: 1700 lb, sand: 1300 lb, air: 2 %}
)",
                             input::Purpose::batch);
    const core::Batch batch = boardmark::test::made(core::batch(
        mix.proportions, {.volume_m3 = inside(1, "yd3")}, mix.tables.water_density_kg_m3));
    CHECK_THAT(batch.w_cm, WithinAbs(0.4, 1e-9));
    const core::SiteWater water = boardmark::test::made(
        core::site_water(mix.proportions, batch, {.percent = 0, .kg = std::nullopt}, mix.tables));
    CHECK_THAT(water.w_cm_limit, WithinAbs(0.4136, 1e-9));
    CHECK_THAT(in_unit(water.may_be_added.litres / 1000, "gal"), WithinAbs(1, 0.005));
}
