// What a trial was, its verdicts, and the lever of the next one.

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/trial/yield.hpp>

#include "base_mix.hpp"
#include "core/trial/next_mix.hpp"
#include "trial_support.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using core::Verdict;

namespace {

const std::string gain = "slump_gain: {4 fl oz/cwt: 2 in, 8 fl oz/cwt: 4 in, 12 fl oz/cwt: 5 in}";

/// The amounts of 1.5 ft3 of the base mix as it is designed, but for what a test changes.
struct Batched {
    std::string water = "8.89 lb";
    std::string cement = "35.58 lb";
    std::string stone = "94.86 lb";
    std::string reducer = "2.85 fl oz";
};

/// The base mix at a given ratio and air.
BaseMix base(const std::string& requirements = "", const std::string& more_of_reducer = "") {
    return {.requirements = "  air: 6 %\n" + requirements,
            .reducer = "water_reduction: {8 fl oz/cwt: 16 %, 12 fl oz/cwt: 22 %}" + more_of_reducer,
            .selections = "{w_cm: 0.40}"};
}

std::string trial(const std::string& tests, const Batched& batched = {}) {
    return "  batched: {water: " + batched.water + ", cement: " + batched.cement +
           ", stone: " + batched.stone + ", sand: 76.48 lb, reducer: " + batched.reducer +
           ", agent: 0.3 fl oz}\n  intended_volume: 1.5 ft3\n" + tests;
}

const std::string on_target = "  density: 143 lb/ft3\n  slump: 4 in\n  air: 6 %\n";

Tried slumped(const std::string& tests, const BaseMix& mix = base(), const Batched& batched = {}) {
    return tried(text(mix), trial("  density: 143 lb/ft3\n  air: 6 %\n" + tests, batched));
}

BaseMix with_gain(const std::string& more = "") {
    return base("", ", " + gain + more);
}

double dose_fl_oz_cwt(double ml_100kg) {
    return in_unit(inside(ml_100kg, "mL/100 kg"), "fl oz/cwt");
}

} // namespace

TEST_CASE("the intended volume follows from the cementitious material where none is stated") {
    const Tried tried_it =
        tried(text(base()), "  batched: {water: 9 lb, cement: 35.5 lb, stone: 95 lb, sand: 76 lb, "
                            "reducer: 2.8 fl oz, agent: 0 fl oz}\n" +
                                on_target);
    CHECK_THAT(tried_it.yield.intended_volume_m3,
               WithinRel(inside(35.5, "lb") / tried_it.designed.totals.binder_kg_m3, 1e-12));
}

TEST_CASE("without a meter the gravimetric air stands in, and the air is not checked") {
    const Tried trial_of = tried(text(base()), trial("  density: 143 lb/ft3\n  slump: 4 in\n"));
    CHECK(trial_of.yield.air_percent == trial_of.yield.gravimetric_air_percent);
    CHECK(trial_of.check("air.tolerance")->verdict == Verdict::not_checked);
    CHECK(trial_of.check("air.stated")->verdict == Verdict::not_checked);
    CHECK(trial_of.check("air.gap")->verdict == Verdict::not_checked);
}

TEST_CASE("verdicts on fresh tests") {
    struct Row {
        std::string tests;
        std::string id;
        Verdict verdict;
    };
    const std::string slump = "  slump: 4 in\n";
    const std::string density = "  density: 143 lb/ft3\n";
    const std::string air = "  air: 6 %\n";
    const Row row = GENERATE_REF(Catch::Generators::values<Row>({
        // ASTM C94: 1 in about a nominal 4 in, from memory, so that it never holds.
        {density + air + "  slump: 3 in\n", "slump.tolerance", Verdict::watch},
        {density + air + "  slump: 2 3/4 in\n", "slump.tolerance", Verdict::fails},
        {density + air + "  slump: 5 1/4 in\n", "slump.tolerance", Verdict::fails},
        // What is read at the mixer does not count where a later slump is there.
        {density + air + "  slump_after: {0 min: 7 in, 30 min: 4 in}\n", "slump.tolerance",
         Verdict::watch},
        {density + air + "  slump_after: {0 min: 4 in, 30 min: 2 in}\n", "slump.tolerance",
         Verdict::fails},
        // ±1.5 points.
        {density + slump + "  air: 7.5 %\n", "air.tolerance", Verdict::holds},
        {density + slump + "  air: 7.6 %\n", "air.tolerance", Verdict::fails},
        {density + slump + "  air: 4.4 %\n", "air.tolerance", Verdict::fails},
        {density + slump + air, "air.gap", Verdict::holds},
        {"  density: 141 lb/ft3\n" + slump + air, "air.gap", Verdict::watch},
        // Three points apart a figure of the trial is wrong: common practice, no source.
        {"  density: 137 lb/ft3\n" + slump + air, "air.gap", Verdict::fails},
        {density + slump + air, "temperature", Verdict::not_checked},
        {density + slump + air + "  temperature: 95 degF\n", "temperature", Verdict::holds},
        {density + slump + air + "  temperature: 96 degF\n", "temperature", Verdict::fails},
        {density + slump + air + "  temperature: 54 degF\n", "temperature", Verdict::watch},
        {density + slump + air + "  temperature: 32 degF\n", "temperature", Verdict::fails},
        // ASTM C138: two operators may differ by 2.3 lb/ft3, 1.6 % of the yield.
        {density + slump + air, "yield.relative", Verdict::watch}, // a precision from memory
        {"  density: 140 lb/ft3\n" + slump + air, "yield.relative", Verdict::watch},
        {"  density: 136 lb/ft3\n" + slump + air, "yield.relative", Verdict::fails},
    }));
    INFO(row.tests << row.id);
    const Tried trial_of = tried(text(base()), trial(row.tests));
    REQUIRE(trial_of.check(row.id) != nullptr);
    CHECK(trial_of.check(row.id)->verdict == row.verdict);
}

TEST_CASE("a permitted window counts whatever target a trial has of its own") {
    const BaseMix window = base("  slump_window: 3 1/2 in to 4 1/2 in\n");
    const Tried of_window = slumped("  slump: 3 in\n", window);
    CHECK(of_window.check("slump.window")->verdict == Verdict::fails);
    CHECK(of_window.check("slump.tolerance") == nullptr);
    const Tried of_both = slumped("  slump: 3 in\n  target: {slump: 3 in}\n", window);
    CHECK(of_both.check("slump.window")->verdict == Verdict::fails);
    CHECK(of_both.check("slump.tolerance")->verdict == Verdict::watch); // a limit from memory
}

TEST_CASE("verdicts on batching") {
    struct Row {
        Batched batched;
        std::string id;
        Verdict verdict;
    };
    const Row row = GENERATE(Catch::Generators::values<Row>({
        {{}, "batching.cement", Verdict::holds},
        {{.cement = "35.1 lb"}, "batching.cement", Verdict::fails},
        // A small batch may be over by 4 %, never under (ASTM C94, from memory).
        {{.cement = "36.5 lb"}, "batching.cement", Verdict::watch},
        {{.cement = "37.2 lb"}, "batching.cement", Verdict::fails},
        // Asked are 640.5 x 1.5 / 27 = 35.5833 lb; 1 %: 35.2275 to 35.9392 lb, 4 % over 37.0067
        // lb. The last digit written leaves half of its step open.
        {{.cement = "36 lb"}, "batching.cement", Verdict::holds},
        {{.cement = "36.0 lb"}, "batching.cement", Verdict::watch},
        {{.cement = "35.938 lb"}, "batching.cement", Verdict::holds},
        {{.cement = "35.940 lb"}, "batching.cement", Verdict::watch},
        {{.cement = "37.00 lb"}, "batching.cement", Verdict::watch},
        {{.cement = "37.02 lb"}, "batching.cement", Verdict::fails},
        {{.cement = "35 lb"}, "batching.cement", Verdict::holds},
        {{.cement = "35.0 lb"}, "batching.cement", Verdict::fails},
        {{.cement = "35.229 lb"}, "batching.cement", Verdict::holds},
        {{.cement = "35.227 lb"}, "batching.cement", Verdict::holds},
        {{.cement = "35.226 lb"}, "batching.cement", Verdict::fails},
        {{.stone = "97.5 lb"}, "batching.stone", Verdict::fails},
        // Water may be held back or added on purpose: what counts is the w/cm found.
        {{.water = "9.2 lb"}, "batching.water", Verdict::watch},
        {{.reducer = "2.7 fl oz"}, "batching.reducer", Verdict::fails},
    }));
    INFO(row.id);
    CHECK(slumped("  slump: 4 in\n", base(), row.batched).check(row.id)->verdict == row.verdict);
    // Dosed as needed: there is nothing to hold it against.
    CHECK(slumped("  slump: 4 in\n", base(), row.batched).check("batching.agent") == nullptr);
}

TEST_CASE("the w/cm found is held against the limit") {
    const BaseMix salted = base("  exposure: [F2, S1, W1, C2]\n");
    CHECK(slumped("  slump: 4 in\n", salted, {.water = "12 lb"}).check("w_cm.exposure")->verdict ==
          Verdict::fails);
}

TEST_CASE("without a high-range reducer water is the lever") {
    // 1 in of slump asks 10 lb/yd3, a point of air 5 lb/yd3.
    const std::string plain = R"(boardmark: 1
title: Plain
reporting: us
requirements: {strength: 4000 psi, slump: 4 in, air: 6 %}
materials:
  cement: {kind: portland cement}
  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.68,
          absorption: 0.5 %, dry_rodded_density: 100 lb/ft3, moisture: 2 %}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, fineness_modulus: 2.8,
         moisture: 6 %}
mixture: {binder: {cement: 100 %}, coarse: {stone: 100 %}, fine: {sand: 100 %}}
selections: {w_cm: 0.45}
)";
    const auto water_lb = [&](const std::string& tests) {
        const Tried trial_of =
            tried(plain, "  batched: {water: 11.9 lb, cement: 37.7 lb, stone: 94.9 lb, "
                         "sand: 70 lb}\n  density: 143 lb/ft3\n" +
                             tests);
        const core::NextTrial next = trial_of.next();
        CHECK(next.lever == core::Lever::water);
        return in_unit(next.proportions.totals.water_kg_m3 -
                           trial_of.yield.found.totals.water_kg_m3,
                       "lb/yd3");
    };
    CHECK_THAT(water_lb("  slump: 4 in\n  air: 6 %\n"), WithinAbs(0, 1e-9));
    CHECK_THAT(water_lb("  slump: 3 in\n  air: 6 %\n"), WithinAbs(10, 1e-9));
    CHECK_THAT(water_lb("  slump: 6 in\n  air: 6 %\n"), WithinAbs(-20, 1e-9));
    CHECK_THAT(water_lb("  slump: 4 in\n  air: 7 %\n"), WithinAbs(5, 1e-9));
    CHECK_THAT(water_lb("  slump: 4 in\n  air: 4 %\n"), WithinAbs(-10, 1e-9));
}

TEST_CASE("a reducer that was left out comes back with the mix file's water") {
    const Tried trial_of = slumped("  slump: 1/2 in\n", base(), {.reducer = "0 fl oz"});
    const core::NextTrial next = trial_of.next();
    CHECK(next.lever == core::Lever::dose);
    CHECK_THAT(next.proportions.totals.water_kg_m3,
               WithinRel(trial_of.designed.totals.water_kg_m3, 1e-12));
    CHECK_THAT(ingredient(next.proportions, "reducer").kg_m3,
               WithinRel(ingredient(trial_of.designed, "reducer").kg_m3, 1e-9));
    CHECK(next.advice.front().text.find("was left out") != std::string::npos);
}

TEST_CASE("a dose above the highest fails and is not repeated") {
    const BaseMix capped = with_gain(", maximum_dose: 8 fl oz/cwt");
    const Tried trial_of = slumped("  slump: 3 in\n", capped, {.reducer = "3.6 fl oz"});
    CHECK(trial_of.check("dose.maximum")->verdict == Verdict::fails);
    CHECK_THAT(dose_fl_oz_cwt(*trial_of.check("dose.maximum")->value),
               WithinAbs(3.6 / 0.3558, 1e-6)); // fl oz for 35.58 lb of cement
    CHECK_THAT(dose_fl_oz_cwt(trial_of.next().dose->next_ml_100kg), WithinAbs(8, 1e-6));
    CHECK(slumped("  slump: 3 in\n", capped).check("dose.maximum")->verdict == Verdict::holds);

    // 8 fl oz/cwt of 35.58 lb are 2.8464 fl oz; the scale may carry it 3 % past (ASTM C94, from
    // memory).
    const auto dosed = [&](const std::string& reducer) {
        return slumped("  slump: 3 in\n", capped, {.reducer = reducer})
            .check("dose.maximum")
            ->verdict;
    };
    CHECK(dosed("2.931 fl oz") == Verdict::holds);
    CHECK(dosed("2.933 fl oz") == Verdict::fails);
}

TEST_CASE("doses count over the mix's cementitious material where the trial's is off") {
    // 1.5 ft3 ask 35.58 lb of cement. Whatever of it went in, 2.85 fl oz over 35.58 lb are 8.01
    // fl oz/cwt, and the next batch holds the agent of this one. Without a slump gain one step of
    // 10 % follows: half the cement leaves more water per volume, so that the mix's stiffens it.
    const auto [cement, step] = GENERATE(table<std::string, double>({
        {"17.79 lb", 1.1},
        {"71.16 lb", 0.9},
    }));
    CAPTURE(cement);
    const Tried trial_of = slumped("  slump: 4 in\n", base(), {.cement = cement});
    const core::NextTrial next = trial_of.next();
    CHECK_THAT(dose_fl_oz_cwt(next.dose->next_ml_100kg), WithinRel(step * 2.85 / 0.3558, 1e-3));
    CHECK_THAT(next.dose->next_ml_100kg, WithinRel(step * next.dose->found_ml_100kg, 1e-9));
    const auto agent = std::ranges::find(next.batch.items, "agent", &core::BatchItem::name);
    CHECK_THAT(agent->kg, WithinRel(trial_of.yield.weighed_kg.at("agent"), 1e-6));
    CHECK(std::ranges::any_of(next.advice, [](const core::Phrase& one) {
        return one.text.find("cementitious material than the mix asks for") != std::string::npos;
    }));
}

TEST_CASE("a dose above all that its data know is watched, in the trial and in the next") {
    // 35.58 lb at 12 fl oz/cwt, the last point, are 4.27 fl oz; 3 % past it: 4.40.
    const auto verdict = [](const std::vector<core::Check>& checks) {
        const auto found = std::ranges::find(checks, "dose.maximum", &core::Check::id);
        return found == checks.end() ? std::nullopt : std::optional{found->verdict};
    };
    const auto dosed = [](const std::string& reducer, const BaseMix& mix) {
        return slumped("  slump: 4 in\n", mix, {.water = "8.8 lb", .reducer = reducer});
    };
    const Tried over = dosed("4.5 fl oz", base());
    CHECK(verdict(over.checks) == Verdict::watch);
    CHECK(verdict(over.next().checks) == Verdict::watch);
    CHECK(verdict(dosed("4.3 fl oz", base()).next().checks) == std::nullopt);
    const Tried capped = dosed("4.5 fl oz", base("", ", maximum_dose: 12 fl oz/cwt"));
    CHECK(verdict(capped.checks) == Verdict::fails);
    CHECK(verdict(capped.next().checks) == Verdict::holds); // held at the highest
}

TEST_CASE("water that was held back comes back under a high-range reducer") {
    const Tried trial_of = slumped("  slump: 1 in\n", base(), {.water = "6 lb"});
    CHECK_THAT(trial_of.next().proportions.totals.water_kg_m3,
               WithinRel(trial_of.designed.totals.water_kg_m3, 1e-12));
}

TEST_CASE("a trial that flows enough gets no more water for its slump before the reducer") {
    const BaseMix flowing{.requirements = "  air: 6 %\n  slump_before_reducer: 2 in\n",
                          .reducer = gain,
                          .selections = "{w_cm: 0.40}",
                          .slump = "7 in"};
    const Tried trial_of = slumped("  slump: 9 in\n  slump_before_reducer: 0 in\n", flowing);
    CHECK_THAT(trial_of.next().proportions.totals.water_kg_m3,
               WithinRel(trial_of.yield.found.totals.water_kg_m3, 1e-12));
}

TEST_CASE("a slump that no dose explains is said to be that") {
    const Tried trial_of = slumped("  slump: 10 in\n", with_gain(), {.water = "8.8 lb"});
    const core::NextTrial next = trial_of.next();
    CHECK(next.dose->next_ml_100kg == 0);
    CHECK_FALSE(ingredient(next.proportions, "reducer").by_trial);
    CHECK(next.advice.back().text.find("No dose of") != std::string::npos);
}

TEST_CASE("gravimetric air that cannot be air stands in for nothing") {
    const std::string density = GENERATE(std::string{"155"}, "115");
    INFO(density);
    CHECK_THROWS_AS(
        tried(text(base()), trial("  density: " + density + " lb/ft3\n  slump: 4 in\n")),
        core::Unresolved);
}

TEST_CASE("the next trial goes by the ratio of the file, not by the one of its least binder") {
    const BaseMix lean = {.requirements = "  air: 6 %\n  minimum_binder: 640 lb/yd3\n",
                          .selections = "{w_cm: 0.50}"};
    const Tried trial_of = slumped("  slump: 4 in\n", lean);
    REQUIRE(trial_of.designed.selection.w_cm_governed_by == core::Governor::minimum_binder);
    CHECK_THAT(in_unit(trial_of.next().proportions.totals.binder_kg_m3, "lb/yd3"),
               WithinAbs(640, 1e-6));
}

TEST_CASE("the next trial goes by the ratio given, else by the one that governed before the least "
          "binder") {
    // ACI 318-19: C2 allows 0.40; 4000 psi as the average with air takes 0.48 (ACI 211.1-91 Table
    // 6.3.4(a)), 3000 psi 0.59. A binder of 900 lb/yd3 is more than each asks.
    const auto [strength, exposure, more, w_cm] =
        GENERATE(table<std::string, std::string, std::string, double>({
            {"4000 psi", "[F0, C0]", "", 0.48},
            {"3000 psi", "[F0, C0]", "", 0.59},
            {"4000 psi", "[F0, C2]", "", 0.40},
            {"4000 psi", "[F0, C0]", ", w_cm: 0.50", 0.50}, // the one given
            // F2 allows 0.45 where 5000 psi take 0.40: asked by the exposure alone
            {"5000 psi", "[F2, C0]", ", w_cm: by exposure", 0.45},
        }));
    CAPTURE(strength, exposure, more);
    const BaseMix lean = {.requirements = "  air: 6 %\n  minimum_binder: 900 lb/yd3\n"
                                          "  exposure: " +
                                          exposure + "\n  average_strength: " + strength +
                                          "\n  average_strength_basis: a test\n",
                          .selections = "{air: 6 %" + more + "}",
                          .strength = strength};
    const core::AnyCompleteMix mix = read(text(lean), input::Purpose::proportion);
    const auto designed =
        made(core::proportion(std::get<core::CompleteMix>(mix), reference::tables_for(mix)));
    REQUIRE(designed.selection.w_cm_governed_by == core::Governor::minimum_binder);
    CHECK_THAT(core::ratio_before_minimum(mix, designed.selection), WithinAbs(w_cm, 1e-9));
}

TEST_CASE("with a high-range reducer the water stays and the dose answers by the slump gain") {
    const auto next = [](const std::string& slump, const std::string& more = "") {
        return slumped("  slump: " + slump + "\n", with_gain(more), {.water = "8.8 lb"}).next();
    };
    const Tried trial_of = slumped("  slump: 3 in\n", with_gain(), {.water = "8.8 lb"});
    const double found_ml = trial_of.next().dose->found_ml_100kg;
    const double found_oz = dose_fl_oz_cwt(found_ml);
    CHECK(trial_of.next().lever == core::Lever::dose);
    CHECK_THAT(trial_of.next().proportions.totals.water_kg_m3,
               WithinRel(trial_of.yield.found.totals.water_kg_m3, 1e-12));
    // The trial was dosed at almost 8 fl oz/cwt, where half an inch follows each fl oz/cwt below
    // and a quarter above.
    CHECK_THAT(dose_fl_oz_cwt(next("4 in").dose->next_ml_100kg), WithinAbs(found_oz, 1e-9));
    CHECK_THAT(dose_fl_oz_cwt(next("5 in").dose->next_ml_100kg),
               WithinAbs(6 + (found_oz - 8) / 2, 1e-6));
    CHECK_THAT(dose_fl_oz_cwt(next("3 1/2 in").dose->next_ml_100kg), WithinAbs(found_oz + 2, 1e-6));
    // Above what the data tell the last point is used, and 'maximum_dose' holds everything.
    CHECK_THAT(dose_fl_oz_cwt(next("1 in").dose->next_ml_100kg), WithinAbs(12, 1e-6));
    CHECK_THAT(dose_fl_oz_cwt(next("1 in", ", maximum_dose: 9 fl oz/cwt").dose->next_ml_100kg),
               WithinAbs(9, 1e-6));
    CHECK(next("9 in").proportions.ingredients.size() == 7); // no dose is left, the row stays
}

TEST_CASE("without a slump gain the dose goes by one small step") {
    // 10 % of the dose: common practice, no source.
    const auto ratio = [](const std::string& slump) {
        const core::NextTrial next =
            slumped("  slump: " + slump + "\n", base(), {.water = "8.8 lb"}).next();
        return next.dose->next_ml_100kg / next.dose->found_ml_100kg;
    };
    CHECK_THAT(ratio("3 in"), WithinAbs(1.1, 1e-9));
    CHECK_THAT(ratio("1 in"), WithinAbs(1.1, 1e-9));
    CHECK_THAT(ratio("5 in"), WithinAbs(0.9, 1e-9));
    CHECK_THAT(ratio("4.1 in"), WithinAbs(1, 1e-9));
}

TEST_CASE("water beyond the mix file's does not stay under a high-range reducer") {
    const Tried trial_of = slumped("  slump: 5 in\n", with_gain(), {.water = "11 lb"});
    const core::NextTrial next = trial_of.next();
    CHECK_THAT(next.proportions.totals.water_kg_m3,
               WithinRel(trial_of.designed.totals.water_kg_m3, 1e-12));
    // 24 lb/yd3 of water less take more slump than the inch that was too much: the dose rises.
    CHECK(next.dose->next_ml_100kg > next.dose->found_ml_100kg);
}

TEST_CASE("water corrects only the slump before the reducer") {
    const BaseMix flowing{.requirements = "  air: 6 %\n  slump_before_reducer: 2 in\n",
                          .reducer = gain,
                          .selections = "{w_cm: 0.40}",
                          .slump = "7 in"};
    const Tried trial_of = slumped("  slump: 6 in\n  slump_before_reducer: 1 in\n", flowing);
    const core::NextTrial next = trial_of.next();
    CHECK_THAT(
        in_unit(next.proportions.totals.water_kg_m3 - trial_of.yield.found.totals.water_kg_m3,
                "lb/yd3"),
        WithinAbs(10, 1e-9));
    // The inch before the reducer is the inch that was missing after it.
    CHECK_THAT(next.dose->next_ml_100kg, WithinRel(next.dose->found_ml_100kg, 1e-9));
}

TEST_CASE("the coarse aggregate follows the mix file, or the trial") {
    const Tried selected = slumped("  slump: 4 in\n", base(), {.stone = "90 lb"});
    const Tried kept = slumped("  slump: 4 in\n  coarse: as trial\n", base(), {.stone = "90 lb"});
    CHECK_THAT(ingredient(selected.next().proportions, "stone").kg_m3,
               WithinRel(ingredient(selected.designed, "stone").kg_m3, 1e-12));
    CHECK_THAT(ingredient(kept.next().proportions, "stone").kg_m3,
               WithinRel(ingredient(kept.yield.found, "stone").kg_m3, 1e-12));
}

TEST_CASE("a submitted mix has a next trial as well") {
    const Tried trial_of =
        tried(submitted_mix(),
              "  batched: {water: 5.6 kg, cement: 19 kg, stone: 50.75 kg, sand: 40.7 kg}\n"
              "  density: 2330 kg/m3\n  slump: 80 mm\n  air: 2 %\n");
    const core::NextTrial next = trial_of.next();
    CHECK_THAT(next.proportions.totals.water_kg_m3 - trial_of.yield.found.totals.water_kg_m3,
               WithinAbs(4, 1e-9)); // 20 mm at 2 kg/m3 per 10 mm
    CHECK_THAT(next.proportions.totals.w_cm, WithinRel(170.0 / 380, 1e-12));
    CHECK_THAT(ingredient(next.proportions, "stone").kg_m3, WithinRel(1000.0, 1e-12));
    CHECK_THAT(next.proportions.totals.volume_m3.value(), WithinRel(1.0, 1e-12));
}

TEST_CASE("the uncertainty of the yield comes from the last digits") {
    // Net 35.5 lb from two readings to 0.1 lb, a measure to 0.001 ft3, batch masses to 0.01 lb:
    // sqrt(2 (0.1/35.5)^2/12 + (0.001/0.25)^2/12 + small) = 0.163 %, twice that.
    const Tried trial_of =
        tried(text(base()), trial("  measure: {full: 43.1 lb, empty: 7.6 lb, volume: 0.250 ft3}\n"
                                  "  slump: 4 in\n  air: 6 %\n"));
    CHECK_THAT(100 * trial_of.yield.volume_uncertainty_m3 / trial_of.yield.volume_m3,
               WithinAbs(0.326, 0.003));
}
