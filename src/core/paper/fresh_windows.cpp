#include "fresh_windows.hpp"

#include "../checks/trial_checks.hpp"

#include <algorithm>
#include <vector>

namespace boardmark::core {
namespace {

bool presses_by_formula(const FormForces& forces) {
    const PressureGovernor governor = governing_pressure(forces).governed_by;
    return governor == PressureGovernor::formula || governor == PressureGovernor::floor;
}

} // namespace

TestWindow slump_window_of(const Requirements& asked, const Tables& tables) {
    if (asked.slump_window) {
        return {asked.slump_window->low_mm, asked.slump_mm, asked.slump_window->high_mm};
    }
    const double within_mm = slump_tolerance(asked.slump_mm, tables).within_mm.value;
    return {std::max(0.0, asked.slump_mm - within_mm), asked.slump_mm, asked.slump_mm + within_mm};
}

TestWindow air_window_of(const Selection& selection, const Tables& tables) {
    const double air_percent = selection.air_at_placing_percent;
    const double within_percent = tables.code->air.tolerance_percent;
    return {std::max(0.0, air_percent - within_percent), air_percent, air_percent + within_percent};
}

TestWindow temperature_window_of(const WallPlan& plan, std::span<const FormForces* const> pressed) {
    TestWindow window{.low = plan.placed_c.low, .high = plan.placed_c.high};
    for (const FormForces* forces : pressed) { // colder concrete presses harder
        if (forces->concrete_c && window.low && presses_by_formula(*forces)) {
            window.low = std::max(*window.low, *forces->concrete_c);
        }
    }
    return window;
}

TestWindow temperature_window_of(const WallPlan& plan) {
    std::vector<const FormForces*> all;
    for (const FormForces& forces : plan.forces) {
        all.push_back(&forces);
    }
    return temperature_window_of(plan, all);
}

} // namespace boardmark::core
