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

/// Concrete of which nothing is asked but that it is there.
inline const core::CompleteSubmittedMix& some_concrete() {
    static const core::CompleteSubmittedMix concrete = entered(core::SubmittedMix{
        .title = "test",
        .system = core::UnitSystem::si,
        .requirements = {.strength_mpa = 30, .slump_mm = 100},
        .water_kg_m3 = 170,
        .air_percent = 2,
        .amounts = {{.material =
                         core::Material{.name = "cement", .kind = core::Kind::portland_cement},
                     .kg_m3 = 350}},
        .nominal_max_size_mm = 20});
    return concrete;
}

/// A wall file of one run; no quantity asks for its concrete.
inline core::Wall wall_of(core::WallRun run) {
    return {{.runs = {std::move(run)}}, "test", core::UnitSystem::si, some_concrete()};
}

inline core::PracticeTables practice() {
    return reference::tables(core::UnitSystem::si).practice;
}

} // namespace boardmark::test
