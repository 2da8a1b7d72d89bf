// The way of a trial into the computation: what was weighed and measured, left out or made
// impossible, one by one.

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/trial/complete_trial.hpp>
#include <boardmark/core/trial/next_trial.hpp>
#include <boardmark/reference/tables.hpp>

#include "mutators.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <limits>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using core::Field;
using core::Trial;

namespace {

constexpr double batch_m3 = 0.02;

core::CompleteSubmittedMix entered(core::SubmittedMix mix) {
    return std::get<core::CompleteSubmittedMix>(
        core::complete(std::move(mix), reference::vocabulary()));
}

/// Twenty litres of the whole submittal, each material weighed, every test made.
Trial whole_trial(const core::SubmittedMix& mix = whole_submittal()) {
    Trial trial{.mix = entered(mix),
                .water = {.kg = core::Reading{batch_m3 * 100, 0.01}, .m3 = std::nullopt},
                .batched = {},
                .tests = {.density = core::FilledMeasure{{20, 0.01}, {4, 0.01}, {0.007, 0.0001}},
                          .slump = {{0, 100}, {20, 90}}}};
    for (const core::SubmittedAmount& amount : whole_submittal().amounts) {
        const auto reading = [&](const std::optional<double>& per_m3) {
            return per_m3 ? std::optional{core::Reading{batch_m3 * *per_m3, 0.01}} : std::nullopt;
        };
        trial.batched.push_back({amount.material, {reading(amount.kg_m3), reading(amount.m3_m3)}});
    }
    trial.tests.slump_before_reducer_mm = 30;
    trial.tests.air_percent = 6;
    trial.tests.temperature_c = 20;
    trial.target_slump_mm = 100;
    trial.target_air_percent = 6;
    trial.intended_volume_m3 = batch_m3;
    return trial;
}

core::Tables tables() {
    return reference::tables(core::UnitSystem::si);
}

bool names(const core::Faults& faults, Field field) {
    return std::ranges::any_of(faults, [&](const core::Fault& fault) {
        return fault.field == field && !fault.message.empty();
    });
}

std::string told(const core::Faults& faults) {
    std::string text;
    for (const core::Fault& fault : faults) {
        text += fault.message + "\n";
    }
    return text;
}

/// A number of a trial, and how it is set.
struct TrialNumber {
    Field field;
    void (*set)(Trial&, double);
};

constexpr TrialNumber numbers[] = {
    {Field::charged_water, [](Trial& trial, double x) { trial.water.kg->value = x; }},
    {Field::charged_water, [](Trial& trial, double x) { trial.water.kg->step = x; }},
    {Field::amount, [](Trial& trial, double x) { trial.batched[0].amount.kg->value = x; }},
    {Field::amount, [](Trial& trial, double x) { trial.batched[3].amount.m3->value = x; }},
    {Field::moisture,
     [](Trial& trial, double x) { trial.batched[1].material.aggregate.moisture_percent = x; }},
    {Field::absorption,
     [](Trial& trial, double x) { trial.batched[2].material.aggregate.absorption_percent = x; }},
    {Field::measured_density,
     [](Trial& trial, double x) { trial.tests.density = core::Reading{x}; }},
    {Field::measured_density,
     [](Trial& trial, double x) {
         trial.tests.density = core::FilledMeasure{{x}, {4}, {0.007}};
     }},
    {Field::measured_density,
     [](Trial& trial, double x) {
         trial.tests.density = core::FilledMeasure{{20}, {4}, {x}};
     }},
    {Field::measured_slump, [](Trial& trial, double x) { trial.tests.slump[1].mm = x; }},
    {Field::measured_slump, [](Trial& trial, double x) { trial.tests.slump[1].minutes = x; }},
    {Field::measured_slump_before_reducer,
     [](Trial& trial, double x) { trial.tests.slump_before_reducer_mm = x; }},
    {Field::measured_air, [](Trial& trial, double x) { trial.tests.air_percent = x; }},
    {Field::measured_temperature, [](Trial& trial, double x) { trial.tests.temperature_c = x; }},
    {Field::target_slump, [](Trial& trial, double x) { trial.target_slump_mm = x; }},
    {Field::target_air, [](Trial& trial, double x) { trial.target_air_percent = x; }},
    {Field::intended_volume, [](Trial& trial, double x) { trial.intended_volume_m3 = x; }},
};

/// A change after which no yield can be found, and the field that must be named.
struct TrialFault {
    const char* what;
    Field field;
    void (*make)(Trial&);
};

constexpr TrialFault faulty[] = {
    {"no water", Field::charged_water, [](Trial& trial) { trial.water = {}; }},
    {"water twice", Field::charged_water,
     [](Trial& trial) { trial.water.m3 = core::Reading{0.002}; }},
    {"a material not weighed", Field::batched,
     [](Trial& trial) { trial.batched.erase(trial.batched.begin() + 1); }},
    {"a material twice", Field::batched,
     [](Trial& trial) { trial.batched.push_back(trial.batched[2]); }},
    {"a stranger", Field::batched, [](Trial& trial) { trial.batched[2].material.name = "grit"; }},
    {"no amount", Field::amount, [](Trial& trial) { trial.batched[0].amount = {}; }},
    {"an amount twice", Field::amount,
     [](Trial& trial) { trial.batched[3].amount.kg = core::Reading{0.04}; }},
    {"a volume of stone", Field::amount,
     [](Trial& trial) {
         trial.batched[1].amount = {std::nullopt, core::Reading{0.01}};
     }},
    {"no cementitious material", Field::batched,
     [](Trial& trial) { trial.batched[0].amount.kg->value = 0; }},
    {"no moisture", Field::moisture,
     [](Trial& trial) { trial.batched[1].material.aggregate.moisture_percent.reset(); }},
    {"no absorption", Field::absorption,
     [](Trial& trial) { trial.batched[2].material.aggregate.absorption_percent.reset(); }},
    {"a kind that is none", Field::kind,
     [](Trial& trial) { trial.batched[0].material.kind = static_cast<core::Kind>(99); }},
    {"a measure that is lighter when full", Field::measured_density,
     [](Trial& trial) {
         trial.tests.density = core::FilledMeasure{{4}, {20}, {0.007}};
     }},
    {"no slump", Field::measured_slump, [](Trial& trial) { trial.tests.slump.clear(); }},
    {"slumps out of order", Field::measured_slump,
     [](Trial& trial) { std::swap(trial.tests.slump[0], trial.tests.slump[1]); }},
};

} // namespace

TEST_CASE("A trial that states everything passes the door and yields") {
    INFO(told(core::faults_of(whole_trial())));
    const auto entered = core::complete(whole_trial());
    REQUIRE(std::holds_alternative<core::CompleteTrial>(entered));
    const auto& trial = std::get<core::CompleteTrial>(entered);
    const auto designed = core::proportions_of(trial->mix, tables());
    const auto yield = core::yield_of(trial, *designed, tables());
    REQUIRE(yield);
    // (20 - 4) kg over 7 L
    CHECK_THAT(yield->density_kg_m3, WithinAbs(16 / 0.007, 1e-9));
    CHECK(core::next_trial(trial, *yield, *designed, tables()));
}

TEST_CASE("A number of a trial that is none, or beyond all reach, is a fault of its field") {
    const double infinite = std::numeric_limits<double>::infinity();
    for (const TrialNumber& number : numbers) {
        for (const double wrong :
             {std::numeric_limits<double>::quiet_NaN(), infinite, -infinite, -1e9, 1e9}) {
            Trial trial = whole_trial();
            number.set(trial, wrong);
            const core::Faults faults = core::faults_of(trial);
            INFO(core::name_of(number.field) << " " << wrong << ": " << told(faults));
            CHECK(names(faults, number.field));
            CHECK(std::holds_alternative<core::Faults>(core::complete(trial)));
        }
    }
}

TEST_CASE("What a trial lacks or says twice is a fault of its field") {
    for (const TrialFault& wrong : faulty) {
        Trial trial = whole_trial();
        wrong.make(trial);
        const core::Faults faults = core::faults_of(trial);
        INFO(wrong.what << ": " << told(faults));
        CHECK(names(faults, wrong.field));
    }
}

TEST_CASE("A submittal whose stone states no absorption has a yield and no next trial") {
    core::SubmittedMix mix = whole_submittal();
    mix.amounts[1].material.edit().aggregate.absorption_percent.reset();
    const auto entered = core::complete(whole_trial(mix));
    const auto& trial = std::get<core::CompleteTrial>(entered);
    const auto designed = core::proportions_of(trial->mix, tables());
    const auto yield = core::yield_of(trial, *designed, tables());
    REQUIRE(yield);
    const auto next = core::next_trial(trial, *yield, *designed, tables());
    REQUIRE_FALSE(next);
    CHECK_THAT(std::get<std::string>(next.why().what.arguments.front().value),
               Contains("stone: absorption_percent"));
}
