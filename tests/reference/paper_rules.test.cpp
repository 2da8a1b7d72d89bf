// Ages of papers and figures of the papers' tables, as printed in the sources that the tables name.

#include <boardmark/reference/paper_rules.hpp>

#include <catch2/catch.hpp>

using namespace boardmark;
using Catch::Matchers::WithinAbs;

TEST_CASE("papers whose age is known are read or marked from memory") {
    const core::PaperRules rules = reference::paper_rules(core::UnitSystem::us);
    // New York City Building Code 1905.3.3: not older than 24 months (read)
    CHECK(rules.ages.at(core::Paper::trial_batches).age.months == 24);
    CHECK(rules.ages.at(core::Paper::records).age.months == 24);
    CHECK(rules.ages.at(core::Paper::records).source.confidence == core::Confidence::read);
    // UFGS 03300N: fly ash and slag not more than 6 months (read)
    CHECK(rules.ages.at(core::Paper::supplementary_report).age.months == 6);
    // from memory: 90 days, 12 and 24 months
    CHECK(rules.ages.at(core::Paper::mill_certificate).age.days == 90);
    CHECK(rules.ages.at(core::Paper::mill_certificate).source.confidence ==
          core::Confidence::from_memory);
    CHECK(rules.ages.at(core::Paper::aggregate_report).age.months == 12);
    CHECK(rules.ages.at(core::Paper::reactivity_report).age.months == 24);
    CHECK(!rules.ages.contains(core::Paper::admixture_certificate));
}

TEST_CASE("figures of the papers in both systems") {
    struct Row {
        const char* name;
        double us;
        double si;
        double within;
    };
    // ACI 318-19 26.12.2.1; UFGS 03300N, 03301A, 07190; ASTM C31, C172; ACI 311.5
    const auto row = GENERATE(values<Row>({
        {"volume_for_a_test", 114.683, 110, 0.001}, // 150 yd3
        {"area_for_a_test", 464.515, 460, 0.001},   // 5000 ft2
        {"waiver_below", 38.228, 38, 0.001},        // 50 yd3
        {"least_tests", 5, 5, 0},
        {"stricter_volume", 76.455, 76, 0.001}, // 100 yd3
        {"initial_curing", 2, 2, 1e-12},
        {"initial_low", 15.556, 16, 0.001},  // 60 degF
        {"initial_high", 26.667, 27, 0.001}, // 80 degF
        {"patch_within", 2, 2, 1e-12},       // 48 h
        {"hole_patched_from", 12.7, 13, 1e-9},
        {"patch_judged_after", 7, 7, 1e-12},
        {"sealer_moisture", 15, 15, 0},
        {"mix_ahead", 21, 21, 1e-12},
    }));
    INFO(row.name);
    CHECK_THAT(reference::paper_rules(core::UnitSystem::us)(row.name).value,
               WithinAbs(row.us, row.within));
    CHECK_THAT(reference::paper_rules(core::UnitSystem::si)(row.name).value,
               WithinAbs(row.si, row.within));
}
