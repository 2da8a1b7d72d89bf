// Densities of cementitious materials and of water.

#include "as_printed.hpp"
#include "core/mix/ingredients.hpp"
#include "core/mix/material_figures.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Kind;
using core::UnitSystem;

namespace {

core::Material without_figures(Kind kind) {
    return {.name = "material", .kind = kind};
}

/// Absolute volume in ft3 of a mass of portland cement of relative density 3.15.
double cement_volume_ft3(double pounds) {
    core::Material cement = without_figures(Kind::portland_cement);
    cement.relative_density = 3.15;
    const auto ingredient =
        core::binder_ingredient(cement, inside(pounds, "lb/yd3"), tables_in(UnitSystem::us));
    return 27 * ingredient.volume_m3.value();
}

} // namespace

TEST_CASE("density of water as the handbooks take it") {
    // ACI 211.1-91 chapter 7 (inch-pound) and appendix 2 (metric): 62.4 lb/ft3 and 1000 kg/m3
    CHECK_THAT(in_unit(tables_in(UnitSystem::us).water_density_kg_m3, "lb/ft3"),
               WithinAbs(62.4, exact));
    CHECK_THAT(tables_in(UnitSystem::si).water_density_kg_m3, WithinAbs(1000, exact));
}

TEST_CASE("absolute volume of cement") {
    // Concrete technician manual of a US state's department of transportation (2011), chapter 3,
    // p. 3-1 (read): 588 lb 2.99 ft3, a sack of 94 lb 0.48 ft3; a glossary prints 0.478
    const auto [pounds, cubic_feet, tolerance] = GENERATE(table<double, double, double>({
        {588, 2.99, 0.005},
        {94, 0.48, 0.005},
        {94, 0.478, 0.0005},
        {3.15 * 62.4, 1, exact}, // 196.56 lb/ft3
    }));
    INFO(pounds << " lb");
    CHECK_THAT(cement_volume_ft3(pounds), WithinAbs(cubic_feet, tolerance));
}

TEST_CASE("usual relative densities of cementitious materials") {
    // Portland cement 3.15: PCA, Design and Control of Concrete Mixtures, 14th edition (mean of
    // 3.10 to 3.25, read). Slag cement 2.90 and fly ash 2.35: read in two product surveys. The
    // others: means of product data, common practice, no source.
    const auto [kind, density] = GENERATE(table<Kind, double>({
        {Kind::portland_cement, 3.15},
        {Kind::white_cement, 3.15},
        {Kind::portland_limestone_cement, 3.08},
        {Kind::blended_cement, 2.95}, // 2.90 to 3.00
        {Kind::slag_cement, 2.90},
        {Kind::fly_ash, 2.35},
        {Kind::silica_fume, 2.20},
        {Kind::metakaolin, 2.50},
        {Kind::ground_limestone, 2.70},
    }));
    INFO(core::name_of(kind));
    const auto found = core::relative_density(without_figures(kind), tables_in(UnitSystem::us));
    REQUIRE(found);
    CHECK_THAT(found->value, WithinAbs(density, exact));
    CHECK(found->is_typical());
}

TEST_CASE("relative density of a blend is not the mean of its parts") {
    // Volumes add, masses are shared: by hand 1 / (0.6/3.15 + 0.4/2.90) = 3.045 for 40 % slag and
    // 1 / (0.75/3.15 + 0.25/2.35) = 2.903 for 25 % ash
    const auto [kind, share, density] = GENERATE(table<Kind, double, double>({
        {Kind::slag_cement, 0.40, 3.045},
        {Kind::fly_ash, 0.25, 2.903},
    }));
    const auto& tables = tables_in(UnitSystem::si);
    const double volume_m3 =
        core::binder_ingredient(without_figures(Kind::portland_cement), 1000 * (1 - share), tables)
            .volume_m3.value() +
        core::binder_ingredient(without_figures(kind), 1000 * share, tables).volume_m3.value();
    CHECK_THAT(1 / volume_m3, WithinAbs(density, 0.0005));
}
