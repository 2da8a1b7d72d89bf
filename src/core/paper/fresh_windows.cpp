#include "fresh_windows.hpp"

#include "../checks/air_at_placing.hpp"
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

TestWindow air_window_of(const Selection& selection, std::span<const Check> mix_checks,
                         const Tables& tables) {
    const double air_percent = selection.air_at_placing_percent;
    if (!selection.air_entrained) {
        return {.asked = air_percent};
    }
    const AirRules& rules = tables.code->air;
    const Check* of_class = air_of_class(mix_checks);
    if (rules.states_least() && of_class) {
        return {of_class->limit->low, air_percent, of_class->limit->high};
    }
    const double within_percent = rules.tolerance_percent;
    const double low_percent = std::max(0.0, air_percent - within_percent);
    if (of_class && of_class->verdict != Verdict::fails) { // no load may have what the class bars
        return {std::min(std::max(low_percent, of_class->limit->low.value_or(0)), air_percent),
                air_percent,
                std::min(air_percent + within_percent,
                         of_class->limit->high.value_or(air_percent + within_percent))};
    }
    return {low_percent, air_percent, air_percent + within_percent};
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
