// The search for the most economical mix, held against all mixes of a fine grid.

#include <boardmark/core/many/economy.hpp>
#include <boardmark/core/mix/footprint.hpp>

#include "../support.hpp"
#include "core/many/pattern_search.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace boardmark;
using Catch::Matchers::WithinAbs;
using core::Objective;

namespace {

constexpr const char* mix_text = R"(
boardmark: 1
title: Quay terrace, retaining wall
reporting: si
requirements:
  code: ACI 318-19
  exposure: [F2, S1, W1, C2]
  strength: 35 MPa
  strength_records: {tests: 30, standard_deviation: 3 MPa, strength: 35 MPa, age: 3 months}
  strength_curve: {0.32: 53 MPa, 0.36: 47.5 MPa, 0.40: 42.7 MPa, 0.45: 37.2 MPa, 0.60: 27 MPa}
  slump: 100 mm
materials:
  cement: {kind: portland cement, standard: ASTM C150 II, relative_density: 3.15, price: 182 USD/t,
           carbon: 0.92 kg/kg}
  slag: {kind: slag cement, standard: ASTM C989 100, relative_density: 2.90, price: 155 USD/t,
         carbon: 0.15 kg/kg}
  stone: {kind: coarse aggregate, nominal_max_size: 19 mm, relative_density: 2.68, absorption: 0.5 %,
          dry_rodded_density: 1600 kg/m3, moisture: 1.5 %, price: 26 USD/t, carbon: 0.005 kg/kg}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, fineness_modulus: 2.8,
         moisture: 5 %, price: 23 USD/t, carbon: 0.004 kg/kg}
  reducer: {kind: high-range water reducer, standard: ASTM C494 F, relative_density: 1.07, solids: 35 %,
            water_reduction: {250 mL/100 kg: 8 %, 500 mL/100 kg: 16 %, 800 mL/100 kg: 22 %},
            price: 3.7 USD/L, carbon: 1.9 kg/kg}
mixture:
  binder: {cement: 75 %, slag: 25 %}
  coarse: {stone: 100 %}
  fine: {sand: 100 %}
  admixtures: {reducer: 500 mL/100 kg}
)";

core::CompleteMix mix() {
    return std::get<core::CompleteMix>(test::read(mix_text, input::Purpose::proportion));
}

const core::Tables& si() {
    static const core::Tables tables = reference::tables(core::UnitSystem::si);
    return tables;
}

core::VariableBound ratio(double low, double high) {
    return {{core::Varied::w_cm}, low, high, true};
}
core::VariableBound dose(double low_ml, double high_ml) {
    return {{core::Varied::dose, "reducer"}, low_ml * 1e-8, high_ml * 1e-8, true};
}
core::VariableBound slag(double low, double high) {
    return {{core::Varied::share, "slag"}, low, high, true};
}

double value_of(const core::Proportions& proportions, Objective objective) {
    return objective == Objective::cost     ? core::cost_of(proportions)->sum.per_m3
           : objective == Objective::carbon ? core::carbon_of(proportions)->per_m3
                                            : proportions.totals.binder_kg_m3;
}

/// Whether a mix holds every limit, unrounded, and knows what the mix as written knows.
bool holds(const std::vector<core::Check>& checks, const std::vector<core::Check>& written) {
    for (const core::Check& check : checks) {
        const auto before = std::ranges::find(written, check.id, &core::Check::id);
        const bool known = before != written.end() && before->verdict != core::Verdict::not_checked;
        const bool beyond = check.limit && check.value &&
                            ((check.limit->high && *check.value > *check.limit->high + 1e-9) ||
                             (check.limit->low && *check.value < *check.limit->low - 1e-9));
        if (check.verdict == core::Verdict::fails ||
            (check.verdict == core::Verdict::watch && beyond) ||
            (check.verdict == core::Verdict::not_checked && known)) {
            return false;
        }
    }
    return true;
}

/// The least of the objective over all mixes of a grid, with its own loop and the told checks.
double least_of_grid(const core::EconomyOrder& order, std::size_t points) {
    static const core::Vocabulary words = reference::vocabulary();
    const core::CompleteMix asked = mix();
    const auto written = core::assess(asked, *core::proportion(asked, si()), si());
    double least = HUGE_VAL;
    std::size_t count = 1;
    for (std::size_t i = 0; i < order.bounds.size(); ++i) {
        count *= points;
    }
    for (std::size_t index = 0; index < count; ++index) {
        core::Mix edited = *asked;
        std::size_t rest = index;
        for (const core::VariableBound& bound : order.bounds) {
            const double part = double(rest % points) / double(points - 1);
            const double value = bound.low + part * (bound.high - bound.low);
            rest /= points;
            if (bound.variable.figure == core::Varied::w_cm) {
                edited.selections.w_cm = value;
            } else if (bound.variable.figure == core::Varied::dose) {
                edited.admixtures.front().dose->amount = value;
            } else {
                edited.binder[0].percent = 100 - value;
                edited.binder[1].percent = value;
            }
        }
        auto entered = core::complete(std::move(edited), words);
        if (const auto* complete = std::get_if<core::CompleteMix>(&entered)) {
            const auto proportions = core::proportion(*complete, si());
            if (proportions && holds(core::assess(asked, *proportions, si()), written)) {
                least = std::min(least, value_of(*proportions, order.objective));
            }
        }
    }
    return least;
}

} // namespace

TEST_CASE("even places fill the cube evenly") {
    constexpr std::size_t count = 1000;
    for (std::size_t dimensions = 1; dimensions <= 4; ++dimensions) {
        std::vector<double> sums(dimensions, 0);
        for (std::size_t i = 0; i < count; ++i) {
            const auto place = core::even_place(i, dimensions);
            for (std::size_t d = 0; d < dimensions; ++d) {
                REQUIRE(place[d] >= 0);
                REQUIRE(place[d] < 1);
                sums[d] += place[d];
            }
        }
        for (const double sum : sums) {
            CHECK_THAT(sum / count, WithinAbs(0.5, 0.005)); // chance alone: 0.009
        }
    }
    // The steps of one dimension are those of the golden section.
    CHECK_THAT(core::even_place(0, 1)[0], WithinAbs(0.5 + 2 / (1 + std::sqrt(5.0)) - 1, 1e-12));
}

TEST_CASE("the search finds the corner of a slanted limit") {
    // Least x + 2 y with x + y >= 1.2 in the unit square: x = 1, y = 0.2, 1.4 in all.
    const core::SearchRating rate = [](core::SearchPlace& place) {
        const double missing = 1.2 - place.at[0] - place.at[1];
        place.excess = std::max(0.0, missing);
        place.value = missing > 0 ? HUGE_VAL : place.at[0] + 2 * place.at[1];
    };
    core::SearchPlace from{{0.3, 0.95}, 0, 0};
    rate(from);
    const auto found = core::pattern_search(from, rate, 1);
    CHECK(found.excess == 0);
    CHECK_THAT(found.value, WithinAbs(1.4, 1.4e-3));
}

TEST_CASE("the best mix is that of a fine grid, within a thousandth") {
    struct Case {
        core::EconomyOrder order;
        std::size_t points;
    };
    const Case cases[] = {
        {{Objective::cost, {ratio(0.36, 0.50), dose(0, 800)}}, 41},
        {{Objective::binder, {ratio(0.36, 0.50), dose(0, 800)}}, 41},
        {{Objective::carbon, {ratio(0.34, 0.45), slag(0, 60)}}, 31},
        {{Objective::cost, {dose(0, 800)}}, 201},
        {{Objective::cost, {ratio(0.36, 0.46), dose(0, 800), slag(0, 50)}}, 13},
    };
    for (const Case& one : cases) {
        const auto found = core::economy(mix(), one.order, si());
        REQUIRE(found);
        REQUIRE(found->unrounded);
        const double least = least_of_grid(one.order, one.points);
        REQUIRE(std::isfinite(least));
        INFO(int(one.order.objective)
             << ": grid " << least << ", search " << found->unrounded->of(one.order.objective));
        CHECK(found->unrounded->of(one.order.objective) <= 1.001 * least);
    }
}

TEST_CASE("the best mix fails no check and is never worse than the one as written") {
    const core::CompleteMix asked = mix();
    const auto written = core::proportion(asked, si());
    REQUIRE(written);
    for (const Objective objective : {Objective::cost, Objective::carbon, Objective::binder}) {
        for (const double width : {0.02, 0.1, 0.3}) {
            const double w_cm = written->totals.w_cm;
            const core::EconomyOrder order{
                objective, {ratio(w_cm - width, w_cm + width), dose(100, 800), slag(10, 60)}};
            const auto found = core::economy(asked, order, si());
            REQUIRE(found);
            CHECK(!core::any_fails(found->checks));
            CHECK(found->figures.of(objective) <= value_of(*written, objective) * (1 + 1e-12));
            CHECK(found->checked_as_weighed);
            for (std::size_t i = 0; i < order.bounds.size(); ++i) {
                CHECK(found->at[i] >= order.bounds[i].low - 1e-12);
                CHECK(found->at[i] <= order.bounds[i].high + 1e-12);
            }
            for (const core::LimitPrice& price : found->prices) {
                INFO(price.id);
                CHECK(price.saves >= 0);
            }
        }
    }
}

TEST_CASE("the limit that holds the least binder is the w/cm of the exposure, and has its price") {
    const core::EconomyOrder order{Objective::binder, {ratio(0.36, 0.50)}};
    const auto found = core::economy(mix(), order, si());
    REQUIRE(found);
    REQUIRE(found->active.size() >= 1);
    const auto price = std::ranges::find(found->prices, "w_cm.exposure", &core::LimitPrice::id);
    REQUIRE(price != found->prices.end());
    CHECK_THAT(price->relaxed_by.value, WithinAbs(0.01, 1e-12));
    // F2 and C2 permit 0.40 (ACI 318-19 table 19.3.2.1): water / 0.40 less water / 0.41.
    const double water = found->proportions.totals.water_kg_m3;
    CHECK_THAT(found->at[0], WithinAbs(0.40, 1e-12));
    CHECK_THAT(price->saves, WithinAbs(water / 0.40 - water / 0.41, 0.002 * water));
}

TEST_CASE("the front runs from the least cost to the least carbon without a step back") {
    const core::EconomyOrder order{Objective::cost, {ratio(0.36, 0.46), dose(0, 800), slag(0, 50)}};
    const auto found = core::economy(mix(), order, si());
    REQUIRE(found);
    REQUIRE(found->front.size() >= 2);
    CHECK(found->front.front().name == "least cost");
    CHECK(found->front.back().name == "least carbon");
    for (std::size_t i = 1; i < found->front.size(); ++i) {
        const auto& before = found->front[i - 1].figures;
        const auto& after = found->front[i].figures;
        CHECK(*after.cost_per_m3 >= *before.cost_per_m3 * (1 - 1e-3));
        CHECK(*after.carbon_kg_m3 <= *before.carbon_kg_m3 * (1 + 1e-6));
    }
}

TEST_CASE("without a mix that holds, the search says which limit is in the way") {
    const core::EconomyOrder order{Objective::binder, {ratio(0.45, 0.50)}};
    const auto found = core::economy(mix(), order, si());
    REQUIRE(!found);
    const auto& arguments = found.why().what.arguments;
    const auto id = std::ranges::find(arguments, "id", &core::Argument::name);
    REQUIRE(id != arguments.end());
    CHECK(std::get<std::string>(id->value) == "w_cm.exposure");
}

TEST_CASE("a material without a price keeps its cost from being least") {
    std::string text = mix_text;
    text.replace(text.find("price: 26 USD/t, "), 17, "");
    const auto without = std::get<core::CompleteMix>(test::read(text, input::Purpose::proportion));
    const auto why = core::why_no_objective(*core::proportion(without, si()), Objective::cost);
    REQUIRE(why);
    CHECK(std::get<std::string>(why->arguments.front().value) == "stone");
    CHECK(!core::why_no_objective(*core::proportion(without, si()), Objective::carbon));
    CHECK(!core::why_no_objective(*core::proportion(without, si()), Objective::binder));
}

TEST_CASE("no dose above what the data sheet permits is sought") {
    std::string text = mix_text;
    text.replace(text.find("solids: 35 %,"), 13, "solids: 35 %, maximum_dose: 600 mL/100 kg,");
    const auto capped = std::get<core::CompleteMix>(test::read(text, input::Purpose::proportion));
    const core::EconomyOrder order{Objective::binder, {ratio(0.36, 0.50), dose(0, 800)}};
    const auto found = core::economy(capped, order, si());
    REQUIRE(found);
    CHECK(found->unrounded_at[1] <= 600e-8 * (1 + 1e-9));
    CHECK(found->at[1] <= 600e-8 * (1 + 1e-9));
    CHECK(found->at[1] >= 500e-8); // it saves water up to there
}
