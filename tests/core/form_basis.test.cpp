// What is said of the pressures on forms: forms of which the same is true share a sentence, and
// full head is never told as if a rise bounded it.

#include <boardmark/core/wall/wall_plan.hpp>

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark::core;

namespace {

constexpr double head_kpa = 40;

FormPressure pressure_of(double kpa) {
    FormPressure pressure;
    pressure.method = "a method";
    pressure.kpa = kpa;
    pressure.head_kpa = head_kpa;
    return pressure;
}

FormForces forces_on(const std::string& wall, double kpa) {
    FormForces forces;
    forces.wall = wall;
    forces.height_m = 2;
    forces.rise = {.smallest_plan_m2 = 1, .stated_m_h = 2.4};
    forces.concrete_c = 15;
    forces.slump_mm = 125;
    forces.pressures = {pressure_of(kpa)};
    return forces;
}

AllowableRise any_rise(const std::string& what, double limit) {
    return {.any = true,
            .reason = {what + " {limit} carry it",
                       {{.name = "limit", .value = Quantity{limit, Measure::pressure}}}}};
}

std::string names_in(const Phrase& phrase) {
    return std::get<std::string>(phrase.arguments.front().value);
}

} // namespace

TEST_CASE("forms of which the same is true share a sentence") {
    const std::vector<FormForces> alike{forces_on("wall", head_kpa), forces_on("box", head_kpa)};
    const auto shared = pressures_hold_for(alike);
    REQUIRE(shared.size() == 1);
    CHECK(names_in(shared.front()) == "wall, box");

    std::vector<FormForces> slower = alike;
    slower.back().rise.stated_m_h = 1.2;
    const auto apart = pressures_hold_for(slower);
    REQUIRE(apart.size() == 2);
    CHECK(names_in(apart.front()) == "wall");
    CHECK(names_in(apart.back()) == "box");
}

TEST_CASE("a rise bounds a pressure below the full head, and none that is the full head") {
    const std::vector<FormForces> full{forces_on("wall", head_kpa)};
    const std::vector<FormForces> formula{forces_on("wall", head_kpa / 2)};
    CHECK(pressures_hold_for(full).front().text.find("whatever the rate of rise") !=
          std::string::npos);
    CHECK(pressures_hold_for(formula).front().text.find("hold for a rise of up to {rise}") !=
          std::string::npos);

    // One method below the full head is enough: its figure is shown too.
    std::vector<FormForces> both = full;
    both.front().pressures.push_back(pressure_of(head_kpa / 2));
    CHECK(pressures_hold_for(both).front().text.find("hold for a rise of up to {rise}") !=
          std::string::npos);
}

TEST_CASE("forms and ties are told in one sentence with arguments of their own") {
    std::vector<FormForces> one{forces_on("wall", head_kpa)};
    one.front().rise_by_form = any_rise("forms for", 50);
    one.front().rise_by_ties = any_rise("ties of", 60);
    const auto told = highest_rises(one);
    REQUIRE(told.size() == 1);
    CHECK(told.front().text ==
          "{wall}: forms for {form_limit} carry it; ties of {tie_limit} carry it");
    REQUIRE(told.front().arguments.size() == 3);
    CHECK(std::get<Quantity>(told.front().arguments[1].value).value == 50);
    CHECK(std::get<Quantity>(told.front().arguments[2].value).value == 60);

    one.front().rise_by_ties = {};
    const auto apart = highest_rises(one);
    REQUIRE(apart.size() == 2);
    CHECK(apart.back().text.find("no load of 'ties' is stated") != std::string::npos);
}

TEST_CASE("a value and its limit keep the names that tell them apart when printed") {
    std::vector<FormForces> one{forces_on("wall", head_kpa)};
    one.front().rise_by_ties = any_rise("ties of", 60);
    one.front().rise_by_form = {.reason = {"{value} is too much for {limit}",
                                           {{.name = "value", .value = Quantity{}},
                                            {.name = "limit", .value = Quantity{}}}}};
    CHECK(highest_rises(one).front().text ==
          "{wall}: the forms allow no rate of rise: {value} is too much for {limit}");
}
