// Concrete of a wall and what is ordered for it.

#include <boardmark/core/wall/wall_quantities.hpp>

#include "core/walls.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

TEST_CASE("a wall of 60 ft by 6 ft by 10 in with an allowance for waste") {
    // Worked by hand: 60 x 6 x 10/12 / 27 = 11.11 yd3. 4 to 10 % over plan dimensions: two trade
    // articles on ordering concrete, read; 11.56 and 12.22 yd3.
    const auto [waste_percent, order_yd3] =
        GENERATE(table<double, double>({{0, 11.11}, {4, 11.56}, {10, 12.22}}));
    core::Wall wall =
        wall_of(run_of(inside(60, "ft") / 1000, inside(6, "ft") / 1000, inside(10, "in")));
    wall.order.waste_percent = waste_percent;
    const core::WallQuantities found = core::wall_quantities(wall, practice());
    CHECK_THAT(in_unit(found.total.concrete_m3, "yd3"), WithinAbs(11.11, 0.005));
    CHECK_THAT(in_unit(found.order.order_m3, "yd3"), WithinAbs(order_yd3, 0.005));
}

TEST_CASE("forms that spread by 1/8 in over 60 ft by 6 ft") {
    // Worked by hand: 360 ft2 x 1/96 ft / 27 = 0.139 yd3, 1.25 % of 11.11 yd3
    const double face_m2 = inside(60, "ft") / 1000 * inside(6, "ft") / 1000;
    const double spread_m3 = core::form_spread_m3(face_m2, inside(0.125, "in"));
    CHECK_THAT(in_unit(spread_m3, "yd3"), WithinAbs(0.139, 0.0005));
}

TEST_CASE("NAVEDTRA 14071 waste of the whole job") {
    // p. 17-10: 63.7 yd3 and 10 % for waste are 70.07 yd3
    const core::ConcreteOrder order = core::concrete_order(inside(63.7, "yd3"), {10, {}});
    CHECK_THAT(in_unit(order.order_m3, "yd3"), WithinAbs(70.07, 0.005));
}
