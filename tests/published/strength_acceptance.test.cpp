// Acceptance of strength tests: ACI 318-19 26.12.3.1 (rules read in three sources) and EN 206
// (from memory); factors and ratings of ACI 214R and control charts (from memory).

#include <boardmark/core/basis/tables.hpp>

#include "core/strength/record_evaluation.hpp"
#include "core/strength_builder.hpp"

#include <boost/math/distributions/normal.hpp>
#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::Verdict;

TEST_CASE("three tests under ACI 318") {
    // 5210, 4720, 5390 psi for 5000 psi: their average is 5106.7 >= 5000, the lowest 4720 >= 4500.
    core::StrengthRecord record = aci_record(5000);
    for (const double psi : {5210.0, 4720.0, 5390.0}) {
        add_psi(record, {psi, psi, psi});
    }
    const core::StrengthFindings findings = findings_of(record);
    const core::Check& average = *check_of(findings, "strength.average_of_three");
    const core::Check& single = *check_of(findings, "strength.single_test");
    CHECK(average.verdict == Verdict::holds);
    CHECK_THAT(in_unit(*average.value, "psi"), WithinAbs(5106.7, 0.05));
    CHECK(single.verdict == Verdict::holds);
    CHECK_THAT(in_unit(*single.value, "psi"), WithinAbs(4720, 1e-6));
    CHECK_THAT(in_unit(*single.limit->low, "psi"), WithinAbs(4500, 1e-6));
}

TEST_CASE("the least of a single test under ACI 318") {
    // f'c - 500 psi (3.5 MPa) up to 5000 psi (35 MPa), 0.90 f'c above
    const auto [specified, least] = GENERATE(table<double, double>({
        {3000, 2500},
        {5000, 4500},
        {5010, 4509},
        {6000, 5400},
    }));
    CAPTURE(specified);
    CHECK_THAT(in_unit(findings_of(aci_record(specified)).acceptance.single_least_mpa, "psi"),
               WithinAbs(least, 1e-6));
}

TEST_CASE("a single test that is too low fails alone") {
    // 4490 psi is below 4500; the averages of 5600, 4490, 5600 and of 4490, 5600, 5600 are 5230.
    const auto [lowest, verdict] = GENERATE(table<double, Verdict>({
        {4500, Verdict::holds},
        {4496, Verdict::watch}, // rounds to 4500, to 10 psi
        {4490, Verdict::fails},
    }));
    CAPTURE(lowest);
    core::StrengthRecord record = aci_record(5000);
    for (const double psi : {5600.0, lowest, 5600.0, 5600.0}) {
        add_psi(record, {psi, psi, psi});
    }
    const core::StrengthFindings findings = findings_of(record);
    CHECK(verdict_of(findings, "strength.single_test") == verdict);
    CHECK(verdict_of(findings, "strength.average_of_three") == Verdict::holds);
    CHECK_THAT(in_unit(findings.tests[1].short_mpa, "psi"), WithinAbs(4500 - lowest, 1e-6));
}

TEST_CASE("an average of three that is too low fails though each test holds") {
    // 4900, 4900, 5100: average 4966.7, 33.3 psi short; none is below 4500
    core::StrengthRecord record = aci_record(5000);
    for (const double psi : {5600.0, 4900.0, 4900.0, 5100.0}) {
        add_psi(record, {psi, psi, psi});
    }
    const core::StrengthFindings findings = findings_of(record);
    CHECK(verdict_of(findings, "strength.single_test") == Verdict::holds);
    CHECK(verdict_of(findings, "strength.average_of_three") == Verdict::fails);
    CHECK_FALSE(findings.tests[1].running_mean_mpa);
    CHECK(findings.tests[2].mean_verdict == Verdict::holds); // 5133
    CHECK_THAT(in_unit(findings.tests[3].mean_short_mpa, "psi"), WithinAbs(33.3, 0.05));
}

TEST_CASE("late tests and gaps in the running means") {
    // 5600, 5200 (late), 5600, missing, 5600, 5600, 5600: with a late test, or across a batch
    // without one, a mean of three is open; the last three follow each other.
    core::StrengthRecord record = aci_record(5000);
    for (const double age_d : {28, 30, 28, 7, 28, 28, 28}) {
        const double psi = age_d == 30 ? 5200 : 5600;
        add_psi(record, {psi, psi, psi}, age_d);
    }
    const core::StrengthFindings findings = findings_of(record);
    CHECK(findings.untested == std::vector<std::string>{"B2", "B4"});
    REQUIRE(findings.tests.size() == 6);
    const std::vector<Verdict> means{Verdict::not_checked, Verdict::not_checked,
                                     Verdict::not_checked, Verdict::not_checked,
                                     Verdict::not_checked, Verdict::holds};
    for (std::size_t i = 0; i < means.size(); ++i) {
        CAPTURE(i);
        CHECK(findings.tests[i].late == (i == 1));
        CHECK(findings.tests[i].mean_verdict == means[i]);
    }
    CHECK_THAT(in_unit(*findings.tests[2].running_mean_mpa, "psi"), WithinAbs(5466.7, 0.05));
    CHECK(verdict_of(findings, "strength.average_of_three") == Verdict::not_checked);
    CHECK(verdict_of(findings, "strength.single_test") == Verdict::not_checked);
    CHECK(findings.other_tests.size() == 1);
}

TEST_CASE("a late test is one of the few of an identity under EN 206") {
    // C30: of two tests at least 31 MPa (from memory); 32 and, late, 29.5 average 30.75 at most
    core::StrengthRecord record = en_record(30);
    record.assessment = core::Assessment::identity;
    add_batch(record, {32});
    add_batch(record, {29.5}, 30);
    CHECK(verdict_of(findings_of(record), "strength.mean") == Verdict::fails);
}

TEST_CASE("a late test is in the means of initial production under EN 206") {
    // C30: means of three at least 34 MPa (from memory); 40, 40 and, late, 21 average 33.7 at most
    core::StrengthRecord record = en_record(30);
    for (int i = 0; i < 36; ++i) {
        add_batch(record, {i == 5 ? 21.0 : 40.0}, i == 5 ? 30 : 28);
    }
    CHECK(verdict_of(findings_of(record), "strength.mean_initial") == Verdict::fails);
}

TEST_CASE("initial production under EN 206") {
    // C30: each test at least 26, averages of three at least 34 MPa. From memory: never more than a
    // watch.
    const auto [tests, mean, single] = GENERATE(table<std::vector<double>, Verdict, Verdict>({
        {{34, 34, 34}, Verdict::watch, Verdict::watch},
        {{33, 34, 34}, Verdict::fails, Verdict::watch}, // 33.67
        {{26, 38, 38}, Verdict::watch, Verdict::watch},
        {{25.9, 40, 40}, Verdict::watch, Verdict::fails},
        {{40, 40}, Verdict::not_checked, Verdict::watch},
    }));
    core::StrengthRecord record = en_record(30);
    for (const double mpa : tests) {
        add_batch(record, {mpa});
    }
    const core::StrengthFindings findings = findings_of(record);
    CHECK(verdict_of(findings, "strength.mean") == mean);
    CHECK(verdict_of(findings, "strength.single_test") == single);
}

TEST_CASE("continuous production under EN 206") {
    // 36 tests, 34 and 38 MPa in turn: their mean of 15 is 36 +- 2/15 and the deviation of the
    // first 35 (18 of 34, 17 of 38) is sqrt(16 * 18 * 17 / 35 / 34) = 2.02837; 30 + 1.48 times that
    // is 33.0020 MPa.
    core::StrengthRecord record = en_record(30);
    for (int i = 0; i < 36; ++i) {
        add_batch(record, {i % 2 == 0 ? 34.0 : 38.0});
    }
    const core::StrengthFindings findings = findings_of(record);
    CHECK_THAT(*findings.acceptance.mean_least_mpa, WithinAbs(33.0020, 0.00005));
    CHECK_FALSE(findings.tests[13].running_mean_mpa);
    CHECK_THAT(*findings.tests[14].running_mean_mpa, WithinAbs(36 - 2.0 / 15, 1e-9));
    CHECK(verdict_of(findings, "strength.mean") == Verdict::watch);
}

TEST_CASE("continuous production under EN 206 whose scatter has grown") {
    // The first 35 scatter by 2.028 MPa (above). Fifteen later ones of 36 -+ a in turn, 8 and 7 of
    // each: sqrt(a2 15 (1 - 1/225) / 14) = 1.0328 a. 1.37 times 2.02837 is 2.7789 MPa (from
    // memory), which a = 2.69 (2.778) keeps and a = 2.70 (2.789) exceeds.
    const auto [off, verdict] = GENERATE(table<double, Verdict>({
        {2.69, Verdict::watch},
        {2.70, Verdict::not_checked},
    }));
    CAPTURE(off);
    core::StrengthRecord record = en_record(30);
    for (int i = 0; i < 35; ++i) {
        add_batch(record, {i % 2 == 0 ? 34.0 : 38.0});
    }
    for (int i = 0; i < 15; ++i) {
        add_batch(record, {i % 2 == 0 ? 36 - off : 36 + off});
    }
    CHECK(verdict_of(findings_of(record), "strength.mean") == verdict);
}

TEST_CASE("identity testing under EN 206") {
    // C30: mean of 2 to 4 tests at least 31, of 5 or 6 at least 32 MPa; each at least 26
    const auto [tests, mean] = GENERATE(table<std::vector<double>, Verdict>({
        {{31, 31}, Verdict::watch},
        {{30.5, 31}, Verdict::fails},
        {{31, 31, 31, 31}, Verdict::watch},
        {{31, 31, 31, 31, 31}, Verdict::fails},
        {{32, 32, 32, 32, 32, 32}, Verdict::watch},
        {{33}, Verdict::not_checked},
        {{33, 33, 33, 33, 33, 33, 33}, Verdict::not_checked},
    }));
    core::StrengthRecord record = en_record(30);
    record.assessment = core::Assessment::identity;
    for (const double mpa : tests) {
        add_batch(record, {mpa});
    }
    CHECK(verdict_of(findings_of(record), "strength.mean") == mean);
}

TEST_CASE("mean range of a normal sample") {
    // Integral of 1 - F^n - (1 - F)^n over the line: 2/sqrt(pi) of two, 3/sqrt(pi) of three. The
    // print has three decimals.
    const auto tables = reference::tables(core::UnitSystem::si).strength;
    const boost::math::normal normal;
    REQUIRE(tables->range_factors.size() == 5);
    for (const core::RangeFactor& row : tables->range_factors) {
        double integral = 0;
        constexpr double step = 0.001;
        for (double x = -9; x < 9; x += step) {
            const double below = cdf(normal, x);
            integral +=
                step * (1 - std::pow(below, row.specimens) - std::pow(1 - below, row.specimens));
        }
        INFO(row.specimens << " specimens");
        CHECK_THAT(row.factor, WithinAbs(integral, 0.0005));
    }
    CHECK_THAT(tables->range_factors[0].factor, WithinAbs(2 / std::sqrt(std::numbers::pi), 0.0005));
    CHECK_THAT(tables->range_factors[1].factor, WithinAbs(3 / std::sqrt(std::numbers::pi), 0.0005));
}

TEST_CASE("within-test scatter from the mean range") {
    // Two tests of two specimens, ranges 100 and 300 psi: 200 / 1.128 = 177.3 psi, of 5000 psi
    // 3.546 %, "very good" (ACI 214R from memory: to 3, 4, 5, 6 %)
    core::StrengthRecord record = aci_record(5000);
    add_psi(record, {4950, 5050});
    add_psi(record, {4850, 5150});
    const auto within = findings_of(record).statistics->within_test;
    REQUIRE(within);
    CHECK_THAT(in_unit(within->deviation_mpa, "psi"), WithinAbs(177.3, 0.05));
    CHECK_THAT(within->percent, WithinAbs(3.546, 0.0005));
    CHECK(within->rating == "very good");
}

TEST_CASE("required average of a record of 30 tests") {
    // 15 tests of 5480 and 15 of 6520 psi: deviation 520 times sqrt(30/29) = 528.89; 5000 - 500 +
    // 2.33 times that = 5732.3 psi, the larger of the two (ACI 301; 30 tests have the factor 1)
    core::StrengthRecord record = aci_record(5000);
    for (int i = 0; i < 30; ++i) {
        const double psi = i % 2 == 0 ? 5480 : 6520;
        add_psi(record, {psi, psi, psi});
    }
    const auto statistics = findings_of(record).statistics;
    CHECK_THAT(in_unit(*statistics->deviation_mpa, "psi"), WithinAbs(528.89, 0.005));
    CHECK_THAT(*statistics->deviation_factor, WithinAbs(1, 1e-12));
    CHECK_THAT(in_unit(*statistics->required_average_mpa, "psi"), WithinAbs(5732.3, 0.05));
}

TEST_CASE("classes of EN 206") {
    // EN 206 Table 12, from memory: the pairs in the class's own name
    for (const core::StrengthClass& row :
         reference::tables(core::UnitSystem::si).strength->classes) {
        INFO(row.name);
        CHECK(row.name == "C" + std::to_string(std::lround(row.cylinder_mpa)) + "/" +
                              std::to_string(std::lround(row.cube_mpa)));
    }
}
