#include <boardmark/units/number.hpp>

#include <catch2/catch.hpp>

#include <cstdlib>
#include <string>
#include <utility>

using namespace boardmark::units;
using Catch::Matchers::WithinAbs;

namespace {

const std::string too_large(400, '9'); // the largest double has 309 digits

} // namespace

// The grammar by example: both lists are the specification.

TEST_CASE("numbers that are read") {
    const auto [text, value] = GENERATE(table<std::string, double>({
        {"4500", 4500},
        {"-5", -5},
        {"+5", 5},
        {"0", 0},
        {"0.45", 0.45},
        {".45", 0.45},
        {"1.5e3", 1500},
        {"2E-2", 0.02},
        {"1e+3", 1000},
        {"3/4", 0.75},
        {"1 1/2", 1.5},
        {"1-1/2", 1.5},
        {"-1/4", -0.25},
        {"10", 10},
    }));
    INFO(text);
    const auto reading = read_number(text);
    REQUIRE(std::holds_alternative<double>(reading));
    CHECK_THAT(std::get<double>(reading), WithinAbs(value, 1e-15));
}

TEST_CASE("texts that are not numbers, and why") {
    const auto [text, what, advice] = GENERATE(table<std::string, std::string, std::string>({
        {"", "'' does not begin with a number", ""},
        {"abc", "'abc' does not begin with a number", ""},
        {"1,5", "a number has no comma", "use a point: '1.5'"},
        {"4,500", "a number has no comma", "write '4500'"},
        {"010", "a number has no leading zero", "write '10'"},
        {"0x10", "numbers are decimal here", ""},
        {"0X10", "numbers are decimal here", ""},
        {".nan", "'.nan' is not a number that can be measured", ""},
        {".NaN", "'.NaN' is not a number that can be measured", ""},
        {"-.inf", "'-.inf' is not a number that can be measured", ""},
        {"1e400", "the number is too large", ""},
        {too_large + "/2", "the number is too large", ""},
        {"1/" + too_large, "the number is too large", ""},
        {"3/0", "a fraction cannot divide by zero", ""},
        {"5.", "digits are missing after the point", ""},
        {"0.45 kg", "' kg' follows the number; this value has no unit", "write '0.45'"},
        {"1 2", "' 2' follows the number; this value has no unit", "write '1'"},
    }));
    INFO(text);
    const auto reading = read_number(text);
    REQUIRE(std::holds_alternative<Misreading>(reading));
    CHECK(std::get<Misreading>(reading).what == what);
    CHECK(std::get<Misreading>(reading).advice == advice);
}

TEST_CASE("a leading number says how much of the text it took") {
    const auto [text, length] = GENERATE(table<std::string, std::size_t>({
        {"4500 psi", 4},
        {"1 1/2 in", 5},
        {"8 fl oz/cwt", 1},
        {"650 mL/100 kg", 3},
        {"6ft3", 1},
        {"1e3 kg", 3},
        {"5 e", 1},
        {"5e", 1},
        {"5e+", 1},
        {"5e kg", 1},
    }));
    INFO(text);
    const auto reading = read_leading_number(text);
    REQUIRE(std::holds_alternative<LeadingNumber>(reading));
    CHECK(std::get<LeadingNumber>(reading).length == length);
}

// The standard library's own conversion is the second opinion: correctly rounded, as ours must be.
TEST_CASE("every way of writing a number gives the nearest double") {
    const std::string text =
        GENERATE(as<std::string>{}, "0.1", "0.3", "2.675", "0.45", "1.005", "4.35", "3000.5",
                 "123456789012345", "0.123456789012345", "1234567.12345678", "9007199254740993",
                 "0.1234567890123456789", "99999999999999.9", "1e22", "7.2e-3", "0.000001",
                 "0.00000000000001", "31.64", "1725.839");
    INFO(text);
    CHECK(std::get<double>(read_number(text)) == std::strtod(text.c_str(), nullptr));
}

TEST_CASE("any short decimal gives the nearest double") {
    for (int whole = 0; whole < 40; ++whole) {
        for (int thousandths = 0; thousandths < 1000; thousandths += 7) {
            std::string decimals = std::to_string(1000 + thousandths).substr(1);
            const std::string text = std::to_string(whole) + "." + decimals;
            INFO(text);
            REQUIRE(std::get<double>(read_number(text)) == std::strtod(text.c_str(), nullptr));
        }
    }
}
