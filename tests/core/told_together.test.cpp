// Parts of which the same is true share one sentence; a figure, a verdict or a code that differs
// keeps them apart.

#include <boardmark/core/checks/told_together.hpp>

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark::core;

namespace {

Check check_of(const std::string& part, double value) {
    Check check{.id = "stripping.age", .verdict = Verdict::watch, .requirement = "age"};
    check.source = {.citation = "a code"};
    check.message = {"{wall}: stripped after {value}",
                     {{.name = "value", .value = Quantity{value, Measure::duration}},
                      {.name = "wall", .value = part}}};
    check.part = part;
    return check;
}

std::string named_in(const Check& check) {
    return std::get<std::string>(check.message.arguments.back().value);
}

} // namespace

TEST_CASE("parts that say the same are told together, where the first of them stood") {
    Check of_the_mix = check_of("", 72);
    of_the_mix.message = {"for all of it", {}};
    const auto told = told_together(
        {check_of("wall", 72), of_the_mix, check_of("box", 72), check_of("seat", 48)});
    REQUIRE(told.size() == 3);
    CHECK(named_in(told[0].check) == "wall, box");
    CHECK(told[0].parts == 2);
    CHECK(told[1].check.message.text == "for all of it");
    CHECK(named_in(told[2].check) == "seat");
}

TEST_CASE("a verdict, a check or a code that differs keeps parts apart") {
    Check other = check_of("box", 72);
    SECTION("the verdict") {
        other.verdict = Verdict::fails;
    }
    SECTION("the check") {
        other.id = "stripping.soffit";
    }
    SECTION("the code") {
        other.source.citation = "another code";
    }
    SECTION("the sentence") {
        other.message.text = "{wall}: stripped at {value}";
    }
    CHECK(told_together({check_of("wall", 72), other}).size() == 2);
}

TEST_CASE("checks of no part are told one by one") {
    Check plain = check_of("", 72);
    plain.message = {"the same words", {}};
    CHECK(told_together({plain, plain}).size() == 2);
}
