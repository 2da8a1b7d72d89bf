// A second opinion on every factor: UDUNITS-2, a general library of units with its own tables.

#include <boardmark/units/unit.hpp>

#include <catch2/catch.hpp>
#include <udunits2.h>

#include <cmath>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

using namespace boardmark::units;

namespace {

struct Free {
    void operator()(ut_system* system) const { ut_free_system(system); }
    void operator()(ut_unit* unit) const { ut_free(unit); }
    void operator()(cv_converter* converter) const { cv_free(converter); }
};

/// How a spelling of the whitelist is said to UDUNITS-2, and how closely the two must agree.
struct Twin {
    std::string spelling;
    std::string udunits;
    double within = 1e-9;
};

// UDUNITS-2 2.2.28 defines the US gallon as 3.785412 L, rounded; by definition it is 231 in3 =
// 3.785411784 L: 5.71e-8 apart. Its fluid ounce is a part of that gallon.
constexpr double its_gallon_is_rounded = 5.8e-8;

// Its own symbols mean other things here: `gal` is an acceleration, `fl oz` femtolitre times ounce,
// `ft3` and `yd3` are read as cubes. So names are used.
const std::vector<Twin> twins{
    {"mm", "millimeter"},
    {"cm", "centimeter"},
    {"m", "meter"},
    {"in", "international_inch"},
    {"ft", "international_foot"},
    {"yd", "international_yard"},
    {"g", "gram"},
    {"kg", "kilogram"},
    {"t", "tonne"},
    {"lb", "avoirdupois_pound"},
    {"short ton", "short_ton"},
    {"mL", "milliliter"},
    {"L", "liter"},
    {"m3", "meter^3"},
    {"fl oz", "US_fluid_ounce", its_gallon_is_rounded},
    {"gal", "US_liquid_gallon", its_gallon_is_rounded},
    {"ft3", "international_foot^3"},
    {"yd3", "international_yard^3"},
    {"psi", "psi"},
    {"MPa", "megapascal"},
    {"N/mm2", "newton/millimeter^2"},
    {"kg/m3", "kilogram/meter^3"},
    {"lb/ft3", "avoirdupois_pound/international_foot^3"},
    {"lb/yd3", "avoirdupois_pound/international_yard^3"},
    {"%", "percent"},
    {"min", "minute"},
    {"h", "hour"},
    {"d", "day"},
    {"degC", "degree_celsius"},
    {"degF", "degree_fahrenheit"},
    {"mL/100 kg", "milliliter/(100 kilogram)"},
    {"fl oz/cwt", "US_fluid_ounce/(100 avoirdupois_pound)", its_gallon_is_rounded},
    {"kg/kg", "kilogram/kilogram"},
    {"kg/t", "kilogram/tonne"},
    {"psf", "pound_force/international_foot^2"},
    {"kPa", "kilopascal"},
    {"kN/m2", "kilonewton/meter^2"},
    {"m2", "meter^2"},
    {"mm2", "millimeter^2"},
    {"in2", "international_inch^2"},
    {"ft2", "international_foot^2"},
    {"N", "newton"},
    {"kN", "kilonewton"},
    {"lbf", "pound_force"},
    {"kip", "kip"},
    {"m/h", "meter/hour"},
    {"km/h", "kilometer/hour"},
    {"m/s", "meter/second"},
    {"ft/h", "international_foot/hour"},
    {"mph", "international_mile/hour"},
    {"m3/h", "meter^3/hour"},
    {"yd3/h", "international_yard^3/hour"},
    {"deg", "arc_degree"},
};

/// Spellings that UDUNITS-2 cannot say, and why. They are tested by hand among the units.
const std::map<std::string, std::string> inexpressible{
    {"cy", "a short form of the trade; its twin yd3 is compared"},
    {"pcf", "a short form of the trade; its twin lb/ft3 is compared"},
    {"pcy", "a short form of the trade; its twin lb/yd3 is compared"},
    {"months", "its month is a twelfth of the tropical year, 365.242 d; here of 365.25 d"},
};

const std::map<Dimension, std::string> inside_units{
    {Dimension::length, "millimeter"},
    {Dimension::mass, "kilogram"},
    {Dimension::volume, "meter^3"},
    {Dimension::stress, "megapascal"},
    {Dimension::mass_per_volume, "kilogram/meter^3"},
    {Dimension::percentage, "percent"},
    {Dimension::time, "day"},
    {Dimension::temperature, "degree_celsius"},
    {Dimension::dose, "meter^3/kilogram"},
    {Dimension::mass_ratio, "1"},
    {Dimension::area, "meter^2"},
    {Dimension::force, "kilonewton"},
    {Dimension::speed, "kilometer/hour"},
    {Dimension::volume_rate, "meter^3/hour"},
    {Dimension::angle, "arc_degree"}};

class Udunits {
public:
    Udunits() {
        ut_set_error_message_handler(ut_ignore);
        system_.reset(ut_read_xml(nullptr));
        REQUIRE(system_);
    }

    std::unique_ptr<ut_unit, Free> parse(const std::string& text) const {
        return std::unique_ptr<ut_unit, Free>{ut_parse(system_.get(), text.c_str(), UT_ASCII)};
    }

    double convert(double amount, const std::string& from, const std::string& to) const {
        const auto source = parse(from);
        const auto target = parse(to);
        REQUIRE(source);
        REQUIRE(target);
        const std::unique_ptr<cv_converter, Free> converter{
            ut_get_converter(source.get(), target.get())};
        REQUIRE(converter);
        return cv_convert_double(converter.get(), amount);
    }

private:
    std::unique_ptr<ut_system, Free> system_;
};

} // namespace

TEST_CASE("every unit is compared with UDUNITS or said to be beyond it") {
    std::set<std::string> named;
    for (const Twin& twin : twins) {
        CHECK(named.insert(twin.spelling).second);
        CHECK(find_unit(twin.spelling));
    }
    for (const auto& [spelling, why] : inexpressible) {
        INFO(why);
        CHECK(named.insert(spelling).second);
        CHECK(find_unit(spelling));
    }
    for (const Unit& known : all_units()) {
        INFO(known.spelling);
        CHECK(named.contains(std::string{known.spelling}));
    }
}

TEST_CASE("the units agree with UDUNITS at every amount") {
    const Udunits udunits;
    for (const Twin& twin : twins) {
        const Unit& ours = unit(twin.spelling);
        const std::string target = inside_units.at(ours.dimension);
        for (const double amount : {1.0, 0.75, 4500.0, 1e-3, -40.0}) {
            INFO(amount << " " << twin.spelling << " as " << twin.udunits << " in " << target);
            const double theirs = udunits.convert(amount, twin.udunits, target);
            // A temperature's zero is a difference of large numbers: 1e-9 of its scale there.
            const double scale = ours.dimension == Dimension::temperature ? 300 : std::abs(theirs);
            CHECK(std::abs(ours.to_inside(amount) - theirs) <= twin.within * scale);
            const double back = udunits.convert(ours.to_inside(amount), target, twin.udunits);
            CHECK(std::abs(back - amount) <= twin.within * std::max(300.0, std::abs(amount)));
        }
    }
}

TEST_CASE("its rounded gallon is the only reason to be less strict") {
    // 231 in3 said in inches is exact, and agrees like all the others.
    const Udunits udunits;
    const double gallon_m3 = udunits.convert(231, "international_inch^3", "meter^3");
    CHECK(std::abs(unit("gal").to_inside(1) / gallon_m3 - 1) <= 1e-14);
    CHECK(std::abs(unit("fl oz").to_inside(128) / gallon_m3 - 1) <= 1e-14);
    CHECK(std::abs(udunits.convert(1, "US_liquid_gallon", "meter^3") / gallon_m3 - 1) > 1e-8);
}

TEST_CASE("the month of UDUNITS is another one") {
    const Udunits udunits;
    const double theirs = udunits.convert(1, "month", "day"); // a twelfth of 365.242198781 d
    CHECK(std::abs(theirs - 30.4368498984) < 1e-9);
    CHECK(std::abs(unit("months").to_inside(1) - 30.4375) < 1e-12);
}

TEST_CASE("units of different dimensions do not convert there either") {
    const Udunits udunits;
    for (const Twin& one : twins) {
        for (const Twin& other : twins) {
            const Dimension ours = unit(one.spelling).dimension;
            const Dimension theirs = unit(other.spelling).dimension;
            // All are plain numbers there: percent, mass ratio and angle.
            const auto plain = [](Dimension dimension) {
                return dimension == Dimension::percentage || dimension == Dimension::mass_ratio ||
                       dimension == Dimension::angle;
            };
            INFO(one.spelling << " and " << other.spelling);
            const bool convertible = ut_are_convertible(udunits.parse(one.udunits).get(),
                                                        udunits.parse(other.udunits).get()) != 0;
            // A density's reciprocal, the dose, converts too: it knows kg/m3 and m3/kg as inverses.
            const auto inverse = [](Dimension left, Dimension right) {
                return left == Dimension::dose && right == Dimension::mass_per_volume;
            };
            const bool expected = ours == theirs || (plain(ours) && plain(theirs)) ||
                                  inverse(ours, theirs) || inverse(theirs, ours);
            CHECK(convertible == expected);
        }
    }
}
