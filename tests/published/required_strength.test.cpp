// Required average strength: ACI 318-11 Tables 5.3.1.2, 5.3.2.1 and 5.3.2.2, since ACI 318-14 in
// ACI 301. Read in three sources; the row above 5000 psi (35 MPa) without records from memory.

#include "core/code/required_strength.hpp"

#include "as_printed.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

/// A record in the units of the print.
struct Record {
    int tests;
    double deviation;
    std::optional<double> strength = {};
    std::optional<double> age_months = {};
};

const char* stress_unit(UnitSystem system) {
    return system == UnitSystem::us ? "psi" : "MPa";
}

core::CodeAverage ask(UnitSystem system, double specified, std::optional<Record> record = {}) {
    const auto mpa = [&](double stress) { return inside(stress, stress_unit(system)); };
    core::Requirements requirements{.strength_mpa = mpa(specified), .slump_mm = 75};
    if (record) {
        core::StrengthRecords& records = requirements.records.emplace();
        records.tests = record->tests;
        records.standard_deviation_mpa = mpa(record->deviation);
        records.strength_mpa =
            record->strength ? std::optional{mpa(*record->strength)} : std::nullopt;
        records.age_d = record->age_months ? std::optional{inside(*record->age_months, "months")}
                                           : std::nullopt;
    }
    return core::code_average(requirements, tables_in(system).code->average_strength);
}

double average(UnitSystem system, double specified, std::optional<Record> record = {}) {
    return in_unit(ask(system, specified, record).strength_mpa, stress_unit(system));
}

/// A number that the reason of an average names: "factor", "three", "single".
double argument(const core::CodeAverage& code, const std::string& name) {
    const core::Phrase reason = code.reason();
    const auto found = std::ranges::find(reason.arguments, name, &core::Argument::name);
    REQUIRE(found != reason.arguments.end());
    return std::get<core::Quantity>(found->value).value;
}

} // namespace

TEST_CASE("required average strength in psi from a record") {
    // ACI 318-11 Table 5.3.2.1; by hand:
    //   5000 + 1.34 times 520 = 5696.8 and 5000 + 2.33 times 520 - 500 = 5711.6
    //   17 tests: factor 1.16 - 2/5 of 0.08 = 1.128, so 586.56 in place of 520
    //   above 5000: 6000 + 1.34 times 600 = 6804 and 0.90 times 6000 + 2.33 times 600 = 6798
    const auto [specified, deviation, tests, required] =
        GENERATE(table<double, double, int, double>({
            {5000, 520, 30, 5711.6},
            {5000, 520, 120, 5711.6},
            {5000, 520, 17, 5866.7},
            {6000, 600, 30, 6804.0},
            {4000, 300, 30, 4402.0}, // 4000 + 402 and 4000 + 699 - 500
            {6000, 700, 30, 7031.0}, // 6938 and 5400 + 1631
        }));
    CAPTURE(specified, deviation, tests);
    CHECK_THAT(average(UnitSystem::us, specified, Record{tests, deviation}),
               WithinAbs(required, 0.05));
}

TEST_CASE("required average strength in MPa from a record") {
    // ACI 318M-11 Table 5.3.2.1; by hand:
    //   30 + 1.34 times 2 = 32.68 and 30 + 2.33 times 2 - 3.5 = 31.16
    //   35 + 1.34 times 3.6 = 39.824 and 35 + 2.33 times 3.6 - 3.5 = 39.888
    //   above 35: 45 + 1.34 times 3 = 49.02 and 0.90 times 45 + 2.33 times 3 = 47.49
    //             45 + 1.34 times 5 = 51.7 and 0.90 times 45 + 2.33 times 5 = 52.15
    const auto [specified, deviation, required] = GENERATE(table<double, double, double>({
        {30, 2, 32.68},
        {35, 3.6, 39.888},
        {45, 3, 49.02},
        {45, 5, 52.15},
    }));
    CAPTURE(specified, deviation);
    CHECK_THAT(average(UnitSystem::si, specified, Record{30, deviation}),
               WithinAbs(required, exact));
}

TEST_CASE("the factor on the standard deviation for fewer than 30 tests") {
    // ACI 318-11 Table 5.3.1.2: 15 1.16, 20 1.08, 25 1.03, 30 and more 1.00, linear between.
    // Average for 5000 psi and 520 psi by hand: 4500 + 2.33 times factor times 520.
    const auto [tests, factor, required] = GENERATE(table<int, double, double>({
        {15, 1.16, 5905.5},
        {16, 1.144, 5886.1},
        {17, 1.128, 5866.7},
        {20, 1.08, 5808.5},
        {25, 1.03, 5747.9},
        {29, 1.006, 5718.9},
        {30, 1.00, 5711.6},
        {31, 1.00, 5711.6},
        {500, 1.00, 5711.6},
    }));
    INFO(tests << " tests");
    const core::CodeAverage code = ask(UnitSystem::us, 5000, Record{tests, 520});
    CHECK_THAT(argument(code, "factor"), WithinAbs(factor, exact));
    CHECK_THAT(in_unit(code.strength_mpa, "psi"), WithinAbs(required, 0.05));
    CHECK_FALSE(code.record_set_aside);
}

TEST_CASE("fewer than 15 tests count as no record") {
    // ACI 318-11 Table 5.3.1.2 sends fewer than 15 tests to Table 5.3.2.2: 5000 + 1200
    const int tests = GENERATE(1, 2, 10, 14);
    const core::CodeAverage code = ask(UnitSystem::us, 5000, Record{tests, 520});
    CHECK_THAT(in_unit(code.strength_mpa, "psi"), WithinAbs(6200, exact));
    CHECK(code.record_set_aside);
}

TEST_CASE("the two equations cross at a standard deviation of 505 psi") {
    // ACI 318-11 Table 5.3.2.1 up to 5000 psi: 1.34 s = 2.33 s - 500 at s = 505.05 psi
    const auto [deviation, governing] = GENERATE(table<double, std::string>({
        {500, "three"},
        {505, "three"},
        {505.1, "single"},
        {510, "single"},
    }));
    INFO(deviation << " psi");
    const core::CodeAverage code = ask(UnitSystem::us, 4500, Record{30, deviation});
    CHECK_THAT(code.strength_mpa, WithinAbs(argument(code, governing), exact));
    const std::string other = governing == "three" ? "single" : "three";
    CHECK(argument(code, other) < code.strength_mpa);
}

TEST_CASE("the step at 5000 psi belongs to the lower equation") {
    // ACI 318-11 Table 5.3.2.1: "f'c <= 5000 psi" has - 500 psi, above it 0.90 f'c. By hand for
    // s = 600: 4500 + 1398 = 5898; 5010: the larger of 5814 and 4509 + 1398 = 5907.
    CHECK_THAT(average(UnitSystem::us, 5000, Record{30, 600}), WithinAbs(5898, 0.05));
    CHECK_THAT(average(UnitSystem::us, 5010, Record{30, 600}), WithinAbs(5907, 0.05));
    // Metric, s = 5: 35 - 3.5 + 11.65 = 43.15; 36: 32.4 + 11.65 = 44.05
    CHECK_THAT(average(UnitSystem::si, 35, Record{30, 5}), WithinAbs(43.15, exact));
    CHECK_THAT(average(UnitSystem::si, 36, Record{30, 5}), WithinAbs(44.05, exact));
}

TEST_CASE("required average strength without a record in psi") {
    // ACI 318-11 Table 5.3.2.2: below 3000 + 1000, to 5000 + 1200, above 1.10 f'c + 700 (the last
    // from memory: since ACI 318-02, before it + 1400)
    const auto [specified, required] = GENERATE(table<double, double>({
        {2500, 3500},
        {2990, 3990},
        {3000, 4200},
        {4500, 5700},
        {5000, 6200},
        {5001, 6201.1},
        {5500, 6750},
        {6000, 7300},
    }));
    INFO(specified << " psi");
    CHECK_THAT(average(UnitSystem::us, specified), WithinAbs(required, 0.005));
}

TEST_CASE("required average strength without a record in MPa") {
    // ACI 318M-11 Table 5.3.2.2: below 21 + 7.0, to 35 + 8.3, above 1.10 f'c + 5.0
    const auto [specified, required] = GENERATE(table<double, double>({
        {17, 24.0},
        {20, 27.0},
        {21, 29.3},
        {30, 38.3},
        {35, 43.3},
        {40, 49.0},
        {50, 60.0},
    }));
    INFO(specified << " MPa");
    CHECK_THAT(average(UnitSystem::si, specified), WithinAbs(required, exact));
}

TEST_CASE("a record that is too old counts as none") {
    // ACI 318-14 and later, read in notes on its changes: a record is not older than 24 months.
    // Averages as in the other cases: 5711.6 or 6200 psi, 39.888 or 43.3 MPa.
    const auto [months, counts] = GENERATE(table<double, bool>({
        {0, true},
        {9, true},
        {24, true},
        {24.5, false},
        {60, false},
    }));
    INFO(months << " months");
    const core::CodeAverage us = ask(UnitSystem::us, 5000, Record{30, 520, {}, months});
    const core::CodeAverage si = ask(UnitSystem::si, 35, Record{30, 3.6, {}, months});
    CHECK_THAT(in_unit(us.strength_mpa, "psi"), WithinAbs(counts ? 5711.6 : 6200, 0.05));
    CHECK_THAT(si.strength_mpa, WithinAbs(counts ? 39.888 : 43.3, exact));
    CHECK(us.record_set_aside.has_value() == !counts);
}

TEST_CASE("a record of another class of concrete counts as none") {
    // ACI 318-11 5.3.1.1, from memory: specified strengths within 1000 psi (7 MPa). Averages by
    // hand as above; metric with s = 3.6: 35 + 1.34 times 3.6 = 39.824 and 35 - 3.5 + 8.388 =
    // 39.888.
    const auto [system, specified, deviation, recorded, required] =
        GENERATE(table<UnitSystem, double, double, double, double>({
            {UnitSystem::us, 5000, 520, 4000, 5711.6},
            {UnitSystem::us, 5000, 520, 6000, 5711.6},
            {UnitSystem::us, 5000, 520, 3999, 6200},
            {UnitSystem::us, 5000, 520, 6001, 6200},
            {UnitSystem::si, 35, 3.6, 28, 39.888},
            {UnitSystem::si, 35, 3.6, 42, 39.888},
            {UnitSystem::si, 35, 3.6, 27.9, 43.3},
            {UnitSystem::si, 35, 3.6, 42.1, 43.3},
        }));
    INFO("recorded " << recorded);
    CHECK_THAT(average(system, specified, Record{30, deviation, recorded}),
               WithinAbs(required, 0.05));
}

TEST_CASE("textbook problem on the required average strength in MPa") {
    // Materials for Civil and Construction Engineers, sample problem 7.1, p. 255 (read). The number
    // of tests is printed for (b); (c) and (d) take the deviation as it is, as 30 tests do. (b)
    // rounds the corrected deviation 4.06 to 4.1 (2.33 times 0.05 = 0.117) and takes off 3.45 MPa,
    // where the current metric text has 3.5: 0.05 + 0.117 + 0.05. (d) takes off 3.45 as well:
    // 36.40, here 36.35, which its last digit still covers.
    const auto [part, tests, deviation, printed, tolerance] =
        GENERATE(table<std::string, int, double, double, double>({
            {"a", 0, 0, 39.3, 0.05},
            {"b", 17, 3.6, 37.1, 0.217},
            {"c", 30, 2.4, 34.2, 0.05},
            {"d", 30, 3.8, 36.4, 0.05},
        }));
    INFO(part);
    const auto record = tests > 0 ? std::optional{Record{tests, deviation}} : std::nullopt;
    CHECK_THAT(average(UnitSystem::si, 31.0, record), WithinAbs(printed, tolerance));
}

TEST_CASE("textbook problem on the required average strength in psi") {
    // The same problem in inch-pound units, printed to 10 psi. Part (b) prints 5390 psi, which does
    // not follow from its own figures: 4500 + 2.33 times 590 - 500 = 5374.7, and 5366.7 without the
    // rounding of 586.6 to 590. It is 37.1 MPa converted and rounded up; the row is left out.
    const auto [part, tests, deviation, printed] =
        GENERATE(table<std::string, int, double, double>({
            {"a", 0, 0, 5700},
            {"c", 30, 350, 4970},
            {"d", 30, 550, 5280},
        }));
    INFO(part);
    const auto record = tests > 0 ? std::optional{Record{tests, deviation}} : std::nullopt;
    CHECK_THAT(average(UnitSystem::us, 4500, record), WithinAbs(printed, 5));
}

TEST_CASE("textbook factor for 17 tests") {
    // Materials for Civil and Construction Engineers, sample problem 7.1 (b), p. 255: factor 1.13,
    // corrected deviation 4.1 MPa (590 psi), averages 36.5 and 37.1 MPa
    const core::CodeAverage code = ask(UnitSystem::si, 31.0, Record{17, 3.6});
    CHECK_THAT(argument(code, "factor"), WithinAbs(1.13, 0.005));
    CHECK_THAT(argument(code, "factor") * 3.6, WithinAbs(4.1, 0.05));
    CHECK_THAT(argument(code, "factor") * 520, WithinAbs(590, 5));
    // 36.5 from the deviation rounded to 4.1: 1.34 times 0.05 = 0.067 besides the last digit
    CHECK_THAT(argument(code, "three"), WithinAbs(36.5, 0.05 + 0.067));
}

TEST_CASE("textbook problem that stops at the first equation") {
    // Materials for Civil and Construction Engineers, end-of-chapter answer for the same chapter
    // (read): 24.1 MPa, s 3.8 MPa is printed as 29.2, the average of three alone. The second
    // equation gives 24.1 + 2.33 times 3.8 - 3.5 = 29.454 and governs: the print is incomplete.
    const core::CodeAverage code = ask(UnitSystem::si, 24.1, Record{30, 3.8});
    CHECK_THAT(argument(code, "three"), WithinAbs(29.2, 0.05));
    CHECK_THAT(code.strength_mpa, WithinAbs(29.454, 0.0005));
    // 3000 psi, s 350 psi: 3469 psi, where the first equation does govern
    CHECK_THAT(average(UnitSystem::us, 3000, Record{30, 350}), WithinAbs(3469, 0.5));
}

TEST_CASE("a published answer that overlooks its own record") {
    // Open web page, answered question on a 4800 psi mix (read): "+ 1200" gives 6000 psi, although
    // a record with s = 250 psi and more than 30 tests is given; by hand 4800 + 1.34 times 250 =
    // 5135.
    CHECK_THAT(average(UnitSystem::us, 4800), WithinAbs(6000, 0.5));
    CHECK_THAT(average(UnitSystem::us, 4800, Record{31, 250}), WithinAbs(5135, 0.5));
}

TEST_CASE("an average below the code's fails unless a basis is given") {
    // ACI 318-11 Table 5.3.2.2: 4500 psi without a record asks 5700 psi; that a stated basis is for
    // the reader to judge is common practice, no source. ACI 211.1-91 Table 6.3.4(a): more than
    // 6000 psi at 0.40 without entrained air
    const auto [stated, verdict] = GENERATE(table<std::string, core::Verdict>({
        {"average_strength: 5700 psi", core::Verdict::holds},
        {"average_strength: 5500 psi", core::Verdict::fails},
        {"average_strength: 5500 psi, average_strength_basis: own trials", core::Verdict::watch},
    }));
    INFO(stated);
    const Solved mix = solve(R"(boardmark: 1
title: stated average
reporting: us
requirements: {strength: 4500 psi, slump: 3 in, )" +
                                 stated + R"(}
materials:
  cement: {kind: portland cement}
  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in}
proportions: {volume: 1 yd3, water: 240 lb, cement: 600 lb, air: 2 %}
)",
                             input::Purpose::check);
    const core::Check* check = mix.check("strength.average");
    REQUIRE(check);
    CHECK(check->verdict == verdict);
    CHECK_THAT(in_unit(check->limit.value().low.value(), "psi"), WithinAbs(5700, exact));
}

TEST_CASE("required average by the deviations of the code's own rule") {
    // IS 456 9.2.4 with the deviations that IS 10262:2009 prints: M25 25 + 1.65 * 4, M40 40 + 1.65
    // * 5 (printed 48.25), M15 15 + 1.65 * 3.5; a record of 30 tests counts, one of 29 does not. EN
    // 206 by the British normal-mix method, from memory: 1.64 times 8 without 20 results, at least
    // 1.64 times 4 with them.
    const auto [code, specified, tests, deviation, expected] =
        GENERATE(table<std::string, double, int, double, double>({
            {"IS 456", 25, 0, 0, 31.6},
            {"IS 456", 40, 0, 0, 48.25},
            {"IS 456", 15, 0, 0, 20.775},
            {"IS 456", 40, 30, 3.2, 45.28},
            {"IS 456", 40, 29, 3.2, 48.25},
            {"EN 206", 30, 0, 0, 43.12},
            {"EN 206", 30, 20, 5, 38.2},
            {"EN 206", 30, 20, 3, 36.56},
            {"EN 206", 30, 19, 3, 43.12},
        }));
    INFO(code << ", " << specified << " MPa, " << tests << " tests");
    core::Requirements requirements{.code = code, .strength_mpa = specified, .slump_mm = 75};
    if (tests > 0) {
        core::StrengthRecords& records = requirements.records.emplace();
        records.tests = tests;
        records.standard_deviation_mpa = deviation;
    }
    const core::CodeTables& own = reference::vocabulary().code_named(code, UnitSystem::si);
    const auto average_of = core::code_average(requirements, own.average_strength);
    CHECK_THAT(average_of.strength_mpa, WithinAbs(expected, 1e-9));
    CHECK_FALSE(average_of.borrowed);
    CHECK(average_of.is_sure() == (code == "IS 456"));
}

TEST_CASE("a code whose rule for the average is not known borrows that of ACI 301 and says so") {
    for (const std::string code : {"CSA A23.1", "AS 3600"}) {
        INFO(code);
        const core::CodeTables& own = reference::vocabulary().code_named(code, UnitSystem::si);
        const core::Requirements requirements{.code = code, .strength_mpa = 30, .slump_mm = 75};
        const auto average_of = core::code_average(requirements, own.average_strength);
        CHECK(average_of.borrowed);
        CHECK_THAT(average_of.strength_mpa, WithinAbs(38.3, 1e-9)); // 30 + 8.3
    }
    for (const std::string code : {"ACI 318-11", "ACI 318-14", "ACI 318-19", "ACI 318-25"}) {
        CHECK_FALSE(
            reference::vocabulary().code_named(code, UnitSystem::si).average_strength.borrowed);
    }
}
