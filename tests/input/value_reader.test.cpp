// One value at a time: what each form reads, and what it says of what it does not read.

#include "input/values/value_reader.hpp"

#include "tree.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <string>

using namespace boardmark::input;
using boardmark::core::Kind;
using boardmark::test::Tree;
using boardmark::test::tree_of;
using boardmark::units::Dimension;
using Catch::Matchers::WithinRel;

namespace {

constexpr std::string_view colours[] = {"grey", "white"};
constexpr std::string_view as_needed[] = {"as needed"};

constexpr Value of(Form form) {
    return {.form = form};
}
constexpr Value quantity(Dimension dimension, Range range = {}) {
    return {.form = Form::quantity, .dimensions = {dimension, std::nullopt}, .range = range};
}
constexpr Value number(Range range = {}) {
    return {.form = Form::number, .range = range};
}
constexpr Value colour{.form = Form::word, .words = colours};
constexpr Value slump_window{.form = Form::window,
                             .dimensions = {Dimension::length, std::nullopt},
                             .range = {.low = 0, .high = 305}};
constexpr Value dose_or_word{.form = Form::quantity,
                             .dimensions = {Dimension::dose, Dimension::percentage},
                             .range = {.low = 0, .low_itself = false},
                             .words = as_needed};
constexpr Value share{.form = Form::quantity,
                      .dimensions = {Dimension::percentage, std::nullopt},
                      .range = {.low = 0, .high = 100},
                      .suspicious_below = 1};

/// A value as it is written behind "a: ", read.
struct Attempt {
    Tree tree;
    Diagnostics faults;
    std::optional<Parsed> parsed;

    Attempt(const std::string& written, const Value& value, std::string_view example = "an example")
        : tree(tree_of("a: " + written + "\n")) {
        parsed = read_value(tree.root.find("a")->value, value, {"a"}, example, faults);
    }
};

} // namespace

TEST_CASE("quantities arrive in the inside unit") {
    struct Case {
        std::string written;
        Dimension dimension;
        double inside;
    };
    const auto [written, dimension, inside] = GENERATE(values<Case>({
        {"4 in", Dimension::length, 101.6},
        {"\"4 in\"", Dimension::length, 101.6}, // quotes change nothing
        {"1 1/2 in", Dimension::length, 38.1},
        {"19 mm", Dimension::length, 19},
        {"4500 psi", Dimension::stress, 31.02640781925763},
        {"35 MPa", Dimension::stress, 35},
        {"100 lb/ft3", Dimension::mass_per_volume, 1601.8463373960139},
        {"9 months", Dimension::time, 273.9375},
        {"0.5 %", Dimension::percentage, 0.5},
        {"8 fl oz/cwt", Dimension::dose, 8 * 29.5735295625e-6 / 45.359237},
    }));
    INFO(written);
    const Attempt attempt{written, quantity(dimension)};
    REQUIRE(attempt.faults.empty());
    REQUIRE(attempt.parsed);
    CHECK_THAT(attempt.parsed->number, WithinRel(inside, 1e-9));
    CHECK(attempt.parsed->dimension == dimension);
    CHECK_FALSE(attempt.parsed->is_word);
}

TEST_CASE("a value of two dimensions says which one it is in") {
    const auto [written, dimension] = GENERATE(table<std::string, Dimension>({
        {"650 mL/100 kg", Dimension::dose},
        {"0.8 %", Dimension::percentage},
    }));
    INFO(written);
    const Attempt attempt{written, dose_or_word};
    REQUIRE(attempt.parsed);
    CHECK(attempt.parsed->dimension == dimension);
}

TEST_CASE("a word that may stand instead of a quantity is read as that word") {
    const Attempt attempt{"as needed", dose_or_word};
    REQUIRE(attempt.parsed);
    CHECK(attempt.parsed->is_word);
    CHECK(attempt.parsed->text == "as needed");
}

TEST_CASE("a word that is nearly the one that may stand instead is asked about") {
    const Attempt attempt{"as neded", dose_or_word};
    CHECK_FALSE(attempt.parsed);
    CHECK(attempt.faults.at(0).message == "a: 'as neded' is not a value known here");
    CHECK(attempt.faults.at(0).advice == "did you mean 'as needed'?");
}

TEST_CASE("quantities that are refused and where the caret stands") {
    struct Case {
        std::string written;
        std::string message;
        std::string advice;
        std::size_t caret;
    };
    const auto [written, message, advice, caret] = GENERATE(values<Case>({
        {"4500 PSI", "a: 'PSI' is not a unit known here",
         "write '4500 psi' (units are case-sensitive)", 5},
        {"\"4500 PSI\"", "a: 'PSI' is not a unit known here",
         "write '4500 psi' (units are case-sensitive)", 6}, // the quote stands before it
        {"4500 pssi", "a: 'pssi' is not a unit known here", "did you mean 'psi'?", 5},
        {"4500 stone", "a: 'stone' is not a unit known here", "write for example 'an example'", 5},
        {"4500", "a: '4500' has no unit; a stress (psi, MPa) is expected",
         "write for example 'an example'", 0},
        {"45 kg", "a: '45 kg' is a mass (lb, kg); a stress (psi, MPa) is expected",
         "write for example 'an example'", 0},
        {"31,5 MPa", "a: a number has no comma", "use a point: '31.5 MPa'", 2},
        {"strong", "a: 'strong' does not begin with a number", "write for example 'an example'", 0},
        {"1e400 psi", "a: the number is too large", "write for example 'an example'", 0},
        {"[4500 psi]", "a: expected a stress (psi, MPa), found a list",
         "write for example 'an example'", 0},
        {"~", "a: expected a stress (psi, MPa), found no value", "write for example 'an example'",
         0},
    }));
    INFO(written);
    const Attempt attempt{written, quantity(Dimension::stress)};
    CHECK_FALSE(attempt.parsed);
    REQUIRE(attempt.faults.size() == 1);
    CHECK(attempt.faults[0].message == message);
    CHECK(attempt.faults[0].advice == advice);
    CHECK(attempt.faults[0].column == 4);
    CHECK(attempt.faults[0].caret == caret);
}

TEST_CASE("ranges hold their limits and say them in the unit that was written") {
    struct Case {
        std::string written;
        Range range;
        std::string fault; ///< empty where the value is in range
    };
    const Range closed{.low = 0, .high = 305};
    const Range open{.low = 0, .high = 305, .low_itself = false};
    const auto [written, range, fault] = GENERATE_COPY(values<Case>({
        {"0 mm", closed, ""},
        {"305 mm", closed, ""},
        {"-1 mm", closed, "a: -1 mm is out of range (0 mm to 305 mm)"},
        {"306 mm", closed, "a: 306 mm is out of range (0 mm to 305 mm)"},
        {"20 in", {.low = 254, .high = 508}, ""},
        {"9 in", {.low = 254, .high = 508}, "a: 9 in is out of range (10 in to 20 in)"},
        {"0 mm", open, "a: 0 mm is out of range (above 0 mm to 305 mm)"},
        {"1 mm", open, ""},
        {"-2 mm", {.low = 0}, "a: -2 mm is out of range (at least 0 mm)"},
        {"-2 mm", {.low = 0, .low_itself = false}, "a: -2 mm is out of range (above 0 mm)"},
    }));
    INFO(written);
    const Attempt attempt{written, quantity(Dimension::length, range)};
    CHECK(attempt.parsed.has_value() == fault.empty());
    CHECK(attempt.faults.size() == (fault.empty() ? 0 : 1));
    if (!fault.empty()) {
        CHECK(attempt.faults[0].message == fault);
    }
}

TEST_CASE("a bare number out of range by a power of ten is asked about") {
    const auto [written, range, advice] = GENERATE(table<std::string, Range, std::string>({
        {"45", Range{.low = 0.15, .high = 1.5}, "0.45?"},
        {"3150", Range{.low = 0.8, .high = 8}, "3.15?"},
        {"28", Range{.low = 1, .high = 5}, "2.8?"},
        {"0", Range{.low = 0.15, .high = 1.5}, "check the figure and its unit"},
        {"-0.45", Range{.low = 0.15, .high = 1.5}, "check the figure and its unit"},
    }));
    INFO(written);
    const Attempt attempt{written, number(range)};
    REQUIRE(attempt.faults.size() == 1);
    CHECK(attempt.faults[0].advice == advice);
}

TEST_CASE("of the factors that bring a number into range the one that makes it usual is offered") {
    // A w/cm of a record: 0 to 10, usually 0.25 to 0.8; a relative yield: 0.1 to 10, usually 0.9 to
    // 1.1; common practice, no source.
    const auto [written, range, usual, advice] =
        GENERATE(table<std::string, Range, Range, std::string>({
            {"40", Range{.low = 0, .high = 10}, Range{.low = 0.25, .high = 0.8}, "0.4?"},
            {"400", Range{.low = 0, .high = 10}, Range{.low = 0.25, .high = 0.8}, "0.4?"},
            {"100.4", Range{.low = 0.1, .high = 10}, Range{.low = 0.9, .high = 1.1}, "1.004?"},
            {"2000", Range{.low = 0, .high = 10}, Range{.low = 0.25, .high = 0.8}, "2?"},
        }));
    INFO(written);
    Value value = number(range);
    value.usual = usual;
    const Attempt attempt{written, value};
    REQUIRE(attempt.faults.size() == 1);
    CHECK(attempt.faults[0].advice == advice);
}

TEST_CASE("a percentage that looks like a fraction is read and warned of") {
    const auto [written, warned] = GENERATE(table<std::string, bool>({
        {"0.75 %", true},
        {"0.99 %", true},
        {"1 %", false},
        {"75 %", false},
        {"0 %", false}, // nothing at all is no fraction
    }));
    INFO(written);
    const Attempt attempt{written, share};
    REQUIRE(attempt.parsed);
    REQUIRE(attempt.faults.size() == (warned ? 1 : 0));
    if (warned) {
        CHECK(attempt.faults[0].severity == Severity::warning);
        CHECK(attempt.faults[0].message == "a: " + written + " is unusually small");
    }
}

TEST_CASE("the warning of a fraction gives the percentage that was perhaps meant") {
    CHECK(Attempt("0.75 %", share).faults.at(0).advice ==
          "75 %, perhaps? a percentage is read, not a fraction");
}

TEST_CASE("bare numbers and counts") {
    struct Case {
        std::string written;
        Form form;
        double read; ///< -1 where it is refused
        std::string fault;
    };
    const auto [written, form, read, fault] = GENERATE(values<Case>({
        {"0.45", Form::number, 0.45, ""},
        {"18", Form::count, 18, ""},
        {"18.0", Form::count, 18, ""}, // exact, however it is written
        {"18.5", Form::count, -1, "a: 18.5 is not a whole number"},
        {"0.45 kg", Form::number, -1, "a: ' kg' follows the number; this value has no unit"},
        {".nan", Form::number, -1, "a: '.nan' is not a number that can be measured"},
        {"010", Form::number, -1, "a: a number has no leading zero"},
        {"[1]", Form::count, -1, "a: expected a whole number, found a list"},
    }));
    INFO(written);
    const Attempt attempt{written, of(form)};
    REQUIRE(attempt.parsed.has_value() == fault.empty());
    if (attempt.parsed) {
        CHECK(attempt.parsed->number == read);
    } else {
        CHECK(attempt.faults.at(0).message == fault);
    }
}

TEST_CASE("yes and no in four words and no others") {
    const auto [written, readable, flag] = GENERATE(table<std::string, bool, bool>({
        {"yes", true, true},
        {"no", true, false},
        {"true", true, true},
        {"false", true, false},
        {"on", false, false},
        {"Yes", false, false},
        {"y", false, false},
        {"1", false, false},
    }));
    INFO(written);
    const Attempt attempt{written, of(Form::flag)};
    REQUIRE(attempt.parsed.has_value() == readable);
    if (readable) {
        CHECK(attempt.parsed->flag == flag);
    } else {
        CHECK(attempt.faults.at(0).message == "a: '" + written + "' is neither yes nor no");
    }
}

TEST_CASE("a word is one of those listed") {
    CHECK(Attempt("grey", colour).parsed->is_word);
    const auto [written, advice] = GENERATE(table<std::string, std::string>({
        {"gray", "did you mean 'grey'?"},
        {"whte", "did you mean 'white'?"},
        {"black", "write for example 'an example'"},
        {"\"\"", "write for example 'an example'"},
    }));
    INFO(written);
    const Attempt attempt{written, colour};
    CHECK_FALSE(attempt.parsed);
    CHECK(attempt.faults.at(0).advice == advice);
}

TEST_CASE("every kind is read by its name and no other text is") {
    for (const auto& known : boardmark::core::all_kinds()) {
        INFO(known.name);
        const Attempt attempt{std::string{known.name}, of(Form::kind)};
        REQUIRE(attempt.parsed);
        CHECK(attempt.parsed->kind == known.kind);
    }
    CHECK(Attempt("slag cment", of(Form::kind)).faults.at(0).advice ==
          "did you mean 'slag cement'?");
    CHECK(Attempt("gypsum", of(Form::kind))
              .faults.at(0)
              .advice.starts_with("one of: portland cement, "));
}

TEST_CASE("a text has one to two hundred characters") {
    struct Case {
        std::string written;
        std::string fault;
    };
    const auto [written, fault] = GENERATE(values<Case>({
        {"\"a\"", ""},
        {std::string(200, 'a'), ""},
        {std::string(201, 'a'), "a: the text has 201 characters; at most 200 are read"},
        {"\"\"", "a: the text is empty"},
        {"[a]", "a: expected a text, found a list"},
    }));
    const Attempt attempt{written, of(Form::text)};
    CHECK(attempt.parsed.has_value() == fault.empty());
    if (!fault.empty()) {
        CHECK(attempt.faults.at(0).message == fault);
    }
}

TEST_CASE("characters of a text are counted and not its bytes") {
    std::string umlauts;
    for (int i = 0; i < 200; ++i) {
        umlauts += "ü";
    }
    CHECK(Attempt(umlauts, of(Form::text)).parsed.has_value());
    CHECK(Attempt(umlauts + "ü", of(Form::text)).parsed.has_value() == false);
}

TEST_CASE("a window is its lower and its higher end") {
    const Attempt attempt{"6 in to 8 in", slump_window};
    REQUIRE(attempt.parsed);
    CHECK_THAT(attempt.parsed->number, WithinRel(152.4, 1e-9));
    CHECK_THAT(attempt.parsed->high, WithinRel(203.2, 1e-9));
}

TEST_CASE("windows that are refused") {
    const auto [written, fault] = GENERATE(table<std::string, std::string>({
        {"6 in", "a: two values are expected, the lowest and the highest"},
        {"6 in - 8 in", "a: two values are expected, the lowest and the highest"},
        {"8 in to 6 in", "a: the first value must be the lower one"},
        {"8 in to 8 in", "a: the first value must be the lower one"},
        {"-1 in to 8 in", "a: -1 in to 8 in is out of range (0 in to 12 in)"},
        {"6 in to 13 in", "a: 6 in to 13 in is out of range (0 in to 12 in)"}, // 305 mm
        {"6 to 8 in", "a: '6' has no unit; a length (in, ft, mm, m) is expected"},
        {"6 in to 8 kg", "a: '8 kg' is a mass (lb, kg); a length (in, ft, mm, m) is expected"},
    }));
    INFO(written);
    const Attempt attempt{written, slump_window};
    CHECK_FALSE(attempt.parsed);
    CHECK(attempt.faults.at(0).message == fault);
}

TEST_CASE("the caret of a window stands under the end that is wrong") {
    const auto [written, caret] = GENERATE(table<std::string, std::size_t>({
        {"3 inn to 5 in", 2},
        {"3 in to 5 inn", 10},
    }));
    INFO(written);
    const Attempt attempt{written, slump_window};
    REQUIRE(attempt.faults.size() == 1);
    CHECK(attempt.faults[0].message == "a: 'inn' is not a unit known here");
    CHECK(attempt.faults[0].caret == caret);
    CHECK(attempt.faults[0].advice == "did you mean 'in'?");
}

TEST_CASE("a price is an amount of a currency by mass, volume or piece") {
    const auto [written, fault] = GENERATE(table<std::string, std::string>({
        {"165 USD/short ton", ""},
        {"0.12 EUR/kg", ""},
        {"95 EUR/m3", ""},
        {"18 USD/piece", ""},
        {"18 USD/sack", "a: 'sack' is not a unit"},
        {"18/piece", "a: '18/piece' is not a price by mass, volume or piece"},
        {"165 USD", "a: '165 USD' is not a price by mass, volume or piece"},
        {"165 usd/t", "a: '165 usd/t' is not a price by mass, volume or piece"},
        {"165 USDX/t", "a: '165 USDX/t' is not a price by mass, volume or piece"},
        {"165/t", "a: '165/t' is not a price by mass, volume or piece"},
        {"165 USD/ft", "a: '165 USD/ft' is not a price by mass, volume or piece"},
        {"USD 165/t", "a: 'USD 165/t' does not begin with a number"},
        {"165 USD/", "a: '165 USD/' is not a price by mass, volume or piece"},
        {"165 USD/KG", "a: 'KG' is not a unit known here"},
        {"165 USD/wheelbarrow", "a: '165 USD/wheelbarrow' is not a price by mass, volume or piece"},
    }));
    INFO(written);
    const Attempt attempt{written, of(Form::price)};
    CHECK(attempt.parsed.has_value() == fault.empty());
    if (!fault.empty()) {
        CHECK(attempt.faults.at(0).message == fault);
    }
}

TEST_CASE("a price arrives by kilogram, cubic metre or piece") {
    // A short ton is 907.18474 kg, a litre 0.001 m3.
    struct Case {
        std::string written;
        double amount;
        std::optional<Dimension> per;
        std::string currency;
    };
    const auto [written, amount, per, currency] = GENERATE(values<Case>({
        {"165 USD/short ton", 165 / 907.18474, Dimension::mass, "USD"},
        {"0.12 EUR/kg", 0.12, Dimension::mass, "EUR"},
        {"3.7 USD/L", 3700, Dimension::volume, "USD"},
        {"18 USD/piece", 18, std::nullopt, "USD"},
    }));
    INFO(written);
    const Attempt attempt{written, of(Form::price)};
    REQUIRE(attempt.parsed);
    CHECK_THAT(attempt.parsed->number, WithinRel(amount, 1e-12));
    CHECK(attempt.parsed->currency == currency);
    if (per) {
        CHECK(attempt.parsed->dimension == *per);
    }
    constexpr Value cheap{.form = Form::price, .range = {.low = 0, .high = 1000}};
    CHECK_FALSE(Attempt("1001 USD/t", cheap).parsed);
}

TEST_CASE("a bare number where the example is a word shows how it is written") {
    // Below one it was meant as a fraction.
    const auto [written, advice] = GENERATE(table<std::string, std::string>({
        {"6", "write for example '6 %'"},
        {"0.065", "write for example '6.5 %'"},
        {"1", "write for example '1 %'"},
        {"0", "write for example '0 %'"},
        {"-0.5", "write for example '-0.5 %'"},
    }));
    INFO(written);
    constexpr Value air{.form = Form::quantity,
                        .dimensions = {Dimension::percentage, std::nullopt},
                        .words = as_needed};
    CHECK(Attempt(written, air, "as needed").faults.at(0).advice == advice);
    CHECK(Attempt(written, air).faults.at(0).advice == "write for example 'an example'");
}

TEST_CASE("what a value must be in the words of a message") {
    const auto [value, words] = GENERATE(table<Value, std::string>({
        {of(Form::text), "a text"},
        {of(Form::flag), "yes or no"},
        {colour, "one of 'grey', 'white'"},
        {of(Form::kind), "a kind of material"},
        {of(Form::number), "a number"},
        {of(Form::count), "a whole number"},
        {of(Form::price), "a price by mass, volume or piece"},
        {quantity(Dimension::length), "a length (in, ft, mm, m)"},
        {dose_or_word, "a dose (fl oz/cwt, mL/100 kg) or a percentage (%)"},
        {slump_window, "two values, 'A to B'"},
        {of(Form::date), "a date, 'YEAR-MONTH-DAY'"},
        {Value{.form = Form::price_range, .per = "piece"},
         "a price by the piece, as in 'USD/piece'"},
    }));
    CHECK(describe(value) == words);
}
