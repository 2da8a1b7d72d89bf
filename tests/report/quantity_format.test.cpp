#include "report/writing/quantity_format.hpp"

#include <boardmark/report/writing/words.hpp>

#include "report/writing/measure_units.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace boardmark;
using core::Measure;
using core::UnitSystem;
using report::shown;

namespace {

/// A value in SI and how each system writes it.
struct Row {
    double value;
    Measure measure;
    std::string us;
    std::string si;
};

} // namespace

TEST_CASE("each measure as its trade writes it") {
    const Row row = GENERATE(
        // w/cm and bulk volume: two decimals, a third where it says something
        Row{0.4, Measure::w_cm, "0.40", "0.40"}, Row{0.45, Measure::w_cm, "0.45", "0.45"},
        Row{0.42767, Measure::w_cm, "0.428", "0.428"}, Row{0.3996, Measure::w_cm, "0.40", "0.40"},
        Row{1.2, Measure::w_cm, "1.20", "1.20"}, Row{0.62, Measure::bulk_volume, "0.62", "0.62"},
        Row{0.625, Measure::bulk_volume, "0.625", "0.625"}, Row{0.2, Measure::ratio, "0.2", "0.2"},
        Row{1.112, Measure::ratio, "1.112", "1.112"},
        // percent to 0.1 point, chloride to 0.01
        Row{6, Measure::percent, "6.0 %", "6.0 %"},
        Row{16.04, Measure::percent, "16.0 %", "16.0 %"},
        Row{0.35, Measure::percent, "0.4 %", "0.4 %"}, // a half goes up
        Row{0.15, Measure::chloride, "0.15 %", "0.15 %"},
        Row{0.0449, Measure::chloride, "0.04 %", "0.04 %"},
        Row{0.15, Measure::sulfate, "0.15 %", "0.15 %"},
        // strength to 10 psi and 0.1 MPa; 5000 psi = 34.4737864658 MPa
        Row{34.4737864658418, Measure::strength, "5000 psi", "34.5 MPa"},
        Row{39.6011471902852, Measure::strength, "5740 psi", "39.6 MPa"}, // 5743.66 psi
        Row{31, Measure::strength, "4500 psi", "31.0 MPa"},               // 4496.2 psi
        // lengths: a fraction where the length is one, decimals where it is none
        Row{101.6, Measure::slump, "4 in", "101.6 mm"},
        Row{177.8, Measure::slump, "7 in", "178 mm"},
        Row{478.97, Measure::length, "18 7/8 in", "479 mm"}, // 18.857 in
        Row{40.64, Measure::length, "1.60 in", "40.6 mm"},   // a limit below 6 in is not rounded up
        Row{1.16, Measure::evaporation, "0.24 lb/ft2/h", "1.16 kg/m2/h"}, // limits 0.20 and 1.0
        Row{2.4, Measure::alkali, "4.0 lb/yd3", "2.4 kg/m3"},
        Row{38.1, Measure::slump, "1 1/2 in", "38.1 mm"},
        Row{75, Measure::slump, "2.953 in", "75 mm"}, // 75 / 25.4 = 2.9528
        Row{19.05, Measure::aggregate_size, "3/4 in", "19.1 mm"},
        Row{9.525, Measure::aggregate_size, "3/8 in", "9.5 mm"},
        Row{37.5, Measure::aggregate_size, "1.476 in", "37.5 mm"}, // 1.47638 in
        Row{254, Measure::length, "10 in", "254 mm"}, Row{0, Measure::length, "0 in", "0 mm"},
        // amounts to 1 lb/yd3 (0.593276421 kg/m3) and 1 kg/m3
        Row{151.997419126, Measure::concentration, "256 lb/yd3", "152 kg/m3"}, // 256.2
        Row{180.949308484, Measure::concentration, "305 lb/yd3", "181 kg/m3"},
        Row{379.993547816, Measure::concentration, "641 lb/yd3", "380 kg/m3"}, // 640.5
        // densities to 0.1 lb/ft3 (16.018463374 kg/m3) and 1 kg/m3
        Row{2299.91845147, Measure::fresh_density, "143.6 lb/ft3", "2300 kg/m3"}, // 143.58
        Row{1601.8463374, Measure::bulk_density, "100.0 lb/ft3", "1602 kg/m3"},
        // forms: 1 psf = 0.0478802590 kPa, 1 lb = 4.4482216153 N, 1 ft = 0.3048 m (NIST SP 811)
        Row{38.5197, Measure::pressure, "805 psf", "38.5 kPa"}, // 804.5 psf
        Row{14.3143, Measure::force, "3218 lb", "14.31 kN"},
        Row{1.2192, Measure::rate_of_rise, "4.0 ft/h", "1.22 m/h"},
        Row{0.37161216, Measure::area, "4.0 ft2", "0.37 m2"},
        Row{3.048, Measure::line_length, "10.00 ft", "3.05 m"},
        Row{2.64, Measure::relative_density, "2.64", "2.64"},
        Row{2.675, Measure::relative_density, "2.68", "2.68"}, // stored below the half
        Row{2.8, Measure::fineness_modulus, "2.80", "2.80"},
        // 27 ft3 of 1 yd3, and m3 of 1 m3
        Row{0.29144686, Measure::absolute_volume, "7.87 ft3", "0.291 m3"}, // 7.8691
        Row{0.06, Measure::absolute_volume, "1.62 ft3", "0.060 m3"},
        Row{18, Measure::count, "18", "18"},
        // ages in days to 120 d, then in months of 30.4375 d
        Row{28, Measure::age, "28 d", "28 d"}, Row{120, Measure::age, "120 d", "120 d"},
        Row{273.9375, Measure::age, "9 months", "9 months"},
        Row{730.5, Measure::age, "24 months", "24 months"},
        // volumes: 1 ft3 = 0.028316846592 m3
        Row{0.056633693184, Measure::volume, "2.00 ft3", "0.057 m3"},
        Row{0.76, Measure::volume, "26.84 ft3", "0.760 m3"},          // 26.839
        Row{0.764554857984, Measure::volume, "1.00 yd3", "0.765 m3"}, // from 27 ft3 on
        Row{2, Measure::volume, "2.62 yd3", "2.000 m3"},              // 2.6159
        // scales show more digits on small batches: 1 lb = 0.45359237 kg
        Row{5.397749203, Measure::mass, "11.90 lb", "5.40 kg"},
        Row{57.379434805, Measure::mass, "126.5 lb", "57.38 kg"},
        Row{500, Measure::mass, "1102 lb", "500.0 kg"},  // 1102.31 lb
        Row{2300, Measure::mass, "5071 lb", "2300 kg"}); // 5070.63 lb
    INFO(row.value << " of measure " << static_cast<int>(row.measure));
    CHECK(shown({row.value, row.measure}, UnitSystem::us) == row.us);
    CHECK(shown({row.value, row.measure}, UnitSystem::si) == row.si);
}

TEST_CASE("more digits where a reader must tell two values apart") {
    struct Finer {
        double value;
        Measure measure;
        int more;
        std::string us;
        std::string si;
    };
    const Finer row =
        GENERATE(Finer{0.4504, Measure::w_cm, 1, "0.4504", "0.4504"},
                 Finer{0.45, Measure::w_cm, 1, "0.45", "0.45"},
                 Finer{7.54, Measure::percent, 1, "7.54 %", "7.54 %"},
                 Finer{7.5, Measure::percent, 1, "7.50 %", "7.50 %"},
                 Finer{0.1503, Measure::chloride, 2, "0.1503 %", "0.1503 %"},
                 Finer{31, Measure::strength, 1, "4496 psi", "31.00 MPa"}, // 4496.17 psi
                 Finer{31, Measure::strength, 2, "4496.2 psi", "31.000 MPa"},
                 Finer{19.05, Measure::aggregate_size, 1, "0.75 in", "19.05 mm"},
                 Finer{19.0, Measure::aggregate_size, 1, "0.748 in", "19.00 mm"}, // 0.74803 in
                 Finer{379.993547816, Measure::concentration, 1, "640.5 lb/yd3", "380.0 kg/m3"},
                 Finer{1.0004, Measure::absolute_volume, 1, "27.011 ft3", "1.0004 m3"}, // 27.0108
                 Finer{2299.91845147, Measure::fresh_density, 1, "143.58 lb/ft3", "2299.9 kg/m3"});
    INFO(row.value << " of measure " << static_cast<int>(row.measure));
    CHECK(shown({row.value, row.measure}, UnitSystem::us, row.more) == row.us);
    CHECK(shown({row.value, row.measure}, UnitSystem::si, row.more) == row.si);
}

TEST_CASE("a value rounded up still reads below a limit that it keeps to") {
    // 27.12 kPa, up, is 27.2; 27.14 kPa, to the nearest, 27.1.
    const core::Phrase phrase{
        "{value} on a form designed for {limit}",
        {{"value", core::Quantity{27.12, Measure::pressure, core::Keep::at_least}},
         {"limit", core::Quantity{27.14, Measure::pressure}}}};
    CHECK(report::words(phrase, UnitSystem::si) == "27.12 kPa on a form designed for 27.14 kPa");
}

TEST_CASE("a bound that is kept to is rounded to its safe side") {
    using core::Keep;
    const auto us = [](double value, Measure measure, Keep keep) {
        return shown({value, measure, keep}, UnitSystem::us);
    };
    CHECK(us(177.0 / 60, Measure::duration, Keep::at_most) == "2.9 h"); // 2.95 h
    CHECK(us(177.0 / 60, Measure::duration, Keep::at_least) == "3 h");
    CHECK(us(102.5 / 60, Measure::duration, Keep::at_most) == "102 min");
    CHECK(us(18, Measure::temperature, Keep::at_least) == "65 degF"); // 64.4
    CHECK(us(18, Measure::temperature, Keep::nearest) == "64 degF");
    CHECK(us(4.06 * 0.3048, Measure::rate_of_rise, Keep::at_most) == "4.0 ft/h");
    CHECK(us(911.3 * 0.0478802590, Measure::pressure, Keep::at_least) == "912 psf");
    // What is a whole step stays one, whatever the conversion leaves of it.
    CHECK(us(4 * 0.3048, Measure::rate_of_rise, Keep::at_most) == "4.0 ft/h");
    CHECK(us((65.0 - 32) / 1.8, Measure::temperature, Keep::at_least) == "65 degF");
    CHECK(us(1.5, Measure::duration, Keep::at_least) == "90 min");
}

TEST_CASE("what rounds to nothing has no minus sign") {
    const auto [value, measure, expected] = GENERATE(table<double, Measure, std::string>({
        {-0.04, Measure::percent, "0.0 %"},
        {-0.0001, Measure::w_cm, "0.00"},
        {-0.2, Measure::concentration, "0 kg/m3"},
        {-0.001, Measure::mass, "0.00 kg"},
        {-0.0001, Measure::absolute_volume, "0.000 m3"},
    }));
    INFO(value);
    CHECK(shown({value, measure}, UnitSystem::si) == expected);
}

TEST_CASE("a mass keeps as many digits below and above a limit of the scale") {
    // Below 100 two decimals, below 1000 one: what rounds up to 100 is written like 100.
    CHECK(shown({100, Measure::mass}, UnitSystem::si) == "100.0 kg");
    CHECK(shown({99.994, Measure::mass}, UnitSystem::si) == "99.99 kg");
    CHECK(shown({1000, Measure::mass}, UnitSystem::si) == "1000 kg");
    CHECK(shown({999.94, Measure::mass}, UnitSystem::si) == "999.9 kg");
}

TEST_CASE("plain numbers with a fixed count of digits") {
    const auto [value, decimals, expected] = GENERATE(table<double, int, std::string>({
        {0, 0, "0"},
        {2.5, 0, "3"},
        {-2.5, 0, "-3"},
        {51.25, 1, "51.3"},
        {2.675, 2, "2.68"},
        {1.005, 2, "1.01"},
        {3877.02, 0, "3877"},
        {0.12345, 4, "0.1235"},
        {100, 2, "100.00"},
    }));
    CHECK(report::fixed(value, decimals) == expected);
}

TEST_CASE("the SI unit of each measure as JSON names it") {
    const auto [measure, unit] = GENERATE(table<Measure, std::string>({
        {Measure::w_cm, "1"},
        {Measure::ratio, "1"},
        {Measure::percent, "%"},
        {Measure::chloride, "%"},
        {Measure::sulfate, "%"},
        {Measure::strength, "MPa"},
        {Measure::slump, "mm"},
        {Measure::aggregate_size, "mm"},
        {Measure::length, "mm"},
        {Measure::concentration, "kg/m3"},
        {Measure::fresh_density, "kg/m3"},
        {Measure::bulk_density, "kg/m3"},
        {Measure::relative_density, "1"},
        {Measure::fineness_modulus, "1"},
        {Measure::bulk_volume, "1"},
        {Measure::count, "1"},
        {Measure::age, "d"},
        {Measure::volume, "m3"},
        {Measure::mass, "kg"},
        {Measure::pressure, "kPa"},
        {Measure::force, "kN"},
        {Measure::rate_of_rise, "m/h"},
        {Measure::area, "m2"},
        {Measure::line_length, "m"},
    }));
    CHECK(report::si_unit(measure) == unit);
}
