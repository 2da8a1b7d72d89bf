#include <boardmark/units/quantity.hpp>

#include <catch2/catch.hpp>

#include <string>

using namespace boardmark::units;
using Catch::Matchers::WithinAbs;

// The grammar by example: both lists are the specification.

TEST_CASE("quantities that are read") {
    const auto [text, amount, spelling] = GENERATE(table<std::string, double, std::string>({
        {"4500 psi", 4500, "psi"},
        {"3/4 in", 0.75, "in"},
        {"1 1/2 in", 1.5, "in"},
        {"1-1/2 in", 1.5, "in"},
        {"10-1/2 in", 10.5, "in"},
        {"0.5 %", 0.5, "%"},
        {"6%", 6, "%"},
        {"0.1lb", 0.1, "lb"},
        {"3/4in", 0.75, "in"},
        {"305 lb/yd3", 305, "lb/yd3"},
        {"8 fl oz/cwt", 8, "fl oz/cwt"},
        {"51 fl oz", 51, "fl oz"},
        {"650 mL/100 kg", 650, "mL/100 kg"},
        {"100 lb/ft3", 100, "lb/ft3"},
        {"100 pcf", 100, "pcf"},
        {"560 pcy", 560, "pcy"},
        {"1 cy", 1, "cy"},
        {"2 short ton", 2, "short ton"},
        {"60 degF", 60, "degF"},
        {"-4 degC", -4, "degC"},
        {"-40 degF", -40, "degF"},
        {"28 d", 28, "d"},
        {"9 months", 9, "months"},
        {"35 N/mm2", 35, "N/mm2"},
        {"-5 %", -5, "%"},
        {"+5 %", 5, "%"},
        {".45 MPa", 0.45, "MPa"},
        {"1.5e3 kg/m3", 1500, "kg/m3"},
        {"4500   psi", 4500, "psi"},
        {"0 lb", 0, "lb"},
        {"0.92 kg/kg", 0.92, "kg/kg"},
        {"3 ft 6 in", 3.5, "ft"},
        {"3 ft  4 1/2 in", 3.375, "ft"},
        {"-2 ft 3 in", -2.25, "ft"},
        {"3 yd³", 3, "yd3"},
        {"305 lb/yd³", 305, "lb/yd3"},
        {"20 ft²", 20, "ft2"},
    }));
    INFO(text);
    const auto reading = read_quantity(text);
    REQUIRE(std::holds_alternative<Quantity>(reading));
    const Quantity quantity = std::get<Quantity>(reading);
    CHECK_THAT(quantity.amount, WithinAbs(amount, 1e-12));
    CHECK(quantity.unit->spelling == spelling);
}

TEST_CASE("a quantity in the inside unit") {
    const auto [text, inside] = GENERATE(table<std::string, double>({
        {"1 1/2 in", 38.1},                // 1.5 × 25.4
        {"4 in", 101.6},                   // 4 × 25.4
        {"5000 psi", 34.4737864658418},    // 5000 × 0.00689475729316836
        {"62.4 lb/ft3", 999.552114535110}, // 62.4 × 16.0184633739601
        {"305 lb/yd3", 180.949308483624},  // 305 × 0.593276421257783
        {"8 fl oz/cwt", 5.21587778251208e-6},
        {"212 degF", 100},
        {"6 %", 6},
        {"1 gal", 0.003785411784},
    }));
    INFO(text);
    const auto reading = read_quantity(text);
    REQUIRE(std::holds_alternative<Quantity>(reading));
    CHECK_THAT(std::get<Quantity>(reading).inside(), WithinAbs(inside, 1e-13 * (1 + inside)));
}

TEST_CASE("texts that are not quantities and why") {
    struct Refusal {
        std::string text;
        std::size_t offset;
        std::string what;
        std::string advice;
    };
    const Refusal row = GENERATE(
        // no number
        Refusal{"", 0, "'' does not begin with a number", ""},
        Refusal{"psi", 0, "'psi' does not begin with a number", ""},
        Refusal{" 5 psi", 0, "' 5 psi' does not begin with a number", ""},
        Refusal{"--5 psi", 1, "'--5 psi' does not begin with a number", ""},
        Refusal{"- 5 psi", 1, "'- 5 psi' does not begin with a number", ""},
        Refusal{".nan psi", 0, "'.nan psi' is not a number that can be measured", ""},
        Refusal{"nan psi", 0, "'nan psi' is not a number that can be measured", ""},
        Refusal{"inf psi", 0, "'inf psi' is not a number that can be measured", ""},
        // a number that is not written as numbers are here
        Refusal{"4,500 psi", 1, "a number has no comma", "write '4500 psi'"},
        Refusal{"0,45 %", 1, "a number has no comma", "use a point: '0.45 %'"},
        Refusal{"3,000.5 psi", 1, "a number has no comma", "write '3000.5 psi'"},
        Refusal{"3.000,5 MPa", 5, "a number has no comma",
                "write one point and no other mark, as in 3000.5"},
        Refusal{"010 psi", 0, "a number has no leading zero", "write '10 psi'"},
        Refusal{"0x10 psi", 0, "numbers are decimal here", ""},
        Refusal{"1e400 psi", 0, "the number is too large", ""},
        Refusal{"4e306 t", 0, "the number is too large", ""}, // in kg; found by tests/fuzz
        Refusal{"1e308 ft 1 in", 0, "the number is too large", ""},
        Refusal{"3/0 in", 1, "a fraction cannot divide by zero", ""},
        Refusal{"1 1/0 in", 3, "a fraction cannot divide by zero", ""},
        Refusal{std::string(400, '9') + " 1/2 in", 0, "the number is too large", ""},
        Refusal{"3 ft 14 in", 5, "whole feet and less than 12 inches are expected",
                "write for example '3 ft 6 in'"},
        Refusal{"1.5 ft 6 in", 7, "whole feet and less than 12 inches are expected",
                "write for example '3 ft 6 in'"},
        Refusal{"3 ft -6 in", 5, "whole feet and less than 12 inches are expected",
                "write for example '3 ft 6 in'"},
        Refusal{"3 ft ", 2, "'ft ' is not a unit known here", ""},
        Refusal{"3 ft six in", 2, "'ft six in' is not a unit known here", ""},
        Refusal{"3 ft 6", 2, "'ft 6' is not a unit known here", ""},
        Refusal{"3 ft 6 mm", 2, "'ft 6 mm' is not a unit known here", ""},
        Refusal{"5. in", 1, "digits are missing after the point", ""},
        // no unit
        Refusal{"4500", 0, "'4500' has no unit", ""},
        Refusal{"4500 ", 0, "'4500 ' has no unit", ""},
        Refusal{"1 1/2", 0, "'1 1/2' has no unit", ""},
        // a unit in other letters
        Refusal{"4500 PSI", 5, "'PSI' is not a unit known here",
                "write '4500 psi' (units are case-sensitive)"},
        Refusal{"35 Mpa", 3, "'Mpa' is not a unit known here",
                "write '35 MPa' (units are case-sensitive)"},
        Refusal{"3/4 IN", 4, "'IN' is not a unit known here",
                "write '3/4 in' (units are case-sensitive)"},
        Refusal{"1 1/2 IN", 6, "'IN' is not a unit known here",
                "write '1 1/2 in' (units are case-sensitive)"},
        Refusal{"5KG", 1, "'KG' is not a unit known here",
                "write '5kg' (units are case-sensitive)"},
        Refusal{"650 ml/100 kg", 4, "'ml/100 kg' is not a unit known here",
                "write '650 mL/100 kg' (units are case-sensitive)"},
        Refusal{"8 FL OZ/CWT", 2, "'FL OZ/CWT' is not a unit known here",
                "write '8 fl oz/cwt' (units are case-sensitive)"},
        // units that mean several things, and their neighbours
        Refusal{"2 ton", 2, "'ton' has three meanings",
                "write 'short ton' (2000 lb) or 't' (1000 kg)"},
        Refusal{"2 tons", 2, "'tons' has three meanings",
                "write 'short ton' (2000 lb) or 't' (1000 kg)"},
        Refusal{"3 ksi", 2, "'ksi' is not a unit known here", "write psi (3 ksi is 3000 psi)"},
        Refusal{"4500 lb/in2", 5, "'lb/in2' is not a unit known here", "write 'psi'"},
        Refusal{"8 oz/cwt", 2, "'oz/cwt' does not say which ounce", "write 'fl oz/cwt'"},
        Refusal{"8 oz", 2, "'oz' does not say which ounce", "write 'fl oz' for a liquid"},
        Refusal{"4\"", 1, "'\"' is not a unit known here", "write 'in'"},
        Refusal{"4'", 1, "''' is not a unit known here", "write 'ft'"},
        Refusal{"5\xC2\xA0psi", 1, "there is an invisible no-break space before the unit",
                "write a plain space"},
        // no unit at all
        Refusal{"5 furlong", 2, "'furlong' is not a unit known here", ""},
        Refusal{"5 psi psi", 2, "'psi psi' is not a unit known here", ""},
        Refusal{"5 psi ", 2, "'psi ' is not a unit known here", ""},
        Refusal{"5\tpsi", 1, "'\tpsi' is not a unit known here", ""},
        Refusal{"5 6 psi", 2, "'6 psi' is not a unit known here", ""},
        Refusal{"4.5.6 psi", 3, "'.6 psi' is not a unit known here", ""},
        Refusal{"5 -3 psi", 2, "'-3 psi' is not a unit known here", ""},
        Refusal{"1.5/2 in", 3, "'/2 in' is not a unit known here", ""},
        Refusal{"20 \xC2\xB0"
                "C",
                3,
                "'\xC2\xB0"
                "C' is not a unit known here",
                ""});
    INFO("'" << row.text << "'");
    const auto reading = read_quantity(row.text);
    REQUIRE(std::holds_alternative<Misreading>(reading));
    const Misreading& wrong = std::get<Misreading>(reading);
    CHECK(wrong.offset == row.offset);
    CHECK(wrong.what == row.what);
    CHECK(wrong.advice == row.advice);
}

TEST_CASE("what the advice says to write is read") {
    // Advice of the form: write 'X', or use a point: 'X', for a whole quantity or a whole number.
    const std::string text =
        GENERATE(as<std::string>{}, "4,500 psi", "4,500psi", "1,234,567 psi", "0,45 %", "010 psi",
                 "007 psi", "0010.5 psi", "4500 PSI", "5KG", "1 1/2 IN", "60 degf", "28 D");
    INFO("'" << text << "'");
    const auto reading = read_quantity(text);
    REQUIRE(std::holds_alternative<Misreading>(reading));
    const std::string advice = std::get<Misreading>(reading).advice;
    const std::size_t open = advice.find('\'');
    const std::size_t close = advice.find('\'', open + 1);
    REQUIRE(close != std::string::npos);
    const std::string advised = advice.substr(open + 1, close - open - 1);
    INFO("advised: '" << advised << "'");
    CHECK(std::holds_alternative<Quantity>(read_quantity(advised)));
}

TEST_CASE("a comma before three digits groups thousands with or without a space before the unit") {
    const std::string text = GENERATE(as<std::string>{}, "4,500 psi", "4,500psi");
    INFO("'" << text << "'");
    const auto reading = read_quantity(text);
    REQUIRE(std::holds_alternative<Misreading>(reading));
    CHECK(std::get<Misreading>(reading).advice.starts_with("write '4500"));
}
