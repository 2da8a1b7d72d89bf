#include <boardmark/units/rounding.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <string>

using namespace boardmark::units;
using Catch::Matchers::WithinAbs;

TEST_CASE("the nearest step of a scale") {
    const auto [amount, step, expected] = GENERATE(table<double, double, double>({
        {0, 1, 0},
        {2.4, 1, 2},
        {2.5, 1, 3}, // a half goes away from zero
        {3.5, 1, 4}, // not to the even neighbour
        {-2.5, 1, -3},
        {-2.4, 1, -2},
        {2.4999, 1, 2},
        {0.35, 0.1, 0.4}, // 0.35 is stored below the half
        {0.45, 0.1, 0.5},
        {2.675, 0.01, 2.68}, // stored as 2.67499999999999982
        {1.005, 0.01, 1.01}, // stored as 1.00499999999999989
        {-1.005, 0.01, -1.01},
        {5736, 10, 5740},
        {5735, 10, 5740},
        {5734.9, 10, 5730},
        {0.4, 0.25, 0.5},
        {0.374, 0.25, 0.25},
        {51.25, 0.5, 51.5},
        {1e9 + 0.5, 1, 1e9 + 1},
    }));
    INFO(amount << " in steps of " << step);
    CHECK_THAT(nearest({.amount = amount, .step = step}),
               WithinAbs(expected, 1e-12 * (1 + std::abs(expected))));
}

TEST_CASE("inches as the trade writes them") {
    const auto [inches, written] = GENERATE(table<double, std::string>({
        {0, "0"},
        {0.75, "3/4"},
        {0.5, "1/2"},
        {0.375, "3/8"},
        {0.0625, "1/16"},
        {0.9375, "15/16"},
        {1, "1"},
        {1.5, "1 1/2"},
        {2.125, "2 1/8"},
        {4, "4"},
        {10, "10"},
        {120.25, "120 1/4"},
        {0.03125, "1/16"}, // half of a sixteenth goes up
        {0.0312, "0"},     // just below it
        {0.96875, "1"},    // 31/32 is carried into the whole inch
        {1.96875, "2"},
        {0.7499999999, "3/4"},
        {19.05 / 25.4, "3/4"},
        {19.0 / 25.4, "3/4"},   // 0.748 in
        {37.5 / 25.4, "1 1/2"}, // 1.476 in, the metric twin
        {-0.25, "-1/4"},
        {-1.5, "-1 1/2"},
        {-0.03125, "-1/16"},
        {-0.01, "0"},
    }));
    INFO(inches);
    CHECK(inch_fraction(inches) == written);
}
