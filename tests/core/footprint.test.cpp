// Cost and carbon of 1 yd3 added up by hand from the amounts of a submitted mix.

#include <boardmark/core/batch/short_load.hpp>
#include <boardmark/core/mix/footprint.hpp>

#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double cent = 1e-6;

/// 564 lb of cement are six sacks of 94 lb.
core::Proportions six_sacks(const std::string& cement, const std::string& sand = "",
                            const std::string& reducer = "") {
    return solve("boardmark: 1\ntitle: six sacks\nreporting: us\n"
                 "requirements: {strength: 3000 psi, slump: 4 in}\n"
                 "materials:\n"
                 "  cement: {kind: portland cement, relative_density: 3.15" +
                     cement +
                     "}\n"
                     "  sand: {kind: fine aggregate, relative_density: 2.65, absorption: 1 %" +
                     sand +
                     "}\n"
                     "  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in}\n"
                     "  reducer: {kind: high-range water reducer, relative_density: 1.07" +
                     reducer +
                     "}\n"
                     "proportions: {volume: 1 yd3, water: 280 lb, cement: 564 lb, sand: 1200 lb, "
                     "stone: 1800 lb, reducer: 64 fl oz, air: 2 %}\n",
                 input::Purpose::check)
        .proportions;
}

double per_yd3(double per_m3) {
    return per_m3 * inside(1, "yd3");
}

bool lacks(const core::PartialSum& sum, const std::string& name) {
    return std::ranges::count(sum.missing, name) == 1;
}

} // namespace

TEST_CASE("a price in each of its forms adds up by hand") {
    // By hand. 564 lb: 6 sacks at 18.00, 0.282 short ton at 165.00. 64 fl oz are half a gallon, a
    // hundred and tenth part of a drum of 55 gal. Waste of 3 % buys 6.18 sacks.
    const auto [cement, reducer, usd] = GENERATE(table<std::string, std::string, double>({
        {", price: 18 USD/piece, piece: 94 lb", "", 108},
        {", price: 18 USD/piece, piece: 94 lb, waste: 3 %", "", 111.24},
        {", price: 165 USD/short ton", "", 46.53},
        {"", ", price: 14 USD/gal", 7},
        {"", ", price: 770 USD/piece, piece: 55 gal", 7},
        {"", ", price: 770 USD/piece, piece: 55 gal, waste: 10 %", 7.70},
        {", price: 18 USD/piece, piece: 94 lb", ", price: 14 USD/gal", 115},
    }));
    INFO(cement << reducer);
    const auto cost = core::cost_of(six_sacks(cement, "", reducer));
    REQUIRE(cost);
    CHECK(cost->currency == "USD");
    CHECK_THAT(per_yd3(cost->sum.per_m3), WithinAbs(usd, cent));
    CHECK(lacks(cost->sum, "stone"));
    CHECK(lacks(cost->sum, "cement") == cement.empty());
    CHECK(lacks(cost->sum, "reducer") == reducer.empty());
}

TEST_CASE("a solid that is sold by volume is not priced") {
    // A sack of 1 ft3 or a yard of sand is loose: its solid volume is not what was bought.
    for (const std::string sold : {", price: 30 USD/yd3", ", price: 18 USD/piece, piece: 1 ft3"}) {
        INFO(sold);
        const auto cost = core::cost_of(six_sacks(", price: 18 USD/piece, piece: 94 lb", sold));
        REQUIRE(cost);
        CHECK_THAT(per_yd3(cost->sum.per_m3), WithinAbs(108, cent));
        CHECK(lacks(cost->sum, "sand"));
        CHECK_FALSE(core::cost_of(six_sacks(sold)));
        CHECK(core::why_no_cost(six_sacks(sold)));
    }
}

TEST_CASE("prices in two currencies are not added up") {
    const auto mixed =
        six_sacks(", price: 165 USD/short ton", ", price: 20 EUR/t", ", price: 14 USD/gal");
    CHECK_FALSE(core::cost_of(mixed));
    const auto why = core::why_no_cost(mixed);
    REQUIRE(why);
    CHECK(why->text == "not added up: prices in {currencies}");
    CHECK(std::get<std::string>(why->arguments.at(0).value) == "EUR and USD");
    CHECK(core::currencies_of(mixed) == std::set<std::string>{"EUR", "USD"});
    // Each alone is in one currency.
    CHECK_THAT(per_yd3(core::binder_cost(mixed)->sum.per_m3), WithinAbs(46.53, cent));
    CHECK_THAT(per_yd3(core::reducer_cost(mixed)->sum.per_m3), WithinAbs(7, cent));
}

TEST_CASE("carbon counts what is bought") {
    // By hand: 564 lb at 0.9 are 507.6 lb, 2 % more with 2 % of waste 517.752 lb.
    const auto carbon = core::carbon_of(six_sacks(", carbon: 0.9 kg/kg, waste: 2 %"));
    REQUIRE(carbon);
    CHECK_THAT(in_unit(carbon->per_m3, "lb/yd3"), WithinAbs(517.752, cent));
}

TEST_CASE("what loads below the supplier's smallest lack and cost") {
    // By hand, charge 40 USD/yd3 below 6 yd3: one load of 4 yd3 lacks 2, two of 5 yd3 lack 1 each.
    const double yd3 = inside(1, "yd3");
    const core::Supply supply{6 * yd3, core::Charge{"USD", 40 / yd3}};
    const auto [loads, each_yd3, short_yd3, usd] = GENERATE(table<int, double, double, double>({
        {1, 4, 2, 80},
        {2, 5, 1, 80},
        {1, 6, 0, 0},
        {2, 7, 0, 0},
    }));
    CAPTURE(loads, each_yd3);
    const core::Charging charging{.count = loads, .each_m3 = each_yd3 * yd3};
    const core::ShortLoad load = core::short_load(supply, charging);
    CHECK_THAT(load.short_m3, WithinAbs(short_yd3 * yd3, cent));
    REQUIRE(load.cost());
    CHECK_THAT(*load.cost(), WithinAbs(usd, cent));
    const core::ShortLoad unknown = core::short_load({6 * yd3}, charging);
    CHECK(unknown.cost().has_value() == (short_yd3 == 0));
}
