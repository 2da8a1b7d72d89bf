// Approximate air by nominal maximum size: ACI 211.1-91 Table 6.3.3, the rows below the water
// (metric Table A1.5.3.3 prints the same figures). Read in one reprint, the entrapped row in two.

#include "core/method/air_content.hpp"

#include "as_printed.hpp"
#include "made.hpp"
#include "reference/lookup.hpp"

#include <catch2/catch.hpp>

#include <array>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

/// The air of a mix in which none is entrained.
core::AirContent entrapped_air(UnitSystem system, double size) {
    const bool us = system == UnitSystem::us;
    core::Mix mix{.title = "entrapped air",
                  .system = system,
                  .requirements = {.strength_mpa = 20, .slump_mm = 75}};
    mix.requirements.air.basis = core::AirBasis::none;
    core::Worksheet worksheet;
    const core::Tables& tables = tables_in(system);
    const core::StatedClasses none{mix.requirements, false, tables.code};
    return boardmark::test::made(
        core::select_air(mix, none, inside(size, us ? "in" : "mm"), tables, worksheet));
}

} // namespace

TEST_CASE("entrapped air in percent") {
    // ACI 211.1-91 Table 6.3.3: approximate amount of entrapped air in non-air-entrained concrete
    const auto [size_in, size_mm, percent] = GENERATE(table<double, double, double>({
        {0.375, 9.5, 3},
        {0.5, 12.5, 2.5},
        {0.75, 19, 2},
        {1, 25, 1.5},
        {1.5, 37.5, 1},
        {2, 50, 0.5},
        {3, 75, 0.3},
        {6, 150, 0.2},
    }));
    INFO(size_in << " in, " << size_mm << " mm");
    for (const auto& air :
         {entrapped_air(UnitSystem::us, size_in), entrapped_air(UnitSystem::si, size_mm)}) {
        CHECK_THAT(air.in_batch_percent, WithinAbs(percent, exact));
        CHECK_FALSE(air.entrained);
    }
}

TEST_CASE("entrapped air between and beyond the printed sizes") {
    // Cells of ACI 211.1-91 Table 6.3.3; the straight line is common practice, no source
    CHECK_THAT(entrapped_air(UnitSystem::us, 0.625).in_batch_percent, WithinAbs(2.25, exact));
    CHECK_THAT(entrapped_air(UnitSystem::si, 20).in_batch_percent, WithinAbs(2, exact));
    CHECK_THAT(entrapped_air(UnitSystem::si, 40).in_batch_percent, WithinAbs(1, exact));
    CHECK_THROWS_AS(entrapped_air(UnitSystem::us, 0.25), core::Unresolved);
    CHECK_THROWS_AS(entrapped_air(UnitSystem::si, 165), core::Unresolved);
}

TEST_CASE("recommended average air by exposure in percent") {
    // ACI 211.1-91 Table 6.3.3: recommended average total air content by level of exposure.
    // 5.0 for 3/4 in, moderate, is also used in NAVEDTRA 14070 p. 17-6.
    const auto [exposure, printed] = GENERATE(table<std::string, std::array<double, 8>>({
        {"mild exposure", {4.5, 4.0, 3.5, 3.0, 2.5, 2.0, 1.5, 1.0}},
        {"moderate exposure", {6.0, 5.5, 5.0, 4.5, 4.5, 4.0, 3.5, 3.0}},
        {"severe exposure", {7.5, 7.0, 6.0, 6.0, 5.5, 5.0, 4.5, 4.0}},
    }));
    constexpr std::array sizes_in{0.375, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 6.0};
    INFO(exposure);
    const auto& table = reference::table("air-content");
    const auto& row = reference::row(table, exposure);
    REQUIRE(row.cells.size() == printed.size());
    for (std::size_t i = 0; i < printed.size(); ++i) {
        CAPTURE(sizes_in[i]);
        CHECK_THAT(in_unit(table.columns[i].at_us, "in"), WithinAbs(sizes_in[i], exact));
        CHECK_THAT(row.cells[i], WithinAbs(printed[i], exact));
    }
}
