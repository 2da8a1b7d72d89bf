// First estimate of the mass of fresh concrete: ACI 211.1-91 Tables 6.3.7.1 and A1.5.3.7.1, from
// memory throughout; 4070, 3850 and 2410 close three examples of the same document.

#include "core/method/fresh_density.hpp"

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <array>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

/// The estimate, reached as the calculation does: where nothing is taken off yet, the fine
/// aggregate by mass is the whole estimate.
std::optional<double> ask(UnitSystem system, double size, bool air_entrained) {
    const bool us = system == UnitSystem::us;
    core::Proportions nothing{};
    nothing.selection.nominal_max_size_mm = inside(size, us ? "in" : "mm");
    nothing.selection.air_entrained = air_entrained;
    core::Worksheet worksheet;
    core::cross_check_by_mass(nothing, tables_in(system), worksheet);
    const auto density_kg_m3 = worksheet.steps.back().value;
    return density_kg_m3 ? std::optional{in_unit(*density_kg_m3, us ? "lb/yd3" : "kg/m3")}
                         : std::nullopt;
}

/// A plain mix of stone and sand of one relative density, 2.65 at SSD.
std::string plain_mix(const std::string& head) {
    return "boardmark: 1\ntitle: one relative density\n" + head + R"(
materials:
  cement: {kind: portland cement, relative_density: 3.15}
  stone: {kind: coarse aggregate, nominal_max_size: 19 mm, relative_density: 2.65,
          absorption: 1 %, dry_rodded_density: 1600 kg/m3}
  sand: {kind: fine aggregate, relative_density: 2.65, absorption: 1 %, fineness_modulus: 2.8}
mixture: {binder: {cement: 100 %}, coarse: {stone: 100 %}, fine: {sand: 100 %}}
)";
}

} // namespace

TEST_CASE("first estimate of fresh density in lb/yd3") {
    // ACI 211.1-91 Table 6.3.7.1, from memory
    const auto [size_in, plain, air_entrained] = GENERATE(table<double, double, double>({
        {0.375, 3840, 3710},
        {0.5, 3890, 3760},
        {0.75, 3960, 3840},
        {1, 4010, 3850},
        {1.5, 4070, 3910},
        {2, 4120, 3950},
        {3, 4200, 4040},
        {6, 4260, 4110},
    }));
    INFO(size_in << " in");
    CHECK_THAT(ask(UnitSystem::us, size_in, false).value(), WithinAbs(plain, exact));
    CHECK_THAT(ask(UnitSystem::us, size_in, true).value(), WithinAbs(air_entrained, exact));
}

TEST_CASE("first estimate of fresh density in kg/m3") {
    // ACI 211.1-91 Table A1.5.3.7.1, from memory
    const auto [size_mm, plain, air_entrained] = GENERATE(table<double, double, double>({
        {9.5, 2280, 2200},
        {12.5, 2310, 2230},
        {19, 2345, 2275},
        {25, 2380, 2290},
        {50, 2445, 2345},
        {75, 2490, 2405},
        {150, 2530, 2435},
    }));
    INFO(size_mm << " mm");
    CHECK_THAT(ask(UnitSystem::si, size_mm, false).value(), WithinAbs(plain, exact));
    CHECK_THAT(ask(UnitSystem::si, size_mm, true).value(), WithinAbs(air_entrained, exact));
}

TEST_CASE("the doubtful figure for 37.5 mm air-entrained stone is left empty") {
    // ACI 211.1-91 Table A1.5.3.7.1, from memory: 2410, and air-entrained 2350, which is above the
    // 2345 of the next larger stone while 3910 lb/yd3 is 2320. A doubtful cell is no cross-check.
    CHECK_THAT(ask(UnitSystem::si, 37.5, false).value(), WithinAbs(2410, exact));
    CHECK_FALSE(ask(UnitSystem::si, 37.5, true));
    CHECK_FALSE(ask(UnitSystem::si, 32, true)); // nor is a value drawn towards it
}

TEST_CASE("fresh density by the companion formula of the table") {
    // ACI 211.1-91 equation 6-1, from memory: U = 16.85 Ga (100 - A) + c (1 - Ga/Gc) - w (Ga - 1),
    // metric with 10 in place of 16.85. By hand with Ga 2.65, Gc 3.15 and 2 % air.
    //   340 lb of water at w/c 0.57 (4000 psi): 4375.945 + 94.681 - 561 = 3909.63
    //   205 kg of water at w/c 0.61 (25 MPa):   2597     + 53.344 - 338.25 = 2312.09
    // 16.85 stands for 0.27 times 62.4 = 16.848: 0.002 times 2.65 times 98 = 0.52 lb.
    const auto [head, unit, density, tolerance] =
        GENERATE(table<std::string, std::string, double, double>({
            {"reporting: us\nrequirements: {strength: 4000 psi, average_strength: 4000 psi, "
             "slump: 3 in, air: none}",
             "lb/yd3", 3909.63, 0.53},
            {"reporting: si\nrequirements: {strength: 25 MPa, average_strength: 25 MPa, "
             "slump: 75 mm, air: none}",
             "kg/m3", 2312.09, 0.01},
        }));
    INFO(head);
    CHECK_THAT(figure(solve(plain_mix(head)), "density", unit), WithinAbs(density, tolerance));
}
