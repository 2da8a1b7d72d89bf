// The blend of aggregates: least squares with bounds, proven by the conditions of the best
// solution, which of a convex problem are sufficient, and by blends whose answer is known.

#include "../../src/core/mix/bounded_least_squares.hpp"

#include <boardmark/core/mix/blended_aggregate.hpp>

#include "support.hpp"

#include <catch2/catch.hpp>

#include <numeric>
#include <random>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::BoundedUnknown;
using core::LeastSquaresRow;

namespace {

double slope_at(const std::vector<LeastSquaresRow>& rows, const std::vector<double>& found,
                std::size_t unknown) {
    double slope = 0;
    for (const LeastSquaresRow& row : rows) {
        const double missing =
            std::inner_product(found.begin(), found.end(), row.coefficients.begin(), -row.value);
        slope += row.weight * missing * row.coefficients[unknown];
    }
    return slope;
}

core::SharedMaterial aggregate(const std::string& name, core::Kind kind,
                               std::vector<core::SievePassing> sieves, double density = 2.65) {
    core::Material material{.name = name, .kind = kind, .relative_density = density};
    material.aggregate.sieves = std::move(sieves);
    material.aggregate.absorption_percent = 0;
    return material;
}

const core::Tables& tables() {
    static const core::Tables made = reference::tables(core::UnitSystem::si);
    return made;
}

std::vector<core::SharedMaterial> three() {
    return {
        aggregate("stone", core::Kind::coarse_aggregate,
                  {{25, 100}, {19, 95}, {9.5, 30}, {4.75, 4}, {2.36, 1}}, 2.7),
        aggregate("pea", core::Kind::coarse_aggregate,
                  {{12.5, 100}, {9.5, 92}, {4.75, 22}, {2.36, 4}}),
        aggregate("sand", core::Kind::fine_aggregate,
                  {{9.5, 100}, {4.75, 98}, {2.36, 86}, {1.18, 68}, {0.6, 44}, {0.3, 18}, {0.15, 4}},
                  2.6)};
}

/// What these parts of the volume let pass, of `three()`, at sieves that all of them state.
core::SieveBand mixed(double opening_mm, std::array<double, 3> passing,
                      std::array<double, 3> parts) {
    const double percent = std::inner_product(passing.begin(), passing.end(), parts.begin(), 0.0);
    return {opening_mm, percent, percent};
}

} // namespace

TEST_CASE("bounded least squares meets the conditions of the best solution") {
    std::mt19937 random{20261129};
    std::uniform_real_distribution<double> some{0, 100};
    for (int problem = 0; problem < 300; ++problem) {
        const std::size_t summed = 2 + static_cast<std::size_t>(problem) % 5;
        const std::size_t others = static_cast<std::size_t>(problem) % 3;
        std::vector<BoundedUnknown> unknowns;
        for (std::size_t i = 0; i < summed; ++i) {
            unknowns.push_back({.start = 1.0 / double(summed), .in_sum = true});
        }
        for (std::size_t i = 0; i < others; ++i) {
            unknowns.push_back({.start = 0.3, .low = 0.2, .high = 0.4});
        }
        std::vector<LeastSquaresRow> rows;
        for (int row = 0; row < 9; ++row) {
            LeastSquaresRow made{{}, some(random)};
            for (std::size_t i = 0; i < unknowns.size(); ++i) {
                made.coefficients.push_back(some(random));
            }
            rows.push_back(made);
        }
        const auto found = core::bounded_least_squares(rows, unknowns);
        CHECK_THAT(std::accumulate(found.begin(), found.begin() + long(summed), 0.0),
                   WithinAbs(1, 1e-9));
        // One pull of the kept sum balances every free slope; a bound is left by none.
        double pull = 0;
        double scale = 1;
        for (std::size_t i = 0; i < found.size(); ++i) {
            scale = std::max(scale, std::abs(slope_at(rows, found, i)));
            if (unknowns[i].in_sum && found[i] > 1e-9) {
                pull = -slope_at(rows, found, i);
            }
        }
        for (std::size_t i = 0; i < found.size(); ++i) {
            const double slope = slope_at(rows, found, i) + (unknowns[i].in_sum ? pull : 0);
            INFO("problem " << problem << ", unknown " << i << ", found " << found[i]);
            CHECK(found[i] >= unknowns[i].low);
            CHECK(found[i] <= unknowns[i].high);
            if (found[i] > unknowns[i].low + 1e-12) {
                CHECK(slope <= 1e-5 * scale);
            }
            if (found[i] < unknowns[i].high - 1e-12) {
                CHECK(slope >= -1e-5 * scale);
            }
        }
    }
}

TEST_CASE("a curve that a blend can follow is followed") {
    const std::array parts{0.45, 0.15, 0.40};
    const core::BlendWish wish{.to = core::BlendTo::curve,
                               .sieves = {mixed(9.5, {30, 92, 100}, parts),
                                          mixed(4.75, {4, 22, 98}, parts),
                                          mixed(2.36, {1, 4, 86}, parts)},
                               .of = three()};
    const auto blend = core::blend_of(wish, tables());
    REQUIRE(blend);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        CHECK_THAT(blend->shares[i].volume_percent, WithinAbs(100 * parts[i], 1e-5));
    }
    CHECK_THAT(blend->mean_off_percent, WithinAbs(0, 1e-6));
    // By mass: volumes times relative densities 2.70, 2.65, 2.60.
    const double mass = 0.45 * 2.7 + 0.15 * 2.65 + 0.40 * 2.6;
    CHECK_THAT(blend->fine_mass_percent(), WithinAbs(100 * 0.40 * 2.6 / mass, 1e-4));
    CHECK_THAT(blend->fine_volume_percent(), WithinAbs(40, 1e-4));
}

TEST_CASE("an aggregate that only leads away from the target is not taken") {
    // Half stone and half sand follow the curve; any pea gravel lies above it at 9.5 mm.
    const core::BlendWish wish{.to = core::BlendTo::curve,
                               .sieves = {{9.5, 60, 60}, {4.75, 51, 51}, {2.36, 43.5, 43.5}},
                               .of = three()};
    const auto blend = core::blend_of(wish, tables());
    REQUIRE(blend);
    CHECK(blend->shares[1].volume_percent == 0);
    CHECK(blend->shares[0].volume_percent > 0);
}

TEST_CASE("of equal aggregates equal parts are taken") {
    auto aggregates = three();
    core::SharedMaterial twin = aggregates[2];
    twin.edit().name = "sand of the other pit";
    aggregates.push_back(twin);
    const auto blend = core::blend_of({.of = aggregates}, tables());
    REQUIRE(blend);
    CHECK_THAT(blend->shares[2].volume_percent - blend->shares[3].volume_percent,
               WithinAbs(0, 1e-3));
}

TEST_CASE("a band is met wherever a blend lies inside") {
    const core::BlendWish wish{.to = core::BlendTo::band,
                               .sieves = {{9.5, 60, 75}, {4.75, 42, 55}, {0.6, 15, 25}},
                               .of = three()};
    const auto blend = core::blend_of(wish, tables());
    REQUIRE(blend);
    CHECK(blend->most_off_percent == 0);

    const core::BlendWish narrow{.to = core::BlendTo::band,
                                 .sieves = {{9.5, 95, 100}, {4.75, 10, 12}, {0.6, 30, 35}},
                                 .of = three()};
    const auto nearest = core::blend_of(narrow, tables());
    REQUIRE(nearest);
    CHECK(std::abs(nearest->most_off_percent) > 1);
}

TEST_CASE("what cannot be blended is told") {
    auto aggregates = three();
    CHECK_FALSE(core::blend_of({.of = {aggregates[0]}}, tables()));
    CHECK_FALSE(core::blend_of({.of = {aggregates[0], aggregates[1]}}, tables())); // no sand
    aggregates[0].edit().aggregate.sieves = {{19, 95}, {9.5, 30}};
    CHECK_FALSE(core::blend_of({.of = aggregates}, tables()));
}
