// Strength records: tests, line, projection.

#include "core/strength_builder.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::LinePoint;
using core::LineSide;
using core::Verdict;

namespace {

/// A line with scatter: the residuals of ln(strength) alternate about ln 100 - 2 w/cm.
core::StrengthLine scattered_line(double scatter) {
    std::vector<LinePoint> points;
    double sign = 1;
    for (const double w_cm : {0.36, 0.38, 0.40, 0.42, 0.44, 0.46}) {
        points.push_back({"T", w_cm, 100 * std::exp(-2 * w_cm + sign * scatter)});
        sign = -sign;
    }
    return *core::fit_line(points, 0.95);
}

} // namespace

TEST_CASE("a test is the mean of the specimens of one batch at one age") {
    core::StrengthRecord record = en_record(30);
    add_batch(record, {30, 33});
    add_batch(record, {40});
    record.specimens.push_back({"late", 0, 28, 36});
    record.specimens.push_back({"early", 0, 7, 20});
    record.batches[0].cast = a_day + 5; // cast after the other batch
    const auto tests = core::tests_of(record);
    REQUIRE(tests.size() == 3);
    CHECK(tests[0].batch.name == "B2");
    CHECK(tests[1].age_d == 7);
    CHECK_THAT(tests[2].mean_mpa, WithinAbs(33, 1e-12));
    CHECK_THAT(tests[2].range_mpa, WithinAbs(6, 1e-12));
}

TEST_CASE("trials serve the line and are not judged") {
    core::StrengthRecord record = aci_record(5000);
    add_psi(record, {5600, 5600, 5600});
    add_psi(record, {3000, 3000, 3000}, 28, 0.60);
    record.batches[1].purpose = core::BatchPurpose::trial;
    const auto findings = findings_of(record);
    CHECK(findings.tests.size() == 1);
    CHECK(findings.points.size() == 1);
    CHECK(verdict_of(findings, "strength.single_test") == Verdict::holds);
}

TEST_CASE("fewer specimens than make a test are watched") {
    const auto [diameter_mm, specimens, verdict] = GENERATE(table<double, std::size_t, Verdict>({
        {101.6, 3, Verdict::holds},
        {101.6, 2, Verdict::watch},
        {152.4, 2, Verdict::holds},
        {152.4, 1, Verdict::watch},
        {150.0, 2, Verdict::holds},
    }));
    CAPTURE(diameter_mm, specimens);
    core::StrengthRecord record = aci_record(5000);
    record.specimen = {core::SpecimenShape::cylinder, diameter_mm, 2 * diameter_mm};
    add_batch(record, std::vector<double>(specimens, 40));
    CHECK(verdict_of(findings_of(record), "strength.specimens") == verdict);
}

TEST_CASE("points on a line give it back, and its lower side is the line itself") {
    std::vector<LinePoint> points;
    for (const double w_cm : {0.36, 0.40, 0.45}) {
        points.push_back({"T", w_cm, 100 * std::exp(-2.5 * w_cm)});
    }
    const auto line = core::fit_line(points, 0.95);
    REQUIRE(line);
    CHECK_THAT(std::exp(line->intercept), WithinAbs(100, 1e-9));
    CHECK_THAT(line->slope, WithinAbs(-2.5, 1e-9));
    CHECK_THAT(line->r_squared, WithinAbs(1, 1e-9));
    const double wanted = 100 * std::exp(-2.5 * 0.41);
    CHECK_THAT(core::ratio_for(*line, wanted, LineSide::line), WithinAbs(0.41, 1e-9));
    CHECK_THAT(core::ratio_for(*line, wanted, LineSide::lower), WithinAbs(0.41, 1e-6));
}

TEST_CASE("two different ratios make no line") {
    CHECK_FALSE(core::fit_line({{"A", 0.4, 40}, {"B", 0.4, 41}, {"C", 0.5, 30}}, 0.95));
    CHECK_FALSE(core::fit_line({}, 0.95));
}

TEST_CASE("the lower side asks for a lower ratio and gives the strength back") {
    const core::StrengthLine line = scattered_line(0.01);
    REQUIRE(core::surely_falls(line));
    for (const double w_cm : {0.37, 0.40, 0.45}) {
        const double strength = core::strength_at(line, w_cm);
        const double lower = core::ratio_for(line, strength, LineSide::lower);
        CHECK_THAT(core::ratio_for(line, strength, LineSide::line), WithinAbs(w_cm, 1e-9));
        CHECK(lower < w_cm);
        CHECK_THAT(core::lower_mean_at(line, lower), WithinAbs(strength, 1e-9));
    }
}

TEST_CASE("a scatter as large as the fall is no line to read from") {
    CHECK(core::surely_falls(scattered_line(0.01)));
    CHECK_FALSE(core::surely_falls(scattered_line(0.2)));
}

TEST_CASE("the band of the slope by hand") {
    // 40, 38, 35, 36 MPa at 0.36, 0.40, 0.40, 0.44: S = 0.0032, slope of ln(MPa)
    // 0.04 (ln 36 - ln 40) / 0.0032 = -1.317006, scatter 0.0498006 by two degrees; Student's t
    // 4.303 (printed to three decimals): 4.303 times 0.0498006 / 0.0565685 = 3.78818
    const auto line =
        core::fit_line({{"A", 0.36, 40}, {"B", 0.40, 38}, {"C", 0.40, 35}, {"D", 0.44, 36}}, 0.95);
    REQUIRE(line);
    CHECK_THAT(core::slope_band(*line).low, WithinAbs(-5.1052, 0.001));
    CHECK_THAT(core::slope_band(*line).high, WithinAbs(2.4712, 0.001));
    CHECK(core::use_of(*line) == core::LineUse::doubtful); // four results

    // A record draws it at the 95 % of the table of confidence.
    core::StrengthRecord record = en_record(30);
    for (const auto& [w_cm, mpa] : {std::pair{0.36, 40.0}, std::pair{0.40, 38.0},
                                    std::pair{0.40, 35.0}, std::pair{0.44, 36.0}}) {
        add_batch(record, {mpa}, 28, w_cm);
    }
    CHECK_THAT(core::slope_band(*findings_of(record).line).low, WithinAbs(-5.1052, 0.001));
}

TEST_CASE("what may be read from a line") {
    struct Case {
        std::size_t tests;
        double slope;
        double scatter; // of ln(MPa), alternating
        core::LineUse use;
    };
    const auto [tests, slope, scatter, use] = GENERATE(values<Case>({
        {6, -2, 0.01, core::LineUse::read},
        {5, -2, 0.2, core::LineUse::none}, // the fall may be chance
        {4, -2, -0.2, core::LineUse::doubtful},
        {3, 0.1, 0, core::LineUse::none}, // no fall
        {9, 2, 0.01, core::LineUse::none},
        {100, -2, 0.1, core::LineUse::doubtful}, // surely falls, r2 about 0.25
    }));
    CAPTURE(tests, slope, scatter);
    std::vector<LinePoint> points;
    for (std::size_t i = 0; i < tests; ++i) {
        const double w_cm = 0.36 + 0.10 * double(i) / double(tests - 1);
        points.push_back({"T", w_cm, std::exp(4 + slope * w_cm + (i % 2 ? scatter : -scatter))});
    }
    const auto line = core::fit_line(points, 0.95);
    REQUIRE(line);
    CHECK(core::use_of(*line) == use);
}

TEST_CASE("the highest ratio of a doubtful lower side still reaches the strength") {
    const auto line =
        core::fit_line({{"A", 0.36, 40}, {"B", 0.40, 38}, {"C", 0.40, 35}, {"D", 0.44, 36}}, 0.95);
    const double best = core::strongest_w_cm(*line, LineSide::lower);
    const double most = core::lower_mean_at(*line, best);
    for (double w_cm = 0.36; w_cm <= 0.44; w_cm += 0.005) {
        CHECK(core::lower_mean_at(*line, w_cm) <= most * (1 + 1e-12));
    }
    const double wanted = (most + core::lower_mean_at(*line, 0.44)) / 2;
    const double found = core::ratio_for(*line, wanted, LineSide::lower);
    CHECK(found > best);
    CHECK_THAT(core::lower_mean_at(*line, found), WithinAbs(wanted, 1e-9));
    CHECK(core::lower_mean_at(*line, found + 0.002) < wanted);
}

TEST_CASE("a test far off the line is watched and stays in it") {
    core::StrengthRecord record = aci_record(5000);
    double wobble = 1;
    for (const double w_cm : {0.36, 0.38, 0.40, 0.42, 0.44, 0.46, 0.48, 0.50}) {
        const double off = w_cm == 0.42 ? 0.80 : 1 + 0.004 * wobble;
        add_batch(record, {off * 120 * std::exp(-2.5 * w_cm)}, 28, w_cm);
        wobble = -wobble;
    }
    const auto findings = findings_of(record);
    REQUIRE(findings.line);
    CHECK(findings.line->points.size() == 8);
    const core::Check& check = *check_of(findings, "strength.line_outliers");
    CHECK(check.verdict == Verdict::watch);
    const auto* names = std::get_if<std::string>(&check.message.arguments.front().value);
    REQUIRE(names);
    CHECK(names->starts_with("B4 ("));
}

TEST_CASE("an early age projects from pairs of the same batches") {
    // Five pairs with ratios 1.30, 1.35, 1.40, 1.45, 1.50: mean 1.40, deviation 0.0790569;
    // Student's t for four degrees 2.776 (printed) times sqrt(6/5): 1.40 +- 0.2404
    core::StrengthRecord record = en_record(30);
    for (const double ratio : {1.30, 1.35, 1.40, 1.45, 1.50}) {
        add_batch(record, {24}, 7);
        record.specimens.push_back(
            {record.batches.back().name + "/late", record.batches.size() - 1, 28, 24 * ratio});
    }
    add_batch(record, {24}, 7);   // to be projected
    add_batch(record, {23.9}, 7); // below all pairs
    const auto findings = findings_of(record);
    REQUIRE(findings.projections.size() == 1);
    const core::Projection& projection = findings.projections.front();
    CHECK(projection.pairs == 5);
    CHECK_THAT(projection.ratio, WithinAbs(1.40, 1e-9));
    CHECK_THAT(projection.high_ratio - 1.40, WithinAbs(0.2404, 0.0001));
    REQUIRE(projection.pending.size() == 2);
    CHECK_THAT(projection.pending[0].expected_mpa, WithinAbs(33.6, 1e-9));
    CHECK_FALSE(projection.pending[0].outside);
    CHECK(projection.pending[1].outside);
    CHECK(verdict_of(findings, "strength.projection") == Verdict::holds); // 27.8 is above 26
}

TEST_CASE("too few pairs project nothing") {
    core::StrengthRecord record = en_record(30);
    for (int i = 0; i < 4; ++i) {
        add_batch(record, {24}, 7);
        record.specimens.push_back(
            {record.batches.back().name + "/late", record.batches.size() - 1, 28, 34});
    }
    add_batch(record, {24}, 7);
    CHECK(verdict_of(findings_of(record), "strength.projection") == Verdict::not_checked);
}

TEST_CASE("tests that are too old do not lower the required average") {
    core::StrengthRecord record = aci_record(5000);
    for (int i = 0; i < 20; ++i) {
        add_psi(record, {5600.0 + 10 * i});
    }
    constexpr int three_years = 3 * 365;
    const auto fresh = findings_of(record).statistics;
    const auto old = findings_of(record, a_day + three_years).statistics;
    CHECK(fresh->counted == 20);
    CHECK(fresh->deviation_factor);
    CHECK(old->counted == 0);
    CHECK_FALSE(old->deviation_factor);
    CHECK_THAT(in_unit(*old->required_average_mpa, "psi"), WithinAbs(6200, 1e-6));
}

TEST_CASE("a test within 20 h of the age is one of that age") {
    // ASTM C39, permissible tolerance of a 28-day test: 20 h, from memory.
    core::StrengthRecord record = aci_record(5000);
    add_psi(record, {5600, 5600, 5600}, 28 + 19.0 / 24);
    add_psi(record, {5600, 5600, 5600}, 28 - 19.0 / 24);
    add_psi(record, {5600, 5600, 5600}, 28 + 21.0 / 24);
    const auto findings = findings_of(record);
    CHECK(findings.statistics->tests == 2);
    CHECK(check_of(findings, "strength.age")->verdict == Verdict::watch);
}

TEST_CASE("a late test that is too weak even so fails") {
    core::StrengthRecord record = aci_record(5000);
    add_psi(record, {5600, 5600, 5600});
    add_psi(record, {4400, 4400, 4400}, 35);
    CHECK(check_of(findings_of(record), "strength.age")->verdict == Verdict::fails);
}

TEST_CASE("a batch whose test is due and missing is told") {
    core::StrengthRecord record = aci_record(5000);
    add_psi(record, {5600, 5600, 5600});
    add_psi(record, {3800, 3800, 3800}, 7);
    CHECK(check_of(findings_of(record), "strength.due")->verdict == Verdict::watch);
    CHECK(check_of(findings_of(record, a_day + 10), "strength.due") == nullptr);
}

TEST_CASE("a batch that was tested late is not due, whatever another is") {
    core::StrengthRecord record = aci_record(5000);
    add_psi(record, {5600, 5600, 5600});
    add_psi(record, {5600, 5600, 5600}, 35);
    CHECK(check_of(findings_of(record), "strength.due") == nullptr);
    add_psi(record, {3800, 3800, 3800}, 7);
    const auto findings = findings_of(record);
    const auto due = check_of(findings, "strength.due");
    REQUIRE(due);
    CHECK(std::get<std::string>(due->message.arguments.front().value) == record.batches[2].name);
}

TEST_CASE("specimens of a test that differ too much are watched") {
    // ASTM C39, of the mean: two or three 6 x 12 in cylinders 8.0 and 9.5 % (read), 4 x 8 in 9.0
    // and 10.6 % (from memory: a watch at best, and says so).
    const auto [diameter_mm, strengths_psi, verdict, wide] =
        GENERATE(table<double, std::vector<double>, Verdict, bool>({
            {152.4, {4810, 5190}, Verdict::holds, false},       // 7.6 %
            {152.4, {4790, 5210}, Verdict::watch, true},        // 8.4 %
            {152.4, {4770, 5000, 5230}, Verdict::holds, false}, // 9.2 %
            {152.4, {4750, 5000, 5250}, Verdict::watch, true},  // 10 %
            {152.4, {5000}, Verdict::not_checked, false},
            {101.6, {4780, 5220}, Verdict::watch, false},       // 8.8 %
            {101.6, {4770, 5230}, Verdict::watch, true},        // 9.2 %
            {101.6, {4740, 5000, 5260}, Verdict::watch, false}, // 10.4 %
            {101.6, {4730, 5000, 5270}, Verdict::watch, true},  // 10.8 %
        }));
    CAPTURE(diameter_mm, strengths_psi);
    core::StrengthRecord record = aci_record(5000);
    record.specimen = {core::SpecimenShape::cylinder, diameter_mm, 2 * diameter_mm};
    add_psi(record, strengths_psi);
    const auto findings = findings_of(record);
    const core::Check& check = *check_of(findings, "strength.range");
    CHECK(check.verdict == verdict);
    CHECK((check.message.text.find("look for the reason") != std::string::npos) == wide);
}

TEST_CASE("the average of a record is that of the tests that count") {
    // Ten old tests of 9000 psi and fifteen new ones of 5200 and 5800 in turn, average 5480: their
    // deviation is 300 sqrt(15 (1 - 1/225) / 14) = 309.8 psi, times 1.16 for 15 tests 359.4; 5000 +
    // 1.34 times that is 5482 psi (ACI 301), above 5480. All tests average 6888 psi.
    core::StrengthRecord record = aci_record(5000);
    for (int i = 0; i < 25; ++i) {
        add_psi(record, {i < 10 ? 9000.0 : i % 2 == 0 ? 5200.0 : 5800.0});
        record.batches.back().cast = a_day - (i < 10 ? 3 * 365 : 0) + i;
    }
    const auto findings = findings_of(record);
    const core::Check& check = *check_of(findings, "strength.record_average");
    CHECK(check.verdict == Verdict::watch);
    CHECK_THAT(in_unit(*check.value, "psi"), WithinAbs(5480, 0.5));
    CHECK_THAT(in_unit(*check.limit->low, "psi"), WithinAbs(5481.6, 0.5));
    const auto old = findings_of(record, a_day + 3 * 365);
    CHECK(verdict_of(old, "strength.record_average") == Verdict::not_checked);
}

TEST_CASE("fewer tests than make a record, and one with gaps, do not prove the average") {
    const auto [tests, late, verdict] = GENERATE(table<int, bool, Verdict>({
        {15, false, Verdict::holds},
        {14, false, Verdict::watch},
        {16, true, Verdict::watch},
    }));
    CAPTURE(tests, late);
    core::StrengthRecord record = aci_record(5000);
    for (int i = 0; i < tests; ++i) {
        const double psi = i % 2 == 0 ? 6900 : 7100;
        add_psi(record, {psi, psi, psi}, late && i == 3 ? 30 : 28);
    }
    CHECK(verdict_of(findings_of(record), "strength.record_average") == verdict);
}

TEST_CASE("EN 206: continuous production does not wipe out a failure of the initial one") {
    // Initial production: the mean of three is at least the class and 4 MPa (from memory).
    core::StrengthRecord record = en_record(30);
    add_batch(record, {33});
    add_batch(record, {33});
    add_batch(record, {33});
    for (int i = 0; i < 31; ++i) {
        add_batch(record, {40});
    }
    CHECK(core::any_fails(findings_of(record).checks));
    add_batch(record, {40});
    CHECK(check_of(findings_of(record), "strength.mean_initial")->verdict == Verdict::fails);
}

TEST_CASE("EN 206: a low mean of continuous production is none of the initial one") {
    // Production is continuous from the 35th result on (EN 206:2000, certified plant): until then
    // the rule of initial production held, and what came later is not judged by it.
    core::StrengthRecord record = en_record(30);
    for (int i = 0; i < 34; ++i) {
        add_batch(record, {40});
    }
    for (int i = 0; i < 3; ++i) {
        add_batch(record, {30});
    }
    CHECK(check_of(findings_of(record), "strength.mean_initial") == nullptr);
}

TEST_CASE(
    "cautions tell rules that are from memory, and what a line holds for where there is one") {
    // EN 206's rules of conformity are from memory; those of ACI 318-19 26.12 were read.
    const auto [record, line, memory] = GENERATE(table<core::StrengthRecord, bool, bool>({
        {aci_record(5000), false, false},
        {aci_record(5000), true, false},
        {en_record(30), false, true},
        {en_record(30), true, true},
    }));
    CAPTURE(line, memory);
    core::StrengthRecord filled = record;
    for (const double w_cm : {0.40, 0.44, 0.48}) {
        add_batch(filled, {100 * std::exp(-2 * w_cm)}, 28, line ? w_cm : 0.40);
    }
    const auto findings = findings_of(filled);
    REQUIRE(findings.line.has_value() == line);
    const auto told = [&](const std::string& words) {
        return std::ranges::any_of(findings.worksheet.cautions, [&](const core::Phrase& caution) {
            return caution.text.find(words) != std::string::npos;
        });
    };
    CHECK(told("from memory") == memory);
    CHECK(told("The line holds for the materials") == line);
}

TEST_CASE("a confidence that is none makes no line") {
    const std::vector<core::LinePoint> points{{"a", 0.4, 50}, {"b", 0.5, 38}, {"c", 0.6, 29}};
    REQUIRE(core::fit_line(points, 0.95));
    for (const double confidence : {95.0, 1.0, 0.0, -1.0, std::nan("")}) {
        INFO(confidence);
        CHECK_FALSE(core::fit_line(points, confidence));
    }
}
