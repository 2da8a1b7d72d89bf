// The way into the computation: each field of a mix left out or made impossible, one by one. What
// comes out is a fault that names the field, or a result whose figures are finite and close; never
// a number from nothing, never a crash.

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/reference/tables.hpp>

#include "mutators.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Equals;
using Catch::Matchers::WithinAbs;
using core::Field;

namespace {

const core::Vocabulary& words() {
    static const core::Vocabulary known = reference::vocabulary();
    return known;
}

const core::Tables& tables() {
    static const core::Tables known = reference::tables(core::UnitSystem::si);
    return known;
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

void demand_finite(const std::optional<double>& number) {
    CHECK((!number || std::isfinite(*number)));
}

/// Figures that are finite, amounts that are none below nothing, volumes that fill 1 m3.
void demand_sound(const core::Proportions& result) {
    double sum_m3 = 0;
    for (const core::Ingredient& ingredient : result.ingredients) {
        INFO(std::string{ingredient.name} << " " << ingredient.kg_m3);
        CHECK(std::isfinite(ingredient.kg_m3));
        CHECK(ingredient.kg_m3 >= 0);
        demand_finite(ingredient.dry_kg_m3);
        REQUIRE(ingredient.volume_m3);
        sum_m3 += *ingredient.volume_m3;
    }
    CHECK_THAT(sum_m3, WithinAbs(1, 1e-9));
    CHECK(std::isfinite(result.totals.w_cm));
    CHECK(result.totals.w_cm > 0);
    demand_finite(result.totals.fresh_density_kg_m3);
    for (const core::Step& step : result.worksheet.steps) {
        INFO(step.quantity);
        demand_finite(step.value);
    }
}

/// The faults of a mix, or its sound result, or why no mix follows.
core::Faults work(core::Mix mix) {
    auto entered = core::complete(std::move(mix), words());
    if (auto* faults = std::get_if<core::Faults>(&entered)) {
        REQUIRE_FALSE(faults->empty());
        return *faults;
    }
    const auto& whole = std::get<core::CompleteMix>(entered);
    const auto result = core::proportion(whole, tables());
    if (result) {
        demand_sound(*result);
        CHECK_FALSE(core::assess(whole, *result, tables()).empty());
    } else {
        CHECK_FALSE(result.why().ways_out.empty());
    }
    return {};
}

} // namespace

TEST_CASE("A mix that states every figure passes the door and closes") {
    REQUIRE_THAT(told(core::faults_of(whole_mix(), words())), Equals(""));
    const auto entered = core::complete(whole_mix(), words());
    const auto result = core::proportion(std::get<core::CompleteMix>(entered), tables());
    REQUIRE(result);
    demand_sound(*result);
}

TEST_CASE("A number that is none, or beyond all reach, is a fault of its field") {
    const double infinite = std::numeric_limits<double>::infinity();
    for (const NumberField& field : number_fields()) {
        for (const double number :
             {std::numeric_limits<double>::quiet_NaN(), infinite, -infinite, 1e300, -1e300}) {
            INFO(field.place << ": " << number);
            core::Mix mix = whole_mix();
            field.set(mix, number);
            CHECK(names(work(mix), field.field));
        }
    }
}

TEST_CASE("A number at the edge of what is possible gives a fault or a sound result") {
    for (const NumberField& field : number_fields()) {
        for (const double number : {-1.0, -0.0, 0.0, std::numeric_limits<double>::denorm_min(),
                                    1e-9, 0.5, 1.0, 40.0, 100.0, 1e6}) {
            INFO(field.place << ": " << number);
            core::Mix mix = whole_mix();
            field.set(mix, number);
            work(mix);
        }
    }
}

TEST_CASE("A number that is left out gives its own fault or a sound result") {
    for (const NumberField& field : number_fields()) {
        if (field.leave_out) {
            INFO(field.place);
            core::Mix mix = whole_mix();
            field.leave_out(mix);
            const core::Faults faults = work(mix);
            INFO(told(faults));
            CHECK((faults.empty() || (faults.size() == 1 && faults[0].field == field.field &&
                                      faults[0].problem == core::Problem::missing)));
        }
    }
}

TEST_CASE("What contradicts itself or is no word of the tables is a fault of its field") {
    for (const Contradiction& contradiction : contradictions()) {
        core::Mix mix = whole_mix();
        contradiction.make(mix);
        const core::Faults faults = work(mix);
        INFO(contradiction.what << ": " << told(faults));
        CHECK(names(faults, contradiction.field));
    }
}

TEST_CASE("A fault speaks in terms of the library") {
    core::Mix mix = whole_mix();
    core::Material stone = mix.coarse[0].material;
    stone.relative_density.reset();
    mix.coarse[0].material = stone;
    core::Material sand = mix.fine[0].material;
    sand.aggregate.fineness_modulus.reset();
    mix.fine[0].material = sand;
    mix.requirements.exposure = {"F9"};
    CHECK_THAT(told(core::faults_of(mix, words())),
               Equals("requirements.exposure has 'F9', which the tables do not know\n"
                      "coarse[0] stone: relative_density is missing; the volumes need it\n"
                      "fine[0] sand: aggregate.fineness_modulus is missing; the bulk volume of "
                      "the stone is found by it\n"));
}

TEST_CASE("A submittal passes the door whole, and with a fault for each thing wrong") {
    CHECK_THAT(told(core::faults_of(whole_submittal(), words())), Equals(""));
    for (const SubmittedFault& wrong : submitted_faults()) {
        core::SubmittedMix mix = whole_submittal();
        wrong.make(mix);
        const core::Faults faults = core::faults_of(mix, words());
        INFO(wrong.what << ": " << told(faults));
        CHECK(names(faults, wrong.field));
    }
}

TEST_CASE("A submittal without an aggregate's density is accepted without volumes") {
    core::SubmittedMix mix = whole_submittal();
    core::Material stone = mix.amounts[1].material;
    stone.relative_density.reset();
    mix.amounts[1].material = stone;
    const auto entered = core::complete(mix, words());
    REQUIRE(std::holds_alternative<core::CompleteSubmittedMix>(entered));
    const auto result = core::accept(std::get<core::CompleteSubmittedMix>(entered), tables());
    REQUIRE(result);
    const auto found = std::ranges::find(result->ingredients, "stone", &core::Ingredient::name);
    REQUIRE(found != result->ingredients.end());
    CHECK_FALSE(found->volume_m3);
}
