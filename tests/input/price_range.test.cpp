// Prices as ranges: the grammar, what they count, where the caret stands.

#include "input/values/price_range.hpp"

#include "input/values/value_reader.hpp"
#include "tree.hpp"

#include <catch2/catch.hpp>

#include <optional>
#include <string>

using namespace boardmark::input;
using boardmark::test::Tree;
using boardmark::test::tree_of;
using Catch::Matchers::WithinRel;

namespace {

/// A price as it is written behind "a: ", read.
struct Priced {
    Tree tree;
    Diagnostics faults;
    std::optional<Parsed> parsed;

    Priced(const std::string& written, std::string_view per)
        : tree(tree_of("a: " + written + "\n")) {
        const Value value{.form = Form::price_range, .range = {.low = 0, .high = 1e9}, .per = per};
        parsed = read_value(tree.root.find("a")->value, value, {"a"}, "an example", faults);
    }
};

} // namespace

TEST_CASE("prices that are read, for one of what they count") {
    struct Case {
        std::string written;
        std::string per;
        double low;
        std::optional<double> likely;
        double high;
        std::string currency = "USD";
    };
    // 1 ft = 0.3048 m, 1 ft2 = 0.09290304 m2, 1 yd3 = 0.764554857984 m3: NIST SP 811, exact
    const auto [written, per, low, likely, high, currency] = GENERATE(values<Case>({
        {"2.80 USD/m", "m", 2.80, {}, 2.80},
        {"2.80 to 3.60 USD/m", "m", 2.80, {}, 3.60},
        {"2.80 to 3.60 USD/m likely 3.00", "m", 2.80, 3.00, 3.60},
        {"3.048 to 6.096 USD/ft likely 4.572", "m", 10, 15, 20},
        {"0.9290304 USD/ft2", "m2", 10, {}, 10},
        {"10 to 12 EUR/m2", "m2", 10, {}, 12, "EUR"},
        {"152.9109715968 USD/yd3", "m3", 200, {}, 200},
        {"200 NOK/m3", "m3", 200, {}, 200, "NOK"},
        {"3 to 6 USD/piece likely 3", "piece", 3, 3.0, 6},
        {"3 to 6 USD/piece likely 6", "piece", 3, 6.0, 6},
        {"62 USD/h", "h", 62, {}, 62},
        {"90 to 120 USD/d", "d", 90, {}, 120},
        {"0 to 4000 USD/job", "job", 0, {}, 4000},
        {"1 1/2 to 2 USD/piece", "piece", 1.5, {}, 2},
        {"4USD/piece", "piece", 4, {}, 4},
    }));
    INFO(written);
    const Priced price{written, per};
    REQUIRE(render(price.faults) == "");
    REQUIRE(price.parsed);
    CHECK_THAT(price.parsed->number + 1, WithinRel(low + 1, 1e-12));
    CHECK_THAT(price.parsed->high, WithinRel(high, 1e-12));
    CHECK(price.parsed->likely.has_value() == likely.has_value());
    CHECK_THAT(price.parsed->likely.value_or(1), WithinRel(likely.value_or(1), 1e-12));
    CHECK(price.parsed->currency == currency);
}

TEST_CASE("prices that are refused and where the caret stands") {
    struct Case {
        std::string written;
        std::string per;
        std::string message;
        std::size_t caret;
    };
    const std::string currency_expected =
        "a: a currency of three capital letters and '/' are expected after the amount";
    const auto [written, per, message, caret] = GENERATE_COPY(values<Case>({
        {"2.80 USD/ft2", "m", "a: 'USD/ft2' is not a price by length", 9},
        {"2.80 USD/yd", "m", "a: 'USD/yd' is not a price by length", 9},
        {"62 USD/d", "h", "a: 'USD/d' is not a price by the hour", 7},
        {"90 USD/h", "d", "a: 'USD/h' is not a price by the day", 7},
        {"90 USD/week", "d", "a: 'USD/week' is not a price by the day", 7},
        {"90 USD/", "d", "a: 'USD/' is not a price by the day", 7},
        {"5 USD/m2", "m3", "a: 'USD/m2' is not a price by volume", 6},
        {"5 USD/pieces", "piece", "a: 'USD/pieces' is not a price by the piece", 6},
        {"5 USD/m2", "job", "a: 'USD/m2' is not a price for the whole job", 6},
        {"3.60 to 2.80 USD/m", "m", "a: the first price must be the lower one", 0},
        {"3 to 3 USD/m", "m", "a: the first price must be the lower one", 0},
        {"2 to 4 USD/m likely 5", "m", "a: the likely price lies outside the range", 0},
        {"2 to 4 USD/m likely 1", "m", "a: the likely price lies outside the range", 0},
        {"2 USD/m likely 2", "m", "a: a likely price is given without a range", 8},
        {"2 to 4 USD/m, likely 3", "m", "a: a comma would end a value between braces", 12},
        {"2 to 4 USD/m likely", "m", "a: 'likely' is not expected here", 13},
        {"2 to 4 USD/m likely 3 USD/m", "m", "a: ' USD/m' is not expected here", 21},
        {"2 to 4 USD/m likely 3 or so", "m", "a: ' or so' is not expected here", 21},
        {"2 to 4 USD/m each", "m", "a: 'each' is not expected here", 13},
        {"2 to 4", "m", currency_expected, 6},
        {"2 to 4 usd/m", "m", currency_expected, 7},
        {"2 to 4 dollars/m", "m", currency_expected, 7},
        {"2 to 4 USD", "m", currency_expected, 7},
        {"2 USD to 4 USD/m", "m", currency_expected, 2},
        {"USD 2/m", "m", "a: 'USD 2/m' does not begin with a number", 0},
        {"2,50 USD/m", "m", "a: a number has no comma", 1},
        {"-2 to 4 USD/m", "m", "a: -2 to 4 USD/m is out of range (at least 0)", 0},
        {"2 to USD/m", "m", "a: 'USD/m' does not begin with a number", 5},
    }));
    INFO(written);
    const Priced price{written, per};
    CHECK_FALSE(price.parsed);
    REQUIRE(price.faults.size() == 1);
    CHECK(price.faults[0].message == message);
    CHECK(price.faults[0].caret == caret);
}
