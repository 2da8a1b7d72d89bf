// What studies of many mixes change: which figure a key names, what a mix says against it, and the
// mix with it.

#include <boardmark/core/many/variable.hpp>
#include <boardmark/core/mix/blended_aggregate.hpp>

#include "../support.hpp"
#include "base_mix.hpp"
#include "core/many/variable_step.hpp"

#include <catch2/catch.hpp>

#include <memory>
#include <string>
#include <vector>

using namespace boardmark;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;
using core::DoseBasis;
using core::Measure;
using core::Variable;
using core::Varied;

namespace {

core::Mix mix_of(const std::string& selections = "{}",
                 const std::string& binder = "{cement: 100 %}") {
    test::BaseMix base;
    base.selections = selections;
    base.binder = binder;
    return *std::get<core::CompleteMix>(test::read(test::text(base), input::Purpose::proportion));
}

/// Three binders by their percent, whatever the door would say of it.
core::Mix of_three(double cement, double slag, double ash) {
    core::Mix mix = mix_of();
    mix.binder.assign(3, mix.binder.front());
    const char* names[] = {"cement", "slag", "ash"};
    const double percents[] = {cement, slag, ash};
    for (std::size_t i = 0; i < 3; ++i) {
        core::Material material = *mix.binder[i].material;
        material.name = names[i];
        mix.binder[i] = {core::SharedMaterial{material}, percents[i]};
    }
    return mix;
}

} // namespace

TEST_CASE("a key and the figure that it names are one") {
    for (const core::VariedKey& known : core::varied_keys()) {
        const std::string key =
            std::string{known.key} + (known.key.ends_with('.') ? "north slag" : "");
        INFO(key);
        const auto variable = core::variable_named(key);
        REQUIRE(variable);
        CHECK(variable->figure == known.figure);
        CHECK(core::key_of(*variable) == key);
    }
    for (const char* none : {"", "share.", "dose.", "share", "w_cm.", "w_cm2", "slump"}) {
        INFO(none);
        CHECK_FALSE(core::variable_named(none));
    }
}

TEST_CASE("a figure is shown and stepped in the unit that a mix is ordered in") {
    // Steps: common practice, no source. A pound to the cubic yard; half a fluid ounce
    // (29.5735295625 mL) to the hundredweight (45.359237 kg), 25 mL to 100 kg.
    struct Row {
        Variable variable;
        Measure measure;
        double us_step;
        double si_step;
    };
    const double pound = test::inside(1, "lb/yd3");
    for (const Row& row : {
             Row{{Varied::w_cm}, Measure::w_cm, 0.01, 0.01},
             Row{{Varied::water}, Measure::concentration, pound, 1},
             Row{{Varied::binder}, Measure::concentration, pound, 1},
             Row{{Varied::air}, Measure::percent, 0.5, 0.5},
             Row{{Varied::coarse_volume}, Measure::bulk_volume, 0.01, 0.01},
             Row{{Varied::coarse_adjustment}, Measure::percent, 1, 1},
             Row{{Varied::fine_share}, Measure::percent, 1, 1},
             Row{{Varied::share, "slag"}, Measure::percent, 1, 1},
             Row{{Varied::dose, "reducer", DoseBasis::volume},
                 Measure::dose,
                 0.5 * 29.5735295625e-6 / 45.359237,
                 25e-6 / 100},
             Row{{Varied::dose, "reducer", DoseBasis::percent}, Measure::percent, 0.05, 0.05},
         }) {
        INFO(core::key_of(row.variable));
        CHECK(core::measure_of(row.variable) == row.measure);
        // A pound to the cubic yard is known there to ten digits.
        CHECK_THAT(core::step_of(row.variable, core::UnitSystem::us),
                   WithinRel(row.us_step, 1e-10));
        CHECK_THAT(core::step_of(row.variable, core::UnitSystem::si),
                   WithinRel(row.si_step, 1e-12));
        // 1 m3/kg of product is 1e6 mL to each of 100 kg; all else is shown as it is.
        const double factor = row.measure == Measure::dose ? 1e8 : 1;
        CHECK_THAT(core::shown_value(row.variable, 0.002), WithinRel(0.002 * factor, 1e-12));
    }
}

TEST_CASE("what a mix says against varying a figure") {
    const core::Mix plain = mix_of();
    core::Mix blended = plain;
    blended.blend = std::make_shared<const core::AggregateBlend>();
    core::Mix by_exposure = mix_of("{binder: 600 lb/yd3}");
    by_exposure.selections.w_cm_by_exposure = true;
    core::Mix british = plain;
    british.method = core::Method::bre;
    core::Mix indian = plain;
    indian.method = core::Method::is_10262;
    const char* third = "the third follows";
    const char* target = "blends the aggregates to its target";
    struct Row {
        core::Mix mix;
        Variable variable;
        const char* why; ///< nothing: it may vary
    };
    for (const Row& row : {
             // Of w/cm, water and binder any two give the third.
             Row{mix_of("{water: 300 lb/yd3, binder: 600 lb/yd3}"), {Varied::w_cm}, third},
             Row{mix_of("{w_cm: 0.45, binder: 600 lb/yd3}"), {Varied::water}, third},
             Row{by_exposure, {Varied::water}, third},
             Row{mix_of("{w_cm: 0.45, water: 300 lb/yd3}"), {Varied::binder}, third},
             Row{mix_of("{water: 300 lb/yd3}"), {Varied::w_cm}, nullptr},
             Row{mix_of("{binder: 600 lb/yd3}"), {Varied::w_cm}, nullptr},
             Row{mix_of("{w_cm: 0.45, binder: 600 lb/yd3}"), {Varied::w_cm}, nullptr},
             Row{mix_of("{w_cm: 0.45}"), {Varied::water}, nullptr},
             Row{mix_of("{binder: 600 lb/yd3}"), {Varied::water}, nullptr},
             Row{mix_of("{w_cm: 0.45}"), {Varied::binder}, nullptr},
             Row{mix_of("{water: 300 lb/yd3}"), {Varied::binder}, nullptr},
             Row{mix_of("{w_cm: 0.45, water: 300 lb/yd3}"), {Varied::air}, nullptr},
             // Each method has its own way to the stone (the door refuses another).
             Row{british, {Varied::coarse_volume}, "the method of the file"},
             Row{british, {Varied::coarse_adjustment}, "the method of the file"},
             Row{british, {Varied::fine_share}, "the method of the file"},
             Row{british, {Varied::water}, nullptr},
             Row{indian, {Varied::coarse_volume}, "the method of the file"},
             Row{indian, {Varied::coarse_adjustment}, "the method of the file"},
             Row{indian, {Varied::fine_share}, nullptr},
             // Shares of a blend that is sought follow from its target; the binder is no part of
             // it.
             Row{blended, {Varied::coarse_volume}, target},
             Row{blended, {Varied::coarse_adjustment}, target},
             Row{blended, {Varied::fine_share}, target},
             Row{blended, {Varied::share, "stone"}, target},
             Row{blended, {Varied::share, "cement"}, "all of its blend"},
             Row{blended, {Varied::water}, nullptr},
             Row{plain, {Varied::coarse_volume}, nullptr},
             Row{plain, {Varied::fine_share}, nullptr},
             // A share needs another that gives way.
             Row{plain, {Varied::share, "stone"}, "all of its blend"},
             Row{plain, {Varied::share, "slag"}, "no binder and no aggregate"},
             Row{mix_of("{}", "{cement: 70 %, slag: 30 %}"), {Varied::share, "slag"}, nullptr},
             Row{plain, {Varied::dose, "retarder"}, "no admixture of the mixture"},
             Row{plain, {Varied::dose, "reducer"}, nullptr},
             Row{plain, {Varied::dose, "agent"}, nullptr},
         }) {
        INFO(core::key_of(row.variable));
        const auto why = core::why_not_varied(row.variable, row.mix);
        CHECK(why.has_value() == (row.why != nullptr));
        if (why && row.why) {
            CHECK_THAT(why->text, Contains(row.why));
        }
    }
}

TEST_CASE("what speaks against varying figures together, the door would refuse at every point") {
    core::Mix by_exposure = mix_of();
    by_exposure.selections.w_cm_by_exposure = true;
    const core::Mix plain = mix_of();
    const core::Mix of_water = mix_of("{water: 300 lb/yd3}");
    struct Row {
        const core::Mix& mix;
        std::vector<Varied> figures;
        bool can;
    };
    using enum Varied;
    for (const Row& row : {
             Row{plain, {w_cm, air}, true},
             Row{plain, {w_cm, water}, true},
             Row{plain, {water, binder}, true},
             Row{plain, {w_cm, water, binder}, false},
             Row{of_water, {w_cm, air}, true},
             Row{of_water, {w_cm, water}, true},
             Row{of_water, {w_cm, binder}, false},
             Row{by_exposure, {w_cm, water}, true},
             Row{by_exposure, {water, air}, true},
             Row{by_exposure, {w_cm, water, binder}, false},
             Row{by_exposure, {binder}, false},
             Row{by_exposure, {water, binder}, false},
             Row{by_exposure, {binder, w_cm}, true},
             Row{plain, {coarse_volume, w_cm}, true},
             Row{plain, {coarse_volume, fine_share}, false},
             Row{plain, {coarse_volume, coarse_adjustment}, false},
             Row{plain, {coarse_adjustment, fine_share}, false},
         }) {
        std::vector<Variable> variables;
        std::vector<double> values;
        for (const Varied figure : row.figures) {
            variables.push_back({figure});
            values.push_back(figure == w_cm            ? 0.45
                             : figure == coarse_volume ? 0.6
                             : figure == water         ? 170
                             : figure == binder        ? 350
                             : figure == fine_share    ? 40
                                                       : 5);
        }
        CAPTURE(values, row.can);
        CHECK(core::why_not_together(variables, row.mix).has_value() == !row.can);
        const core::Mix at = core::VariedMix(row.mix, variables).at(values);
        CHECK(std::holds_alternative<core::CompleteMix>(
                  core::complete(at, reference::vocabulary())) == row.can);
    }
}

TEST_CASE("a mix at a value has that value, and nothing that speaks against it") {
    struct Row {
        const char* selections;
        Variable variable;
        double value;
        std::optional<double> written;
    };
    const double dose = 8 * 29.5735295625e-6 / 45.359237; // 8 fl oz/cwt
    for (const Row& row : {
             Row{"{}", {Varied::w_cm}, 0.42, std::nullopt},
             Row{"{w_cm: 0.45}", {Varied::w_cm}, 0.42, 0.45},
             Row{"{}", {Varied::water}, 170, std::nullopt},
             Row{"{water: 300 lb/yd3}", {Varied::water}, 170, test::inside(300, "lb/yd3")},
             Row{"{binder: 600 lb/yd3}", {Varied::binder}, 340, test::inside(600, "lb/yd3")},
             Row{"{air: 2 %}", {Varied::air}, 3, 2.},
             Row{"{coarse_volume: 0.6}", {Varied::coarse_volume}, 0.65, 0.6},
             Row{"{coarse_adjustment: -5 %}", {Varied::coarse_adjustment}, 5, -5.},
             Row{"{fine_share: 40 %}", {Varied::fine_share}, 38, 40.},
             // What would stand beside it and decide otherwise is gone.
             Row{"{fine_share: 40 %}", {Varied::coarse_volume}, 0.65, std::nullopt},
             Row{"{coarse_adjustment: -5 %}", {Varied::coarse_volume}, 0.65, std::nullopt},
             Row{"{coarse_adjustment: -5 %}", {Varied::fine_share}, 38, std::nullopt},
             Row{"{fine_share: 40 %}", {Varied::coarse_adjustment}, 5, std::nullopt},
             Row{"{coarse_volume: 0.6}", {Varied::fine_share}, 38, std::nullopt},
             Row{"{coarse_volume: 0.6}", {Varied::coarse_adjustment}, 5, std::nullopt},
             Row{"{}", {Varied::dose, "reducer"}, dose / 2, dose},
             Row{"{}", {Varied::dose, "reducer", DoseBasis::percent}, 0.5, std::nullopt},
             Row{"{}", {Varied::dose, "agent"}, dose / 8, std::nullopt}, // as needed
         }) {
        INFO(row.selections << ": " << core::key_of(row.variable));
        const core::VariedMix varied{mix_of(row.selections), {row.variable}};
        CHECK(varied.written(0).has_value() == row.written.has_value());
        if (varied.written(0) && row.written) {
            CHECK_THAT(*varied.written(0), WithinRel(*row.written, 1e-9));
        }
        const core::Mix at = varied.at(std::vector{row.value});
        CHECK(core::VariedMix(at, {row.variable}).written(0) == row.value);
        const core::Selections& has = at.selections;
        const int ways_to_the_stone = has.coarse_volume.has_value() +
                                      has.fine_share_percent.has_value() +
                                      has.coarse_adjustment_percent.has_value();
        CHECK(ways_to_the_stone <= 1);
    }
}

TEST_CASE("a varied w/cm is no longer that of the exposure, and a least binder stays") {
    core::Mix mix = mix_of();
    mix.selections.w_cm_by_exposure = true;
    mix.requirements.minimum_binder_kg_m3 = 400;
    for (const auto figure : {Varied::w_cm, Varied::binder, Varied::air}) {
        const core::Mix at = core::VariedMix(mix, {{figure}}).at(std::vector{0.42});
        CHECK(at.selections.w_cm_by_exposure == (figure != Varied::w_cm));
        CHECK(at.requirements.minimum_binder_kg_m3 == 400.);
    }
}

TEST_CASE("what varied shares leave goes to the others as it was between them") {
    struct Row {
        core::Mix mix;
        std::vector<Variable> variables;
        std::vector<double> values;
        std::vector<double> shares; ///< by hand
    };
    const Variable slag{Varied::share, "slag"};
    const Variable ash{Varied::share, "ash"};
    const Variable cement{Varied::share, "cement"};
    for (const Row& row : {
             Row{of_three(60, 30, 10), {slag}, {44}, {48, 44, 8}}, // 56 as 60 to 10
             Row{of_three(60, 30, 10), {slag, ash}, {20, 15}, {65, 20, 15}},
             Row{of_three(60, 30, 10), {ash, slag}, {15, 20}, {65, 20, 15}},
             Row{of_three(0, 100, 0), {slag}, {40}, {30, 40, 30}}, // nothing between them: halves
             // All of them varied: each has its own, whatever they add up to.
             Row{of_three(60, 30, 10), {cement, slag, ash}, {50, 30, 15}, {50, 30, 15}},
             Row{of_three(60, 30, 10), {{Varied::air}}, {5}, {60, 30, 10}},
         }) {
        const core::VariedMix varied{row.mix, row.variables};
        const core::Mix at = varied.at(row.values);
        for (std::size_t i = 0; i < 3; ++i) {
            INFO(at.binder[i].material->name);
            CHECK_THAT(at.binder[i].percent, WithinRel(row.shares[i], 1e-12));
        }
        CHECK(at.coarse.front().percent == 100);
        CHECK(core::VariedMix(of_three(60, 30, 10), {slag}).written(0) == 30.);
    }
}
