#include <boardmark/units/unit.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <set>
#include <string>
#include <vector>

using namespace boardmark::units;
using Catch::Matchers::WithinAbs;

namespace {

/// A unit as a published table of definitions gives it. All typed by hand.
struct Definition {
    std::string spelling;
    Dimension dimension;
    double inside; ///< one of the unit, in the dimension's inside unit
    std::string source;
};

// NIST SP 811 (2008) Appendix B.8 prints seven digits and marks exact factors; the digits beyond
// are those of its footnote (1 lb = 0.453 592 37 kg) and of NIST Handbook 44 Appendix C (gallon
// 231 in3, fluid ounce 29.573 529 562 5 mL).
const std::vector<Definition> definitions{
    {"mm", Dimension::length, 1, "SI brochure, prefix milli"},
    {"cm", Dimension::length, 10, "SI brochure, prefix centi"},
    {"m", Dimension::length, 1000, "SI brochure, base unit"},
    {"in", Dimension::length, 25.4, "SP 811 B.8: inch to metre 2.54 E-02, exact"},
    {"ft", Dimension::length, 304.8, "SP 811 B.8: foot to metre 3.048 E-01, exact"},
    {"yd", Dimension::length, 914.4, "SP 811 B.8: yard to metre 9.144 E-01, exact"},
    {"g", Dimension::mass, 0.001, "SI brochure, kilogram"},
    {"kg", Dimension::mass, 1, "SI brochure, base unit"},
    {"t", Dimension::mass, 1000, "SI brochure table 8, tonne"},
    {"lb", Dimension::mass, 0.45359237, "SP 811 B.8 footnote: avoirdupois pound, exact"},
    {"short ton", Dimension::mass, 907.18474, "Handbook 44 App. C: 2000 pounds, exact"},
    {"mL", Dimension::volume, 0.000001, "SI brochure table 8, litre, prefix milli"},
    {"L", Dimension::volume, 0.001, "SI brochure table 8, litre"},
    {"m3", Dimension::volume, 1, "SI brochure"},
    {"fl oz", Dimension::volume, 29.5735295625e-6,
     "Handbook 44 App. C: 29.573 529 562 5 mL, exact"},
    {"gal", Dimension::volume, 3.785411784e-3, "Handbook 44 App. C: 3.785 411 784 L, exact"},
    {"ft3", Dimension::volume, 0.028316846592, "Handbook 44 App. C: 28.316 846 592 L, exact"},
    {"yd3", Dimension::volume, 0.764554857984, "Handbook 44 App. C: 0.764 554 857 984 m3, exact"},
    {"cy", Dimension::volume, 0.764554857984, "trade: cubic yard"},
    {"psi", Dimension::stress, 0.00689475729316836, "SP 811 B.8: 6.894 757 E+03 Pa; lb g / in2"},
    {"MPa", Dimension::stress, 1, "SI brochure"},
    {"N/mm2", Dimension::stress, 1, "SI brochure: 1 N/mm2 = 1 MPa"},
    {"kg/m3", Dimension::mass_per_volume, 1, "SI brochure"},
    {"lb/ft3", Dimension::mass_per_volume, 16.0184633739601, "SP 811 B.8: 1.601 846 E+01 kg/m3"},
    {"pcf", Dimension::mass_per_volume, 16.0184633739601, "trade: pound per cubic foot"},
    {"lb/yd3", Dimension::mass_per_volume, 0.593276421257783, "SP 811 B.8: 5.932 764 E-01 kg/m3"},
    {"pcy", Dimension::mass_per_volume, 0.593276421257783, "trade: pound per cubic yard"},
    {"%", Dimension::percentage, 1, "SI brochure 5.4.7"},
    {"min", Dimension::time, 0.000694444444444444, "SI brochure table 8: 1 d = 1440 min"},
    {"h", Dimension::time, 0.0416666666666667, "SI brochure table 8: 1 d = 24 h"},
    {"d", Dimension::time, 1, "SI brochure table 8"},
    {"months", Dimension::time, 30.4375, "365.25 d / 12"},
    {"mL/100 kg", Dimension::dose, 1e-8, "1e-6 m3 / 100 kg"},
    {"fl oz/cwt", Dimension::dose, 6.51984722814010e-7,
     "Handbook 44 App. C: 29.573 529 562 5 mL / 45.359 237 kg"},
    {"kg/kg", Dimension::mass_ratio, 1, "SI brochure"},
    {"kg/t", Dimension::mass_ratio, 0.001, "SI brochure"},
    {"psf", Dimension::stress, 0.0000478802589803358, "SP 811 B.8: 4.788 026 E+01 Pa; lb g / ft2"},
    {"kPa", Dimension::stress, 0.001, "SI brochure, prefix kilo"},
    {"kN/m2", Dimension::stress, 0.001, "SI brochure: 1 Pa = 1 N/m2"},
    {"m2", Dimension::area, 1, "SI brochure"},
    {"mm2", Dimension::area, 0.000001, "SI brochure, prefix milli"},
    {"in2", Dimension::area, 0.00064516, "SP 811 B.8: square inch 6.4516 E-04 m2, exact"},
    {"ft2", Dimension::area, 0.09290304, "SP 811 B.8: square foot 9.290 304 E-02 m2, exact"},
    {"N", Dimension::force, 0.001, "SI brochure"},
    {"kN", Dimension::force, 1, "SI brochure, prefix kilo"},
    {"lbf", Dimension::force, 0.0044482216152605, "SP 811 B.8: 4.448 222 E+00 N; lb g, exact"},
    {"kip", Dimension::force, 4.4482216152605, "SP 811 B.8: kip (1 kip = 1000 lbf)"},
    {"m/h", Dimension::speed, 0.001, "SI brochure table 8, hour"},
    {"km/h", Dimension::speed, 1, "SI brochure table 8: 1 h = 3600 s"},
    {"m/s", Dimension::speed, 3.6, "SI brochure table 8: 1 h = 3600 s"},
    {"ft/h", Dimension::speed, 0.0003048, "SP 811 B.8: foot per hour; foot 0.3048 m, exact"},
    {"mph", Dimension::speed, 1.609344, "SP 811 B.8: mile per hour to km/h 1.609 344, exact"},
    {"m3/h", Dimension::volume_rate, 1, "SI brochure table 8, hour"},
    {"yd3/h", Dimension::volume_rate, 0.764554857984, "Handbook 44 App. C: cubic yard, exact"},
    {"deg", Dimension::angle, 1, "SI brochure table 8, degree; kept as it is written"},
};

} // namespace

TEST_CASE("each unit has the size of its definition") {
    const Definition row = GENERATE(from_range(definitions));
    INFO(row.spelling << ": " << row.source);
    const Unit* found = find_unit(row.spelling);
    REQUIRE(found);
    CHECK(found->dimension == row.dimension);
    // Fifteen digits are typed above: half of the last is worth up to 5e-15 of the whole.
    CHECK_THAT(found->to_inside(1) / row.inside, WithinAbs(1, 5e-15));
    CHECK(found->to_inside(0) == 0);
}

TEST_CASE("seven digits of NIST SP 811 Appendix B.8 as they are printed") {
    // inside units: mm, kg, m3, MPa, kg/m3, kN, m2; the last printed digit is worth `digit`
    const auto [spelling, printed, digit] = GENERATE(table<std::string, double, double>({
        {"lb", 4.535924e-01, 1e-07},
        {"short ton", 9.071847e+02, 1e-04},
        {"fl oz", 2.957353e-05, 1e-11},
        {"gal", 3.785412e-03, 1e-09},
        {"ft3", 2.831685e-02, 1e-08},
        {"yd3", 7.645549e-01, 1e-07},
        {"psi", 6.894757e-03, 1e-09},
        {"lb/ft3", 1.601846e+01, 1e-05},
        {"lb/yd3", 5.932764e-01, 1e-07},
        {"psf", 4.788026e-05, 1e-11},
        {"lbf", 4.448222e-03, 1e-09},
        {"kip", 4.448222e+00, 1e-06},
        {"ft2", 9.290304e-02, 1e-08},
    }));
    INFO(spelling);
    CHECK_THAT(unit(spelling).to_inside(1), WithinAbs(printed, 0.5 * digit));
}

TEST_CASE("no unit is read that is not defined in this list and none twice") {
    std::set<std::string> defined{"degC", "degF"}; // tested below: they have an offset
    for (const Definition& row : definitions) {
        defined.insert(row.spelling);
    }
    std::set<std::string> read;
    for (const Unit& known : all_units()) {
        INFO(known.spelling);
        CHECK(read.emplace(known.spelling).second);
        CHECK(defined.contains(std::string{known.spelling}));
        CHECK_FALSE(known.source.empty());
    }
    CHECK(read == defined);
}

TEST_CASE("temperatures in degrees Celsius") {
    const auto [fahrenheit, celsius, where] = GENERATE(table<double, double, std::string>({
        {32, 0, "ice point, SP 811 B.8: (F - 32) / 1.8"},
        {212, 100, "steam point"},
        {-40, -40, "where both scales meet"},
        {68, 20, "laboratory"},
        {50, 10, "cold-weather limit of placing"},
        {95, 35, "hot-weather limit of placing"},
        {0, -17.7777777777778, "zero of the scale"},
    }));
    INFO(where);
    CHECK_THAT(unit("degF").to_inside(fahrenheit), WithinAbs(celsius, 1e-13));
    CHECK_THAT(unit("degF").from_inside(celsius), WithinAbs(fahrenheit, 1e-12));
    CHECK(unit("degC").to_inside(celsius) == celsius);
}

TEST_CASE("an amount comes back from the inside unit") {
    const double amount = GENERATE(1e-6, 0.1, 1.0, 3.75, 4500.0, 1e6);
    for (const Unit& known : all_units()) {
        INFO(amount << " " << known.spelling);
        CHECK_THAT(known.from_inside(known.to_inside(amount)),
                   WithinAbs(amount, 1e-13 + 1e-14 * amount));
    }
}

TEST_CASE("relations that the trade takes for granted") {
    struct Relation {
        double amount;
        std::string from;
        double equals;
        std::string to;
    };
    const Relation row = GENERATE(
        Relation{1, "yd3", 27, "ft3"}, Relation{1, "gal", 128, "fl oz"},
        Relation{1, "lb/ft3", 27, "lb/yd3"}, Relation{1, "short ton", 2000, "lb"},
        Relation{1, "yd", 36, "in"}, Relation{12, "in", 1, "ft"}, Relation{1, "m3", 1000, "L"},
        Relation{1, "L", 1000, "mL"}, Relation{1, "t", 1000, "kg"}, Relation{1, "h", 60, "min"},
        Relation{12, "months", 365.25, "d"}, Relation{1, "cy", 1, "yd3"},
        Relation{1, "pcf", 1, "lb/ft3"}, Relation{1, "pcy", 1, "lb/yd3"},
        Relation{1, "psi", 144, "psf"}, Relation{1, "ft2", 144, "in2"},
        Relation{1, "kip", 1000, "lbf"}, Relation{1, "mph", 5280, "ft/h"},
        Relation{1, "MPa", 1000, "kPa"});
    INFO(row.amount << " " << row.from << " in " << row.to);
    REQUIRE(unit(row.from).dimension == unit(row.to).dimension);
    CHECK_THAT(unit(row.to).from_inside(unit(row.from).to_inside(row.amount)),
               WithinAbs(row.equals, 1e-12 * row.equals));
}

TEST_CASE("spellings that are not units here") {
    const std::string spelling =
        GENERATE(as<std::string>{}, "", " ", "PSI", "Psi", "ksi", "Pa", "KPa", "inch", "inches",
                 "IN", "lbs", "LB", "ton", "tons", "oz", "gallon", "US gal", "ml", "l", "M3",
                 "cu yd", "yd^3", "lb/cy", "lb/in2", "F", "C", "deg F", "fl oz / cwt", "fl  oz",
                 "oz/cwt", "floz", "percent", "day", "month", "psi ", " psi", "mm\n");
    INFO("'" << spelling << "'");
    CHECK(find_unit(spelling) == nullptr);
}

TEST_CASE("each dimension says its name and its inside unit is read with factor one") {
    struct Row {
        Dimension dimension;
        std::string words;
        std::string inside;
    };
    const Row row = GENERATE(
        Row{Dimension::length, "a length (in, ft, mm, m)", "mm"},
        Row{Dimension::mass, "a mass (lb, kg)", "kg"},
        Row{Dimension::volume, "a volume (yd3, ft3, gal, fl oz, m3, L)", "m3"},
        Row{Dimension::stress, "a stress (psi, MPa)", "MPa"},
        Row{Dimension::mass_per_volume, "a mass per volume (lb/ft3, lb/yd3, kg/m3)", "kg/m3"},
        Row{Dimension::percentage, "a percentage (%)", "%"},
        Row{Dimension::time, "a time (min, h, d, months)", "d"},
        Row{Dimension::temperature, "a temperature (degF, degC)", "degC"},
        Row{Dimension::mass_ratio, "a mass ratio (kg/kg, kg/t)", "kg/kg"},
        Row{Dimension::area, "an area (ft2, m2)", "m2"},
        Row{Dimension::force, "a force (lbf, kip, kN)", "kN"},
        Row{Dimension::speed, "a speed (ft/h, m/h, mph, km/h, m/s)", "km/h"},
        Row{Dimension::volume_rate, "a volume per time (yd3/h, m3/h)", "m3/h"},
        Row{Dimension::angle, "an angle (deg)", "deg"});
    CHECK(describe(row.dimension) == row.words);
    CHECK(unit(row.inside).dimension == row.dimension);
    CHECK(unit(row.inside).to_inside(7) == 7);
}

TEST_CASE("the examples in a dimension's words are units of that dimension") {
    for (const Unit& known : all_units()) {
        const std::string words{describe(known.dimension)};
        const std::size_t open = words.find('(');
        REQUIRE(open != std::string::npos);
        REQUIRE(words.ends_with(')'));
        const std::string list = words.substr(open + 1, words.size() - open - 2);
        for (std::size_t at = 0; at < list.size();) {
            const std::size_t end = std::min(list.find(", ", at), list.size());
            const std::string example = list.substr(at, end - at);
            INFO(words << ": " << example);
            REQUIRE(find_unit(example));
            CHECK(find_unit(example)->dimension == known.dimension);
            at = end + 2;
        }
    }
}
