// What changed from one edition of a code to the next. ACI 318-11 to -14 and -14 to -19: trade
// notes on the changes, two or more; ACI 318-25: one set of notes that nothing confirms.

#include "codes_support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;
using core::Verdict;

namespace {

const core::ExposureClass* class_of(const std::string& code, const std::string& name) {
    static std::map<std::string, core::CodeTables> codes;
    return codes.try_emplace(code, *reference::code(code, UnitSystem::us))
        .first->second.find_class(name);
}

} // namespace

TEST_CASE("w/cm and strength of a class by the edition of ACI 318") {
    struct Cell {
        std::string code;
        std::string name;
        double w_cm; ///< 0: none
        double psi;  ///< 0: the edition has no such class
    };
    const auto row = GENERATE(values<Cell>({
        // -11: F1, F2 and F3 are all 0.45 and 4500 psi
        {"ACI 318-11", "F1", 0.45, 4500},
        {"ACI 318-11", "F2", 0.45, 4500},
        {"ACI 318-11", "F3", 0.45, 4500},
        {"ACI 318-11", "S3", 0.45, 4500},
        {"ACI 318-11", "P1", 0.50, 4000},
        {"ACI 318-11", "W1", 0, 0},
        // -14: three steps; P becomes W, S3 has one option
        {"ACI 318-14", "F1", 0.55, 3500},
        {"ACI 318-14", "F2", 0.45, 4500},
        {"ACI 318-14", "F3", 0.40, 5000},
        {"ACI 318-14", "S3", 0.45, 4500},
        {"ACI 318-14", "W1", 0.50, 4000},
        {"ACI 318-14", "W2", 0, 0},
        // -19: W1 is split, S3 has a second option
        {"ACI 318-19", "W1", 0, 2500},
        {"ACI 318-19", "W2", 0.50, 4000},
        {"ACI 318-19", "S3", 0.40, 5000},
        // -25: no F3
        {"ACI 318-25", "F2", 0.45, 4500},
        {"ACI 318-25", "F3", 0, 0},
        {"ACI 318-25", "C2", 0.40, 5000},
    }));
    INFO(row.code << " " << row.name);
    const core::ExposureClass* found = class_of(row.code, row.name);
    REQUIRE((found != nullptr) == (row.psi > 0));
    if (found) {
        CHECK(found->limits.max_w_cm.value_or(0) == row.w_cm);
        CHECK_THAT(in_unit(found->limits.min_strength_mpa, "psi"), WithinAbs(row.psi, 0.5));
    }
}

TEST_CASE("plain concrete under deicers: F3 until ACI 318-19, C2 in -25") {
    CHECK(class_of("ACI 318-14", "F3")->plain_limits->max_w_cm == 0.45);
    CHECK(class_of("ACI 318-19", "F3")->plain_limits->max_w_cm == 0.45);
    CHECK(class_of("ACI 318-25", "C2")->plain_limits->max_w_cm == 0.45);
    CHECK_FALSE(class_of("ACI 318-19", "C2")->plain_limits);
}

TEST_CASE("chloride is counted by cement until ACI 318-14, by cementitious material since") {
    // 300 kg of cement and 100 kg of slag; the same chloride
    const auto percent_of = [](const std::string& code) {
        HeldMix mix{.code = code,
                    .exposure = "C2",
                    .cement_kg = 300,
                    .slag_kg = 100,
                    .cement_standard = "ASTM C150 I"};
        return hold(mix).check("chloride.exposure")->value.value();
    };
    CHECK_THAT(percent_of("ACI 318-14") * 300, WithinAbs(percent_of("ACI 318-19") * 400, 1e-9));
    CHECK(percent_of("ACI 318-11") == percent_of("ACI 318-14"));
}

TEST_CASE("nothing of ACI 318-25 or CSA A23.1 holds: it was not seen") {
    const auto [code, exposure] = GENERATE(table<std::string, std::string>({
        {"ACI 318-25", "F2, S1, W2, C2"},
        {"CSA A23.1", "C-1, S-3"},
    }));
    INFO(code);
    const Solved mix =
        hold({.code = code, .exposure = exposure, .cement_standard = "ASTM C150 II"});
    for (const char* id : {"w_cm.exposure", "strength.exposure", "air.exposure"}) {
        INFO(id);
        REQUIRE(mix.check(id));
        CHECK(mix.check(id)->verdict != Verdict::holds);
    }
    CHECK(mix.check("w_cm.exposure")->verdict == Verdict::watch);
    CHECK(report::words(mix.check("w_cm.exposure")->message, UnitSystem::si).find("from memory") !=
          std::string::npos);
}

TEST_CASE("ACI 318-14 asks no evidence of the aggregate, ACI 318-19 does in W1 and W2") {
    CHECK_FALSE(class_of("ACI 318-14", "W1")->reactivity_evidence);
    CHECK(class_of("ACI 318-19", "W1")->reactivity_evidence);
    CHECK(class_of("ACI 318-19", "W2")->reactivity_evidence);
}

TEST_CASE("CSA A23.1 Table 2, cell by cell, from memory") {
    struct Cell {
        std::string name;
        double w_cm;
        double mpa;
    };
    const auto row = GENERATE(values<Cell>({
        {"C-XL", 0.40, 50},
        {"C-1", 0.40, 35},
        {"C-2", 0.45, 32},
        {"C-3", 0.50, 30},
        {"C-4", 0.55, 25},
        {"F-1", 0.50, 30},
        {"F-2", 0.55, 25},
        {"S-1", 0.40, 35},
        {"S-2", 0.45, 32},
        {"S-3", 0.50, 30},
    }));
    INFO(row.name);
    const core::ExposureClass* found = class_of("CSA A23.1", row.name);
    REQUIRE(found);
    CHECK(found->limits.max_w_cm == row.w_cm);
    CHECK(found->limits.min_strength_mpa == row.mpa);
    CHECK(found->limits.source.confidence == core::Confidence::from_memory);
}
