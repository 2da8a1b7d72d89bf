// A number that may be absent: it behaves as std::optional<double> does.

#include <boardmark/core/basis/optional_number.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <optional>
#include <vector>

using boardmark::core::OptionalNumber;

TEST_CASE("a number that may be absent does what an optional double does") {
    const double infinity = std::numeric_limits<double>::infinity();
    const std::vector<std::optional<double>> all{std::nullopt, 0.0,      -0.0,      1.5,  -1.5,
                                                 1e-308,       infinity, -infinity, 1e300};
    for (const std::optional<double>& one : all) {
        CAPTURE(one.has_value(), one.value_or(7));
        const OptionalNumber number{one};
        CHECK(number.has_value() == one.has_value());
        CHECK(bool{number} == bool{one});
        CHECK(number.value_or(7) == one.value_or(7));
        CHECK(std::optional<double>{number} == one);
        if (one) {
            CHECK(*number == *one);
            CHECK(number.value() == *one);
        } else {
            CHECK_THROWS_AS(number.value(), std::bad_optional_access);
        }
        for (const std::optional<double>& other : all) {
            CHECK((number == OptionalNumber{other}) == (one == other));
            CHECK((number == other) == (one == other));
            CHECK((other == number) == (one == other));
        }
    }
    CHECK_FALSE(OptionalNumber{std::nullopt}.has_value());
    CHECK(OptionalNumber{2.0} == 2.0);
    CHECK_FALSE(OptionalNumber{} == 2.0);
    CHECK(sizeof(OptionalNumber) == sizeof(double));
}

TEST_CASE("a calculation that went wrong is a figure, not an absent one") {
    volatile double zero = 0;
    for (const double wrong :
         {zero / zero, std::sqrt(-1.0 - zero), std::numeric_limits<double>::quiet_NaN(),
          std::numeric_limits<double>::signaling_NaN(), std::nan("1"),
          std::numeric_limits<double>::infinity() * zero}) {
        const OptionalNumber number{wrong};
        REQUIRE(number.has_value());
        CHECK(std::isnan(*number));
    }
}
