#pragma once

namespace boardmark::core {

/// Strength tests of one concrete: normal and independent.
struct StrengthSpread {
    double mean_mpa;
    double deviation_mpa; ///< > 0
};

/// What every job of tests is held to.
struct JobRule {
    double single_least_mpa;  ///< no test below it
    double average_least_mpa; ///< no average of three consecutive tests below it
};

/// That one test is below the least of a single one.
double low_test_probability(const StrengthSpread& spread, const JobRule& rule);

/// That the average of three tests is below its least.
double low_average_probability(const StrengthSpread& spread, const JobRule& rule);

/// That a job of so many tests breaks either rule somewhere. Averages overlap, so the last two
/// tests are carried along, on a grid; within 0.0005 of the exact figure.
///
/// @param tests ≥ 1; fewer than three have no average
double job_fails_probability(const StrengthSpread& spread, const JobRule& rule, int tests);

/// How the identity of a delivery is judged.
struct IdentityRule {
    double single_least_mpa; ///< no test below it
    double mean_least_mpa;   ///< of all tests
};

/// That so many tests break either rule; on a grid, within 0.0005 of the exact figure.
///
/// @param tests 1 to 20
double identity_fails_probability(const StrengthSpread& spread, const IdentityRule& rule,
                                  int tests);

} // namespace boardmark::core
