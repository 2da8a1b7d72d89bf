// Flow classes of EN 206 by spread and the slumps that go with them, from memory: F1 to 340 mm, F2
// 350 to 410, F3 420 to 480, F4 490 to 550, F5 560 to 620, F6 from 630; slump classes end at 40,
// 90, 150 and 210 mm.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/forms/flow_class.hpp>

#include "as_printed.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;

namespace {

const core::FlowClasses& classes() {
    static const core::FlowClasses of_print = reference::tables(core::UnitSystem::si).forms->flow;
    return of_print;
}

} // namespace

TEST_CASE("the class of a spread") {
    const auto [spread_mm, flow_class] = GENERATE(table<double, int>({
        {300, 1},
        {340, 1},
        {345, 2}, // between two printed figures: the more fluid
        {410, 2},
        {420, 3},
        {480, 3},
        {550, 4},
        {620, 5},
        {630, 6},
        {800, 6},
    }));
    INFO(spread_mm);
    CHECK(core::flow_class_of_spread(spread_mm, classes()) == flow_class);
}

TEST_CASE("the classes that go with a slump") {
    const auto [slump_mm, stiffest, most_fluid] = GENERATE(table<double, int, int>({
        {10, 1, 1},
        {40, 1, 1},
        {41, 2, 2},
        {90, 2, 2},
        {101.6, 3, 3},
        {150, 3, 3},
        {210, 4, 4},
        {211, 5, 6},
        {280, 5, 6},
    }));
    INFO(slump_mm);
    const auto range = core::flow_classes_of_slump(slump_mm, classes());
    CHECK(range.stiffest == stiffest);
    CHECK(range.most_fluid == most_fluid);
}

TEST_CASE("how far a class lies outside what a slump tells") {
    CHECK(core::classes_outside(4, {2, 3}) == 1);
    CHECK(core::classes_outside(1, {3, 3}) == 2);
    CHECK(core::classes_outside(6, {5, 6}) == 0);
}
