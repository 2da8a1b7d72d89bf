// Cores of low tests. ACI 318-19 26.12.6 (three cores, 85 % and 75 %: read in the publisher's
// answers; days of rest and of the test from memory). ASTM C42: factors for length over diameter,
// 0.93 at 1.25 and 0.96 at 1.50 read, the others from memory; bag within 1 h and wet work within 2
// d read.

#include <boardmark/core/strength/strength_findings.hpp>

#include "../core/strength_builder.hpp"
#include "as_printed.hpp"
#include "core/strength/cored_tests.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

constexpr double half_psi_mpa = 0.00345;
constexpr int drilled = a_day + 40;

/// A 4 in core of a length in diameters, handled as the standard wants.
core::DrilledCore core_of(const std::string& name, double psi, double ratio) {
    return {.name = name,
            .batch = 0,
            .diameter_mm = 101.6,
            .length_mm = 101.6 * ratio,
            .strength_mpa = inside(psi, "psi"),
            .drilled = drilled,
            .bagged_after_h = 0.5,
            .last_wetted = drilled + 1,
            .tested = drilled + 7};
}

/// One test of production far below the specified strength.
core::StrengthRecord low_record(double specified_psi) {
    core::StrengthRecord record = aci_record(specified_psi);
    add_psi(record, {0.7 * specified_psi, 0.7 * specified_psi, 0.7 * specified_psi});
    record.nominal_size_mm = 19.05;
    return record;
}

} // namespace

TEST_CASE("factor for the length of a core") {
    const auto [ratio, factor] = GENERATE(table<double, double>(
        {{1.75, 0.98}, {1.50, 0.96}, {1.25, 0.93}, {1.00, 0.87}, {1.125, 0.900}, {1.90, 1.00}}));
    INFO(ratio);
    const auto& rules = tables_in(core::UnitSystem::us).strength->cores;
    CHECK_THAT(core::length_correction(ratio, rules).factor, WithinAbs(factor, exact));
}

TEST_CASE("three short cores of 5000 psi concrete fail where uncorrected they would pass") {
    // 4600, 4350, 4700 psi at 1.50, 1.25, 1.00: 4416, 4045.5, 4089; mean 4183.5 < 4250 = 85 %
    core::StrengthRecord record = low_record(5000);
    record.cores = {core_of("C1", 4600, 1.5), core_of("C2", 4350, 1.25), core_of("C3", 4700, 1.0)};
    const auto findings = findings_of(record);
    REQUIRE(findings.cores.size() == 1);
    const core::CoredTest& test = findings.cores.front();
    CHECK_THAT(test.cores[0].strength_mpa, WithinAbs(inside(4416, "psi"), half_psi_mpa));
    CHECK_THAT(test.cores[1].strength_mpa, WithinAbs(inside(4045.5, "psi"), half_psi_mpa));
    CHECK_THAT(test.cores[2].strength_mpa, WithinAbs(inside(4089, "psi"), half_psi_mpa));
    CHECK_THAT(test.average_mpa, WithinAbs(inside(4183.5, "psi"), half_psi_mpa));
    CHECK(verdict_of(findings, "cores.average") == Verdict::fails);
    CHECK_THAT(*check_of(findings, "cores.average")->limit->low,
               WithinAbs(inside(4250, "psi"), half_psi_mpa));
    // 3750 psi is 75 %; the weakest is above, but the factor at 1.00 is from memory
    CHECK(verdict_of(findings, "cores.single") == Verdict::watch);
    CHECK(verdict_of(findings, "cores.number") == Verdict::holds);
}

TEST_CASE("84.9 percent is a watch: met by one answer of the publisher alone") {
    // 4940, 4970, 5370 psi of 6000: mean 5093.3 = 84.9 %, 5100 asked
    core::StrengthRecord record = low_record(6000);
    record.cores = {core_of("C1", 4940, 2), core_of("C2", 4970, 2), core_of("C3", 5370, 2)};
    const auto findings = findings_of(record);
    CHECK_THAT(findings.cores.front().average_mpa, WithinAbs(inside(5093.3, "psi"), half_psi_mpa));
    CHECK(verdict_of(findings, "cores.average") == Verdict::watch);
    CHECK(verdict_of(findings, "cores.single") == Verdict::holds);
    record.cores[0].strength_mpa = inside(4860, "psi"); // 84.4 %
    CHECK(verdict_of(findings_of(record), "cores.average") == Verdict::fails);
    record.cores[0].strength_mpa = inside(4970, "psi"); // 85.06 %
    CHECK(verdict_of(findings_of(record), "cores.average") == Verdict::holds);
    record.cores[2].strength_mpa = inside(4490, "psi"); // 75 % of 6000 are 4500
    CHECK(verdict_of(findings_of(record), "cores.single") == Verdict::fails);
}

TEST_CASE("what is missing of cores is never read as good") {
    core::StrengthRecord record = low_record(5000);
    CHECK(verdict_of(findings_of(record), "cores.number") == Verdict::not_checked);
    record.cores = {core_of("C1", 4900, 2), core_of("C2", 4900, 2)};
    CHECK(verdict_of(findings_of(record), "cores.number") == Verdict::fails);
    CHECK(verdict_of(findings_of(record), "cores.average") == Verdict::not_checked);
    record.cores.push_back(core_of("C3", 4900, 2));
    CHECK(verdict_of(findings_of(record), "cores.average") == Verdict::holds);
    // Enough of both, by limits from memory.
    CHECK(verdict_of(findings_of(record), "cores.size") == Verdict::watch);
    CHECK(verdict_of(findings_of(record), "cores.conditioning") == Verdict::watch);
    record.cores[1].last_wetted.reset();
    CHECK(verdict_of(findings_of(record), "cores.conditioning") == Verdict::not_checked);
    record.nominal_size_mm.reset();
    CHECK(verdict_of(findings_of(record), "cores.size") == Verdict::not_checked);
    record.cores[2].length_mm = 100; // shorter than wide: no factor, no average
    CHECK(verdict_of(findings_of(record), "cores.size") == Verdict::fails);
    CHECK(verdict_of(findings_of(record), "cores.average") == Verdict::not_checked);
}

TEST_CASE("handling of cores") {
    core::StrengthRecord record = low_record(5000);
    record.cores = {core_of("C1", 4900, 2), core_of("C2", 4900, 2), core_of("C3", 4900, 2)};
    core::DrilledCore& last = record.cores.back();
    const auto verdict = [&] { return verdict_of(findings_of(record), "cores.conditioning"); };
    SECTION("bag after more than an hour") {
        last.bagged_after_h = 1.25;
        CHECK(verdict() == Verdict::fails);
    }
    SECTION("the same where the day of its test is not written down") {
        last.bagged_after_h = 1.25;
        last.tested.reset();
        CHECK(verdict() == Verdict::fails);
    }
    SECTION("ground wet on the third day") {
        last.last_wetted = drilled + 3;
        CHECK(verdict() == Verdict::fails);
    }
    SECTION("tested after four days of rest") {
        last.tested = drilled + 5;
        CHECK(verdict() == Verdict::watch);
    }
    SECTION("tested on the eighth day") {
        last.tested = drilled + 8;
        CHECK(verdict() == Verdict::watch);
    }
    SECTION("too thin for 2 in stone") {
        record.nominal_size_mm = 51;
        CHECK(verdict_of(findings_of(record), "cores.size") == Verdict::watch);
    }
}

TEST_CASE("the way on stands where something is low, and nowhere else") {
    CHECK(findings_of(low_record(5000)).way_on.size() == 7);
    core::StrengthRecord record = aci_record(5000);
    add_psi(record, {5600, 5600, 5600});
    CHECK(findings_of(record).way_on.empty());
    // 4900, 4800, 4900: each is above 4500, their average below 5000; the code asks for no cores
    record = aci_record(5000);
    for (const double psi : {4900, 4800, 4900}) {
        add_psi(record, {psi, psi, psi});
    }
    const auto findings = findings_of(record);
    REQUIRE(findings.way_on.size() == 1);
    CHECK(findings.way_on.front().name == "later concrete");
    CHECK(check_of(findings, "cores.number") == nullptr);
}

TEST_CASE("under EN 206 cores are kept and not judged") {
    core::StrengthRecord record = en_record(30);
    add_batch(record, {20, 20});
    record.cores = {core_of("C1", 4900, 2)};
    const auto findings = findings_of(record);
    CHECK(verdict_of(findings, "cores.average") == Verdict::not_checked);
    CHECK(!findings.way_on.empty());
}
