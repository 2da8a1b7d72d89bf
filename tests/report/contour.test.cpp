#include "report/many/contour.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace boardmark::report;
using Catch::Matchers::WithinAbs;

namespace {

/// A plane: its lines of equal value are straight, and known.
ContourGrid plane(double across, double upright) {
    ContourGrid grid{{0, 1, 2, 3}, {0, 10, 20}, {}};
    for (const double x : grid.across) {
        for (const double y : grid.upright) {
            grid.values.push_back(across * x + upright * y);
        }
    }
    return grid;
}

} // namespace

TEST_CASE("the line of equal value of a plane lies on it, from one side to the other") {
    const auto pieces = contour(plane(2, 0.1), 3);
    REQUIRE(pieces.size() >= 2);
    double length = 0;
    for (const ContourPiece& piece : pieces) {
        CHECK_THAT(2 * piece.begin.x + 0.1 * piece.begin.y, WithinAbs(3, 1e-9));
        CHECK_THAT(2 * piece.end.x + 0.1 * piece.end.y, WithinAbs(3, 1e-9));
        length += std::abs(piece.end.y - piece.begin.y);
    }
    CHECK_THAT(length, WithinAbs(20, 1e-9)); // without gap and without overlap
}

TEST_CASE("there is no line outside the values, and none beside a place without one") {
    CHECK(contour(plane(2, 0.1), 9).empty());
    ContourGrid grid = plane(1, 0);
    const auto whole = contour(grid, 1.5);
    grid.values[1 * 3 + 1].reset();
    const auto open = contour(grid, 1.5);
    CHECK(!open.empty());
    CHECK(open.size() < whole.size());
}
