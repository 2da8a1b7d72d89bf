#include <catch2/catch.hpp>
TEST_CASE("starts") { CHECK(true); }
