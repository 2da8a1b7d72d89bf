#pragma once

// Walls for tests, short to write: metres and millimetres, nothing that a test does not name.

#include <boardmark/core/wall/wall.hpp>

#include "support.hpp"

namespace boardmark::test {

/// A level run of one thickness.
inline core::WallRun run_of(double length_m, double height_m, double thickness_mm) {
    return {.name = "wall",
            .length_m = length_m,
            .heights = {{0, height_m}},
            .thickness_mm = thickness_mm,
            .bottom_thickness_mm = thickness_mm};
}

/// A wall file of one run; its mix is empty, because no quantity asks for it.
inline core::Wall wall_of(core::WallRun run) {
    return {.title = "test", .system = core::UnitSystem::si, .mix = {}, .runs = {std::move(run)}};
}

inline core::PracticeTables practice() {
    return reference::tables(core::UnitSystem::si).practice;
}

} // namespace boardmark::test
