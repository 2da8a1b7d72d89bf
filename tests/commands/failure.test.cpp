// How the program ends where it is itself at fault.

#include "commands/failure.hpp"

#include <catch2/catch.hpp>

#include <stdexcept>

using namespace boardmark::commands;
using Catch::Matchers::Contains;

TEST_CASE("a fault of the program ends with 5 and says so") {
    const Failure failure =
        fault_of_the_program(std::logic_error{"a figure of the result is not finite: pressure.0"});
    CHECK(static_cast<int>(failure.code) == 5);
    CHECK_THAT(failure.message, Contains("not finite: pressure.0"));
    CHECK_THAT(failure.message, Contains("the program is at fault"));
}
