// Quantiles of Student's t: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2, as
// in every textbook of statistics; from memory, printed to three decimals.

#include "core/basis/student.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using Catch::Matchers::WithinAbs;

TEST_CASE("quantiles of Student's t") {
    const auto [probability, degrees, printed] = GENERATE(table<double, double, double>({
        {0.95, 1, 6.314},   {0.95, 2, 2.920},   {0.95, 5, 2.015},   {0.95, 10, 1.812},
        {0.95, 28, 1.701},  {0.95, 30, 1.697},  {0.95, 100, 1.660}, {0.975, 1, 12.706},
        {0.975, 2, 4.303},  {0.975, 3, 3.182},  {0.975, 5, 2.571},  {0.975, 10, 2.228},
        {0.975, 20, 2.086}, {0.975, 30, 2.042}, {0.975, 60, 2.000}, {0.99, 1, 31.821},
        {0.99, 10, 2.764},  {0.995, 10, 3.169}, {0.995, 29, 2.756},
    }));
    CAPTURE(probability, degrees);
    CHECK_THAT(core::student_quantile(probability, degrees), WithinAbs(printed, 0.0005));
    CHECK_THAT(core::student_quantile(1 - probability, degrees), WithinAbs(-printed, 0.0005));
}
