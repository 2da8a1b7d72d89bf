// `bounds` of a mix file: what may be varied, between which values, and what is said of wrong ones.

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace boardmark;
using boardmark::test::changed;
using Catch::Matchers::WithinAbs;

namespace {

/// The sound mix with two binders and a dose of its reducer, and bounds as a flow mapping without
/// its braces.
std::string bounded(const std::string& pairs) {
    const std::string two = changed(test::with_dose("8 fl oz/cwt"), "binder: {cement: 100 %}",
                                    "binder: {cement: 70 %, slag: 30 %}");
    return changed(two, "  cement: {kind: portland cement}\n",
                   "  cement: {kind: portland cement}\n  slag: {kind: slag cement}\n") +
           "bounds: {" + pairs + "}\n";
}

} // namespace

TEST_CASE("bounds arrive in the inside unit, a dose with its basis") {
    const double fl_oz_cwt = 29.5735295625e-6 / 45.359237;
    const double lb_yd3 = 0.45359237 / 0.764554857984;
    struct Row {
        const char* pair;
        core::Variable variable;
        double low;
        double high;
    };
    for (const Row& row : {
             Row{"w_cm: 0.36 to 0.45", {core::Varied::w_cm}, 0.36, 0.45},
             Row{"water: 260 lb/yd3 to 300 lb/yd3",
                 {core::Varied::water},
                 260 * lb_yd3,
                 300 * lb_yd3},
             Row{"binder: 300 kg/m3 to 400 kg/m3", {core::Varied::binder}, 300, 400},
             Row{"air: 1 % to 3 %", {core::Varied::air}, 1, 3},
             Row{"coarse_volume: 0.5 to 0.7", {core::Varied::coarse_volume}, 0.5, 0.7},
             Row{"coarse_adjustment: -10 % to 10 %", {core::Varied::coarse_adjustment}, -10, 10},
             Row{"fine_share: 35 % to 45 %", {core::Varied::fine_share}, 35, 45},
             Row{"share.slag: 0 % to 50 %", {core::Varied::share, "slag"}, 0, 50},
             Row{"dose.reducer: 0 fl oz/cwt to 12 fl oz/cwt",
                 {core::Varied::dose, "reducer"},
                 0,
                 12 * fl_oz_cwt},
             Row{"dose.reducer: 0.5 % to 1 %",
                 {core::Varied::dose, "reducer", core::DoseBasis::percent},
                 0.5,
                 1},
         }) {
        INFO(row.pair);
        const auto reading = input::read_mix(bounded(row.pair), "test.yaml",
                                             test::read_options(input::Purpose::proportion));
        REQUIRE(reading.mix);
        REQUIRE(reading.bounds.size() == 1);
        const core::VariableBound& bound = reading.bounds.front();
        CHECK(bound.variable == row.variable);
        CHECK_THAT(bound.low, WithinAbs(row.low, 1e-9));
        CHECK_THAT(bound.high, WithinAbs(row.high, 1e-9));
        CHECK(bound.stated);
    }
}

TEST_CASE("bounds that are refused, and where") {
    // Ranges are those of the keys under `selections`; a share is 0 to 100 %.
    struct Row {
        const char* pair;
        const char* fault; ///< behind "bounds."
        const char* advice;
    };
    const char* figure = "check the figure and its unit";
    const char* example = "write for example 'w_cm: 0.36 to 0.45'";
    const char* unit = "write it in the unit that the file has for it";
    const char* names = "take the names and keys of this file";
    for (const Row& row : {
             Row{"w_cm: 0.14 to 0.45", "w_cm: '0.14' is out of range", figure},
             Row{"w_cm: 0.36 to 1.6", "w_cm: '1.6' is out of range", figure},
             Row{"water: 59 kg/m3 to 200 kg/m3", "water: '59 kg/m3' is out of range", figure},
             Row{"water: 150 kg/m3 to 401 kg/m3", "water: '401 kg/m3' is out of range", figure},
             Row{"binder: 49 kg/m3 to 400 kg/m3", "binder: '49 kg/m3' is out of range", figure},
             Row{"air: 1 % to 21 %", "air: '21 %' is out of range", figure},
             Row{"coarse_adjustment: -11 % to 0 %", "coarse_adjustment: '-11 %' is out of range",
                 figure},
             Row{"share.slag: 0 % to 101 %", "share.slag: '101 %' is out of range", figure},
             Row{"w_cm: 0.4x to 0.5", "w_cm: 'x' follows the number; this value has no unit",
                 example},
             Row{"w_cm: low to 0.5", "w_cm: 'low' does not begin with a number", example},
             Row{"air: 1 % to much", "air: 'much' does not begin with a number", example},
             Row{"water: 260 lb/yd to 300 lb/yd3", "water: 'lb/yd' is not a unit known here",
                 example},
             Row{"binder: 300 KG/M3 to 400 kg/m3", "binder: 'KG/M3' is not a unit known here",
                 "write '300 kg/m3' (units are case-sensitive)"},
             Row{"water: 30 % to 40 %", "water: '30 %' is a percentage (%)", unit},
             Row{"binder: 300 kg to 400 kg", "binder: '300 kg' is a mass (lb, kg)", unit},
             Row{"air: 1 fl oz/cwt to 2 fl oz/cwt",
                 "air: '1 fl oz/cwt' is a dose (fl oz/cwt, mL/100 kg)", unit},
             Row{"dose.reducer: 1 lb to 2 lb", "dose.reducer: '1 lb' is a mass (lb, kg)", unit},
             Row{"air: 3 % to 3 %", "air: the first value is not the lower one", example},
             Row{"dose.retarder: 0 % to 1 %",
                 "dose.retarder: no admixture of the mixture is called retarder", names},
         }) {
        INFO(row.pair);
        const auto reading = input::read_mix(bounded(row.pair), "test.yaml",
                                             test::read_options(input::Purpose::proportion));
        CHECK_FALSE(reading.mix);
        REQUIRE(reading.diagnostics.size() == 1);
        CHECK(reading.diagnostics.front().message == "bounds." + std::string{row.fault});
        CHECK(reading.diagnostics.front().advice == row.advice);
    }
}

TEST_CASE("more figures than a search varies are refused, and submitted amounts are not varied") {
    const auto of_three_binders = [](const std::string& pairs) {
        const std::string shares = changed(bounded(pairs), "cement: 70 %, slag: 30 %",
                                           "cement: 65 %, slag: 30 %, fume: 5 %");
        return changed(shares, "  slag: {kind: slag cement}\n",
                       "  slag: {kind: slag cement}\n  fume: {kind: silica fume}\n");
    };
    const std::string eight = "w_cm: 0.36 to 0.45, water: 260 lb/yd3 to 300 lb/yd3, "
                              "air: 1 % to 3 %, coarse_volume: 0.5 to 0.7, "
                              "share.slag: 0 % to 50 %, share.cement: 50 % to 100 %, "
                              "share.fume: 0 % to 10 %, "
                              "dose.reducer: 0 fl oz/cwt to 12 fl oz/cwt";
    CHECK(test::faults_in(of_three_binders(eight)).empty());
    const auto faults = test::faults_in(of_three_binders(eight + ", fine_share: 35 % to 45 %"));
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().ends_with("bounds: more than 8 figures"));
    CHECK(test::faults_in(test::submitted_mix + "bounds: {w_cm: 0.36 to 0.45}\n",
                          input::Purpose::check) ==
          std::vector<std::string>{"17:1 'bounds' do not go with submitted 'proportions'"});
}
