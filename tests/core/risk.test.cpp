// Many batches of one mix, each with its own errors.

#include <boardmark/core/basis/blocks.hpp>
#include <boardmark/core/risk/risk.hpp>

#include "../support.hpp"
#include "core/risk/limit_counts.hpp"
#include "core/risk/random_normals.hpp"
#include "core/risk/sensitivity.hpp"

#include <Random123/philox.h>
#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace boardmark;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using core::RiskQuantity;

namespace {

constexpr const char* mix_text = R"(
boardmark: 1
title: Quay terrace, retaining wall
reporting: si
requirements:
  code: ACI 318-19
  exposure: [F2, S0, W1, C1]
  strength: 35 MPa
  strength_records: {tests: 30, standard_deviation: 3 MPa, strength: 35 MPa, age: 3 months}
  strength_curve: {0.30: 60 MPa, 0.60: 25 MPa}
  slump: 100 mm
materials:
  cement: {kind: portland cement, relative_density: 3.15}
  stone: {kind: coarse aggregate, nominal_max_size: 19 mm, relative_density: 2.68, absorption: 0.5 %,
          dry_rodded_density: 1600 kg/m3, moisture: 1.5 %}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, fineness_modulus: 2.8,
         moisture: 5 %}
  agent: {kind: air-entraining admixture, relative_density: 1.01, solids: 8 %}
mixture:
  binder: {cement: 100 %}
  coarse: {stone: 100 %}
  fine: {sand: 100 %}
  admixtures: {agent: as needed}
selections: {w_cm: 0.45, water: 170 kg/m3, air: 6 %}
)";

/// Nothing scatters.
core::Scatter exact_scatter() {
    return {.water_percent = 0,
            .binder_percent = 0,
            .aggregate_percent = 0,
            .admixture_percent = 0,
            .air_points = 0,
            .strength_mpa = 0,
            .moisture_points = {{"sand", 0}, {"stone", 0}}};
}

core::Risk run(const core::Scatter& scatter, core::RiskOrder order = {}) {
    const auto solved = test::solve(mix_text, input::Purpose::batch);
    return test::made(core::risk_of(solved.mix, solved.proportions, scatter, order, solved.tables));
}

const core::Distribution& of(const core::Risk& risk, RiskQuantity quantity) {
    return *std::ranges::find(risk.quantities, quantity, &core::Distribution::quantity);
}

const core::LimitRisk* limit(const core::Risk& risk, std::string_view id) {
    const auto found = std::ranges::find_if(
        risk.limits, [&](const core::LimitRisk& one) { return one.id.name() == id; });
    return found == risk.limits.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("random bits are those of the published generator") {
    // J. K. Salmon et al., SC11: known-answer vectors of the authors' package, philox4x32 of 10
    // rounds.
    struct Vector {
        r123::Philox4x32::ctr_type counter;
        r123::Philox4x32::key_type key;
        r123::Philox4x32::ctr_type bits;
    };
    const auto vector = GENERATE(values<Vector>(
        {{{{0, 0, 0, 0}}, {{0, 0}}, {{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}}},
         {{{0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff}},
          {{0xffffffff, 0xffffffff}},
          {{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd}}},
         {{{0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}},
          {{0xa4093822, 0x299f31d0}},
          {{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1}}}}));
    CHECK(r123::Philox4x32{}(vector.counter, vector.key) == vector.bits);
}

TEST_CASE("normals follow from the published bits by Box and Muller") {
    double normals[5] = {};
    core::RandomNormals{0}.fill(0, 0, normals);
    const auto uniform = [](std::uint32_t bits) { return (bits + 0.5) / 4294967296.0; };
    const double radius = std::sqrt(-2 * std::log(uniform(0x6627e8d5)));
    const double angle = 2 * std::numbers::pi * uniform(0xe169c58d);
    CHECK_THAT(normals[0], WithinRel(radius * std::cos(angle), 1e-14));
    CHECK_THAT(normals[1], WithinRel(radius * std::sin(angle), 1e-14));
    double again[2] = {};
    core::RandomNormals{0}.fill(0, 0, again);
    CHECK(again[1] == normals[1]);
    core::RandomNormals{0}.fill(1, 0, again);
    CHECK(again[1] != normals[1]);
}

TEST_CASE("variance shares are those of Ishigami's function") {
    // sin x1 + a sin2 x2 + b x3^4 sin x1 over -pi to pi, a 7, b 0.1: closed form by the integrals
    // of its parts.
    constexpr double a = 7;
    constexpr double b = 0.1;
    constexpr double pi = std::numbers::pi;
    const auto value = [](const std::array<double, 3>& x) {
        return std::sin(x[0]) + a * std::sin(x[1]) * std::sin(x[1]) +
               b * std::pow(x[2], 4) * std::sin(x[0]);
    };
    const double first = (1 + b * std::pow(pi, 4) / 5) * (1 + b * std::pow(pi, 4) / 5) / 2;
    const double second = a * a / 8;
    const double both = 8 * b * b * std::pow(pi, 8) / 225;
    const double whole = first + second + both;
    const double expected_first[] = {first / whole, second / whole, 0};
    const double expected_total[] = {(first + both) / whole, second / whole, both / whole};

    constexpr std::uint32_t samples = 60000;
    const auto point = [](std::uint32_t sample, std::uint32_t set) {
        const auto bits = r123::Philox4x32{}({{sample, 0, 0, set}}, {{3, 0}});
        std::array<double, 3> x{};
        for (std::size_t i = 0; i < 3; ++i) {
            x[i] = pi * (2 * (bits[i] + 0.5) / 4294967296.0 - 1);
        }
        return x;
    };
    for (std::size_t input = 0; input < 3; ++input) {
        std::vector<double> one;
        std::vector<double> other;
        std::vector<double> exchanged;
        for (std::uint32_t i = 0; i < samples; ++i) {
            auto x = point(i, 0);
            const auto y = point(i, 1);
            one.push_back(value(x));
            other.push_back(value(y));
            x[input] = y[input];
            exchanged.push_back(value(x));
        }
        const auto shares = core::variance_shares({one, other, exchanged});
        CAPTURE(input);
        CHECK_THAT(shares.first_order, WithinAbs(expected_first[input], 0.015));
        CHECK_THAT(shares.total, WithinAbs(expected_total[input], 0.015));
    }
}

TEST_CASE("shares of no variance are nothing") {
    const std::vector<double> same(10, 0.4);
    const auto shares = core::variance_shares({same, same, same});
    CHECK(shares.first_order == 0);
    CHECK(shares.total == 0);
}

TEST_CASE("work in blocks is done once, by any number of threads") {
    for (const unsigned threads : {1U, 2U, 7U}) {
        std::vector<int> done(1000);
        const std::size_t count = core::do_in_blocks(
            {.count = done.size(), .in_block = 7, .threads = threads}, [&]() -> core::BlockWork {
                return [&](std::size_t first, std::size_t last) {
                    for (; first < last; ++first) {
                        ++done[first];
                    }
                };
            });
        CHECK(count == done.size());
        CHECK(std::ranges::count(done, 1) == 1000);
    }
}

TEST_CASE("work that is stopped is done up to a place") {
    std::vector<int> done(100);
    const std::size_t count =
        core::do_in_blocks({.count = done.size(),
                            .in_block = 10,
                            .threads = 1,
                            .goes_on = [](double share) { return share < 0.3; }},
                           [&]() -> core::BlockWork {
                               return [&](std::size_t first, std::size_t last) {
                                   for (; first < last; ++first) {
                                       ++done[first];
                                   }
                               };
                           });
    CHECK(count == 30);
    CHECK(std::ranges::count(done, 1) == 30);
}

TEST_CASE("without scatter every batch is the mix") {
    const auto solved = test::solve(mix_text, input::Purpose::batch);
    const core::Risk risk = run(exact_scatter(), {.samples = 1000});
    const core::Totals& totals = solved.proportions.totals;
    CHECK_THAT(of(risk, RiskQuantity::w_cm).mean, WithinRel(totals.w_cm, 1e-12));
    CHECK(of(risk, RiskQuantity::w_cm).standard_deviation == 0);
    CHECK_THAT(of(risk, RiskQuantity::slump_water).mean, WithinRel(totals.water_kg_m3, 1e-12));
    CHECK_THAT(of(risk, RiskQuantity::relative_yield).mean, WithinRel(1, 1e-12));
    CHECK_THAT(of(risk, RiskQuantity::air).mean, WithinRel(6, 1e-12));
    CHECK(risk.drivers.empty());
    CHECK(limit(risk, "w_cm.exposure") == nullptr); // it holds, and nothing moves it
}

TEST_CASE("what a small change of the ratio is in water is no limit that batches keep") {
    // By hand: some 750 kg of sand off by 1 point carry 7.5 kg of water more, over 378 kg of binder
    // 0.02 of w/cm: of three batches one is off by more than what shows in the colour.
    std::string text = mix_text;
    text.insert(text.find("  slump: 100 mm"), "  finish: board-marked\n");
    const auto solved = test::solve(text, input::Purpose::batch);
    REQUIRE(solved.check("finish.w_cm_constancy"));
    core::Scatter scatter = exact_scatter();
    scatter.moisture_points = {{"sand", 1}, {"stone", 0.2}};
    const core::Risk risk = test::made(
        core::risk_of(solved.mix, solved.proportions, scatter, {.samples = 1000}, solved.tables));
    CHECK(limit(risk, "finish.mortar"));
    CHECK(limit(risk, "finish.w_cm_constancy") == nullptr);
}

TEST_CASE("a limit that the mix breaks is broken for sure") {
    // 6 % of air against 9 % stated.
    std::string text = mix_text;
    text.insert(text.find("  slump: 100 mm"), "  air: 9 %\n");
    const auto solved = test::solve(text, input::Purpose::batch);
    const core::Risk risk = test::made(core::risk_of(
        solved.mix, solved.proportions, exact_scatter(), {.samples = 1000}, solved.tables));
    REQUIRE(limit(risk, "air.stated"));
    CHECK(limit(risk, "air.stated")->probability == 1);
    CHECK(limit(risk, "air.stated")->high == 1);
    // Clopper and Pearson, all of n: the lower bound is 0.025^(1/n).
    CHECK_THAT(limit(risk, "air.stated")->low, WithinRel(std::pow(0.025, 1.0 / 1000), 1e-9));
}

TEST_CASE("water alone moves w/cm as it is propagated by hand") {
    const auto solved = test::solve(mix_text, input::Purpose::batch);
    core::Scatter scatter = exact_scatter();
    scatter.water_percent = 2;
    const core::Risk risk = run(scatter, {.samples = 100000});
    // w/cm is linear in the water weighed, which is the mixing water less what the aggregates
    // carry.
    double free_kg = 0;
    for (const char* name : {"sand", "stone"}) {
        const core::Ingredient& aggregate = solved.ingredient(name);
        const auto& figures = aggregate.material->aggregate;
        free_kg +=
            *aggregate.dry_kg_m3 * (*figures.moisture_percent - *figures.absorption_percent) / 100;
    }
    const core::Totals& totals = solved.proportions.totals;
    const double deviation = 0.02 * (totals.water_kg_m3 - free_kg) / totals.binder_kg_m3;
    const core::Distribution& found = of(risk, RiskQuantity::w_cm);
    // 4.5 standard errors of a mean and of a deviation of 100 000.
    CHECK_THAT(found.mean, WithinAbs(totals.w_cm, 4.5 * deviation / std::sqrt(1e5)));
    CHECK_THAT(found.standard_deviation, WithinRel(deviation, 4.5 / std::sqrt(2e5)));
    CHECK_THAT(found.p95, WithinAbs(totals.w_cm + 1.6449 * deviation, 0.03 * deviation));
    CHECK_THAT(found.p05, WithinAbs(totals.w_cm - 1.6449 * deviation, 0.03 * deviation));
    // Nobody else drives it.
    REQUIRE(risk.drivers.front().quantity == RiskQuantity::w_cm);
    CHECK(risk.inputs[risk.drivers.front().input].key == "water");
    CHECK_THAT(risk.drivers.front().first_order, WithinAbs(1, 0.03));
}

TEST_CASE("air is normal, and its limit is broken as often as the normal law says") {
    core::Scatter scatter = exact_scatter();
    scatter.air_points = 1;
    const core::Risk risk = run(scatter, {.samples = 200000});
    CHECK_THAT(of(risk, RiskQuantity::air).standard_deviation, WithinRel(1, 0.01));
    // F2, 19 mm: 6 % within 1.5 points (ACI 318-19 table 19.3.3.1; ASTM C94), compared to 0.1:
    // broken beyond 4.45 and 7.55, both 1.55 deviations away.
    const double expected = std::erfc(1.55 / std::sqrt(2.0));
    const core::LimitRisk* air = limit(risk, "air.exposure");
    REQUIRE(air);
    CHECK_THAT(air->probability, WithinAbs(expected, 0.004));
    CHECK(air->low < expected);
    CHECK(air->high > expected);
}

TEST_CASE("strength scatters by its record where nothing is stated") {
    core::Scatter scatter = exact_scatter();
    scatter.strength_mpa.reset();
    const core::Risk risk = run(scatter, {.samples = 50000});
    // Between its points the curve's logarithm is linear: at 0.45 the geometric mean of 60 and 25.
    CHECK_THAT(of(risk, RiskQuantity::strength).mean, WithinAbs(std::sqrt(60.0 * 25), 0.07));
    CHECK_THAT(of(risk, RiskQuantity::strength).standard_deviation, WithinRel(3, 0.015));
}

TEST_CASE("what is not stated is taken from the tolerances, marked") {
    const core::Risk risk = run({}, {.samples = 1000});
    const auto input = [&](std::string_view key) {
        return *std::ranges::find(risk.inputs, key, &core::ScatteredInput::key);
    };
    // ASTM C94: water 1.5 %, cementitious 1 %, aggregate 2 %, from memory but for water; air 1.5
    // points. 1.96 standard deviations hold 95 % of a normal distribution.
    CHECK_THAT(input("water").deviation, WithinRel(1.5 / 1.96, 1e-12));
    CHECK_THAT(input("binder").deviation, WithinRel(1 / 1.96, 1e-12));
    CHECK_THAT(input("aggregate").deviation, WithinRel(2 / 1.96, 1e-12));
    CHECK_THAT(input("air").deviation, WithinRel(1.5 / 1.96, 1e-12));
    // Common practice, no source.
    CHECK(input("moisture.sand").deviation == 0.5);
    CHECK(input("moisture.stone").deviation == 0.2);
    CHECK(input("moisture.sand").assumed);
    CHECK_FALSE(input("strength").assumed); // the record's
    CHECK(input("relative_density.sand").deviation == 0);
}

TEST_CASE("any number of threads gives the same figures") {
    const core::Risk one = run({}, {.samples = 20000, .threads = 1});
    for (const unsigned threads : {2U, 7U}) {
        const core::Risk many = run({}, {.samples = 20000, .threads = threads});
        for (std::size_t i = 0; i < one.quantities.size(); ++i) {
            CHECK(one.quantities[i].mean == many.quantities[i].mean);
            CHECK(one.quantities[i].standard_deviation == many.quantities[i].standard_deviation);
            CHECK(one.quantities[i].p95 == many.quantities[i].p95);
            CHECK(one.quantities[i].histogram.counts == many.quantities[i].histogram.counts);
        }
        REQUIRE(one.limits.size() == many.limits.size());
        for (std::size_t i = 0; i < one.limits.size(); ++i) {
            CHECK(one.limits[i].id == many.limits[i].id);
            CHECK(one.limits[i].probability == many.limits[i].probability);
        }
        REQUIRE(one.drivers.size() == many.drivers.size());
        for (std::size_t i = 0; i < one.drivers.size(); ++i) {
            CHECK(one.drivers[i].total == many.drivers[i].total);
        }
    }
}

TEST_CASE("a run that is stopped keeps what was done, or says that it is too little") {
    const auto solved = test::solve(mix_text, input::Purpose::batch);
    core::RiskOrder order{.samples = 100000, .goes_on = [](double share) { return share < 0.2; }};
    const auto some = core::risk_of(solved.mix, solved.proportions, {}, order, solved.tables);
    REQUIRE(some);
    CHECK(some->was_stopped());
    CHECK(some->samples >= 20000);
    CHECK(some->driver_samples == 0);
    order.goes_on = [](double) { return false; };
    CHECK_FALSE(core::risk_of(solved.mix, solved.proportions, {}, order, solved.tables));
}

TEST_CASE("a deviation that is no number leads to nothing") {
    const auto solved = test::solve(mix_text, input::Purpose::batch);
    core::Scatter scatter;
    scatter.air_points = std::nan("");
    CHECK_FALSE(core::risk_of(solved.mix, solved.proportions, scatter, {}, solved.tables));
    scatter.air_points = -1;
    CHECK_FALSE(core::risk_of(solved.mix, solved.proportions, scatter, {}, solved.tables));
}

// As of two reducers, each with its room for a second dose.
TEST_CASE("of several findings of one check the worst of each batch counts") {
    const auto findings = [](core::Verdict one, core::Verdict other) {
        return std::vector<core::Finding>{
            {.id = core::check_ids::finish_redosing, .verdict = one},
            {.id = core::check_ids::finish_redosing, .verdict = other}};
    };
    using enum core::Verdict;
    core::LimitCounts counts{findings(holds, holds)};
    counts.add(findings(fails, holds));
    counts.add(findings(holds, fails));
    counts.add(findings(watch, fails));
    counts.add(findings(holds, watch));
    const auto risks = counts.risks(4);
    REQUIRE(risks.size() == 1);
    CHECK(risks.front().probability == 0.75);
    CHECK(risks.front().watch == 0.25);
}
