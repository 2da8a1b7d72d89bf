// How often tests judge a concrete wrong: against Boost.Math for single rules and by nested
// quadrature for three tests, against a simulation for whole jobs. Strengths and deviation of the
// worked figures: f'c 5000 psi, s 520 psi, rules of ACI 318-19 26.12.3.1 (read in three sources).

#include "core/paper/acceptance_luck.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

using namespace boardmark;
using Catch::Matchers::WithinAbs;

namespace {

// The figures are ratios of strengths, so that psi serve as well as MPa.
constexpr core::JobRule rule{.single_least_mpa = 4500, .average_least_mpa = 5000};
constexpr double deviation = 520;

core::StrengthSpread spread_at(double mean) {
    return {.mean_mpa = mean, .deviation_mpa = deviation};
}

/// Part of many simulated jobs that break a rule. A fixed seed: no test fails by luck.
double simulated(double mean, int tests, int jobs) {
    std::mt19937_64 random{20270510};
    std::normal_distribution<double> test{mean, deviation};
    int failed = 0;
    for (int job = 0; job < jobs; ++job) {
        std::vector<double> results;
        bool low = false;
        for (int i = 0; i < tests; ++i) {
            results.push_back(test(random));
            low = low || results.back() < rule.single_least_mpa;
            if (i >= 2) {
                const auto at = static_cast<std::size_t>(i);
                low = low ||
                      results[at] + results[at - 1] + results[at - 2] < 3 * rule.average_least_mpa;
            }
        }
        failed += low ? 1 : 0;
    }
    return failed / static_cast<double>(jobs);
}

} // namespace

TEST_CASE("one low test and one low average by Boost.Math") {
    const double mean = GENERATE(4600.0, 5000.0, 5711.6, 6200.0);
    CAPTURE(mean);
    const boost::math::normal_distribution<double> one{mean, deviation};
    const boost::math::normal_distribution<double> three{mean, deviation / std::sqrt(3.0)};
    CHECK_THAT(core::low_test_probability(spread_at(mean), rule),
               WithinAbs(cdf(one, 4500.0), 1e-12));
    CHECK_THAT(core::low_average_probability(spread_at(mean), rule),
               WithinAbs(cdf(three, 5000.0), 1e-12));
}

TEST_CASE("at the required average either rule breaks about once in a hundred") {
    // f'cr = 5000 + 1.34 * 520 = 5696.8, or 4500 + 2.33 * 520 = 5711.6, the larger: 0.00990 and
    // 0.00889
    CHECK_THAT(core::low_test_probability(spread_at(5711.6), rule), WithinAbs(0.00990, 5e-6));
    CHECK_THAT(core::low_average_probability(spread_at(5711.6), rule), WithinAbs(0.00889, 5e-6));
}

TEST_CASE("a job of one or two tests has no average") {
    const double low = core::low_test_probability(spread_at(5400), rule);
    CHECK_THAT(core::job_fails_probability(spread_at(5400), rule, 1), WithinAbs(low, 1e-12));
    CHECK_THAT(core::job_fails_probability(spread_at(5400), rule, 2),
               WithinAbs(1 - (1 - low) * (1 - low), 1e-12));
}

TEST_CASE("a job of three tests by quadrature") {
    using Quadrature = boost::math::quadrature::gauss_kronrod<double, 61>;
    const double mean = GENERATE(4600.0, 5000.0, 5400.0, 5711.6);
    CAPTURE(mean);
    const boost::math::normal_distribution<double> standard;
    const double least = (4500 - mean) / deviation;
    const double three = 3 * (5000 - mean) / deviation;
    constexpr double beyond_all = 9;
    const auto passes = [&](double first, double second) {
        return pdf(standard, first) * pdf(standard, second) *
               cdf(complement(standard, std::max(least, three - first - second)));
    };
    const double passed = Quadrature::integrate(
        [&](double first) {
            const double bend = std::clamp(three - first - least, least, beyond_all);
            const auto along = [&](double second) { return passes(first, second); };
            return Quadrature::integrate(along, least, bend, 8, 1e-10) +
                   Quadrature::integrate(along, bend, beyond_all, 8, 1e-10);
        },
        least, beyond_all, 8, 1e-10);
    CHECK_THAT(core::job_fails_probability(spread_at(mean), rule, 3), WithinAbs(1 - passed, 2e-4));
}

TEST_CASE("whole jobs against a simulation") {
    struct Row {
        double mean;
        int tests;
        double expected; ///< by another recursion and simulation, to 0.001
    };
    const auto row = GENERATE(values<Row>({
        {5711.6, 3, 0.034},
        {5711.6, 5, 0.060},
        {5711.6, 10, 0.122},
        {5711.6, 30, 0.333},
        {5000, 5, 1 - 0.210},
        {4800, 5, 1 - 0.061},
        {4600, 5, 1 - 0.010},
    }));
    CAPTURE(row.mean, row.tests);
    const double found = core::job_fails_probability(spread_at(row.mean), rule, row.tests);
    CHECK_THAT(found, WithinAbs(row.expected, 0.0011));
    constexpr int jobs = 200000;
    const double sigma = std::sqrt(found * (1 - found) / jobs);
    CHECK_THAT(found, WithinAbs(simulated(row.mean, row.tests, jobs), 4 * sigma + 1e-4));
}

TEST_CASE("more tests find more, and a stronger concrete fails less") {
    double before = 0;
    for (const int tests : {1, 2, 3, 4, 5, 8, 12}) {
        const double found = core::job_fails_probability(spread_at(5500), rule, tests);
        CHECK(found > before);
        before = found;
    }
    CHECK(core::job_fails_probability(spread_at(9000), rule, 10) < 1e-6);
    CHECK(core::job_fails_probability(spread_at(3000), rule, 5) > 1 - 1e-6);
}

TEST_CASE("identity of a delivery by Boost.Math and by a simulation") {
    // C30/37: each at least fck - 4, the mean of 2 to 4 at least fck + 1, of 5 and 6 at least fck +
    // 2 MPa
    const core::StrengthSpread spread{.mean_mpa = 33, .deviation_mpa = 3};
    const boost::math::normal_distribution<double> one{33, 3};
    CHECK_THAT(core::identity_fails_probability(spread, {26, 30}, 1),
               WithinAbs(cdf(one, 30.0), 2e-4)); // the higher of the two alone
    const int tests = GENERATE(2, 3, 6);
    const double margin = tests > 4 ? 2 : 1;
    std::mt19937_64 random{20270510};
    std::normal_distribution<double> test{33, 3};
    constexpr int jobs = 200000;
    int failed = 0;
    for (int job = 0; job < jobs; ++job) {
        double sum = 0;
        double least = 1000;
        for (int i = 0; i < tests; ++i) {
            const double result = test(random);
            sum += result;
            least = std::min(least, result);
        }
        failed += least < 26 || sum < tests * (30 + margin) ? 1 : 0;
    }
    const double simulated_part = failed / static_cast<double>(jobs);
    const double sigma = std::sqrt(simulated_part * (1 - simulated_part) / jobs);
    CHECK_THAT(core::identity_fails_probability(spread, {26, 30 + margin}, tests),
               WithinAbs(simulated_part, 4 * sigma + 2e-4));
}
