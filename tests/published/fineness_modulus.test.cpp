// Fineness modulus: CRD-C 104-80, Method of Calculation of the Fineness Modulus of Aggregate (US
// Army Corps of Engineers, 1980), the example of paragraph 4.1. The print gives percent retained.

#include <boardmark/core/mix/fineness_modulus.hpp>

#include "as_printed.hpp"
#include "core/method/fine_aggregate.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

const auto& series_mm() {
    return tables_in(UnitSystem::us).method.fineness_sieves_mm;
}

core::Share sand(const std::string& name, double modulus, double percent) {
    core::Material material{.name = name, .kind = core::Kind::fine_aggregate};
    material.aggregate.fineness_modulus = modulus;
    return {material, percent};
}

} // namespace

TEST_CASE("sieves of the fineness modulus") {
    // CRD-C 104-80 paragraph 1.1: No. 100, 50, 30, 16, 8, 4, 3/8, 3/4, 1 1/2 in and larger, in the
    // ratio of 2 to 1. It prints 38.1 mm for 1 1/2 in, which ASTM E11 names 37.5 mm today.
    const std::vector<double> printed_mm{0.150, 0.300, 0.600, 1.18, 2.36,
                                         4.75,  9.5,   19.0,  37.5, 75};
    REQUIRE(series_mm().size() == printed_mm.size());
    for (std::size_t i = 0; i < printed_mm.size(); ++i) {
        CHECK_THAT(series_mm()[i], WithinAbs(printed_mm[i], exact));
    }
    CHECK(core::standard_sieve(38.1, series_mm()) == 37.5);
}

TEST_CASE("fineness modulus of sieve analyses") {
    // CRD-C 104-80 paragraph 4.1, columns fine aggregate, coarse aggregate, combined 65:35; from
    // 1 1/2 in to No. 100. Passing is 100 less the printed retained: 0 0 0 4 21 46 74 89 95,
    // 4 49 91 100 100 100 100 100 100 and 3 32 59 66 72 81 91 96 98.
    const auto [column, passing, modulus, tolerance] =
        GENERATE(table<std::string, std::vector<double>, double, double>({
            {"fine", {100, 100, 100, 96, 79, 54, 26, 11, 5}, 3.29, exact},
            {"coarse", {96, 51, 9, 0, 0, 0, 0, 0, 0}, 7.44, exact},
            {"combined", {97, 68, 41, 34, 28, 19, 9, 4, 2}, 5.98, exact},
        }));
    INFO(column);
    constexpr double openings_mm[] = {38.1, 19.0, 9.5, 4.75, 2.36, 1.18, 0.600, 0.300, 0.150};
    std::vector<core::SievePassing> sieves;
    for (std::size_t i = 0; i < passing.size(); ++i) {
        sieves.push_back({openings_mm[i], passing[i]});
    }
    const auto found = core::fineness_modulus(sieves, series_mm());
    REQUIRE(found);
    CHECK_THAT(*found, WithinAbs(modulus, tolerance));
}

TEST_CASE("fineness modulus of a blend by mass") {
    // CRD-C 104-80 paragraph 4.1: 35 % of 3.29 and 65 % of 7.44 are printed as 5.98, the sum of
    // nine percentages that were each rounded to a whole one: 9 times 0.5 / 100. Unrounded 5.9875.
    core::Worksheet worksheet;
    const auto modulus = core::blend_fineness_modulus(
        {sand("fine", 3.29, 35), sand("coarse", 7.44, 65)}, tables_in(UnitSystem::us), worksheet);
    REQUIRE(modulus);
    CHECK_THAT(*modulus, WithinAbs(5.98, 0.045));
    CHECK_THAT(*modulus, WithinAbs(5.9875, exact));
}

TEST_CASE("sieves of a mix file give the printed fineness modulus") {
    // CRD-C 104-80 paragraph 4.1, fine aggregate, 3.29. As a sand it is coarser than the method's
    // table reaches, so the bulk volume of coarse aggregate is given; 0.60 is any figure here.
    const std::string sieves =
        GENERATE("9.5 mm: 100 %, 4.75 mm: 96 %, 2.36 mm: 79 %, 1.18 mm: 54 %, 0.6 mm: 26 %, "
                 "0.3 mm: 11 %, 0.15 mm: 5 %",
                 "3/8 in: 100 %, 4.75 mm: 96 %, 2.36 mm: 79 %, 1.18 mm: 54 %, 0.6 mm: 26 %, "
                 "0.3 mm: 11 %, 0.15 mm: 5 %");
    const Solved mix = solve(R"(boardmark: 1
title: sand of CRD-C 104
reporting: us
requirements: {strength: 3000 psi, slump: 3 in, air: none}
materials:
  cement: {kind: portland cement, relative_density: 3.15}
  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.65,
          absorption: 1 %, dry_rodded_density: 100 lb/ft3}
  sand:
    kind: fine aggregate
    relative_density: 2.65
    absorption: 1 %
    sieves: {)" + sieves + R"(}
mixture: {binder: {cement: 100 %}, coarse: {stone: 100 %}, fine: {sand: 100 %}}
selections: {coarse_volume: 0.60}
)");
    CHECK_THAT(figure(mix, "fineness modulus", ""), WithinAbs(3.29, exact));
}
