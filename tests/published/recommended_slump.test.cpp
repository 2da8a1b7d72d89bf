// Recommended slump for consolidation by vibration: ACI 211.1-91 Table 6.3.1. Read in three
// reprints; one prints 3 in (75 mm) as the most for mass concrete, the two others 2 in (50 mm).

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

const core::SlumpRecommendation& row(UnitSystem system, const std::string& construction) {
    const auto& rows = tables_in(system).method.slump;
    const auto found =
        std::ranges::find(rows, construction, &core::SlumpRecommendation::construction);
    REQUIRE(found != rows.end());
    return *found;
}

bool cautions_slump(const std::string& system, const std::string& slump) {
    const Solved wall = solve(fmt::format(R"(boardmark: 1
title: a reinforced wall
reporting: {}
requirements: {{strength: 25 MPa, average_strength: 25 MPa, slump: {}, air: none}}
materials:
  cement: {{kind: portland cement, relative_density: 3.15}}
  stone: {{kind: coarse aggregate, nominal_max_size: 19 mm, relative_density: 2.65,
          absorption: 1 %, dry_rodded_density: 1600 kg/m3}}
  sand: {{kind: fine aggregate, relative_density: 2.65, absorption: 1 %, fineness_modulus: 2.8}}
mixture: {{binder: {{cement: 100 %}}, coarse: {{stone: 100 %}}, fine: {{sand: 100 %}}}}
)",
                                          system, slump));
    return std::ranges::any_of(wall.proportions.worksheet.cautions, [](const core::Phrase& text) {
        return text.text.find("recommended for {what}") != std::string::npos;
    });
}

} // namespace

TEST_CASE("recommended slump by construction") {
    // ACI 211.1-91 Table 6.3.1
    const auto [construction, least_in, most_in, least_mm, most_mm] =
        GENERATE(table<std::string, double, double, double, double>({
            {"reinforced foundation walls and footings", 1, 3, 25, 75},
            {"plain footings, caissons, substructure walls", 1, 3, 25, 75},
            {"beams and reinforced walls", 1, 4, 25, 100},
            {"building columns", 1, 4, 25, 100},
            {"pavements and slabs", 1, 3, 25, 75},
            {"mass concrete", 1, 2, 25, 50},
        }));
    INFO(construction);
    const auto& us = row(UnitSystem::us, construction);
    CHECK_THAT(in_unit(us.low_mm, "in"), WithinAbs(least_in, exact));
    CHECK_THAT(in_unit(us.high_mm, "in"), WithinAbs(most_in, exact));
    const auto& si = row(UnitSystem::si, construction);
    CHECK_THAT(si.low_mm, WithinAbs(least_mm, exact));
    CHECK_THAT(si.high_mm, WithinAbs(most_mm, exact));
}

TEST_CASE("a wall is cautioned outside the slump recommended for reinforced walls") {
    // ACI 211.1-91 Table 6.3.1: beams and reinforced walls, 1 to 4 in (25 to 100 mm)
    const auto [system, slump, cautioned] = GENERATE(table<std::string, std::string, bool>({
        {"us", "1 in", false},
        {"us", "4 in", false},
        {"us", "5 in", true},
        {"si", "25 mm", false},
        {"si", "100 mm", false},
        {"si", "125 mm", true},
    }));
    INFO(slump);
    CHECK(cautions_slump(system, slump) == cautioned);
}
