#include "../checks/trial_checks.hpp"
#include "pour_case.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

TestWindow slump_of_day(const PourCase& pour) {
    const Requirements& asked = pour.asked;
    if (asked.slump_window) {
        return {asked.slump_window->low_mm, asked.slump_mm, asked.slump_window->high_mm};
    }
    const double within_mm = slump_tolerance(asked.slump_mm, pour.tables).within_mm.value;
    return {std::max(0.0, asked.slump_mm - within_mm), asked.slump_mm, asked.slump_mm + within_mm};
}

TestWindow air_of_day(const PourCase& pour) {
    const double air_percent = pour.plan.proportions.selection.air_at_placing_percent;
    const double within_percent = pour.tables.code.air.tolerance_percent;
    TestWindow window{std::max(0.0, air_percent - within_percent), air_percent,
                      air_percent + within_percent};
    const AirRules& rules = pour.tables.code.air;
    const auto asked = std::ranges::find_if(
        pour.plan.mix_checks, [](const Check& one) { return one.is(check_ids::air_exposure); });
    const bool one_sided = rules.below_percent < within_percent;
    if (one_sided && asked != pour.plan.mix_checks.end() && asked->limit) {
        window.low = std::max(*window.low, asked->limit->low.value_or(0)); // a least air is one
    }
    return window;
}

bool presses_by_formula(const PouredPart& part) {
    const PressureGovernor governor = governing_pressure(*part.forces).governed_by;
    return governor == PressureGovernor::formula || governor == PressureGovernor::floor;
}

/// The bounds that the concrete's temperature was held against.
TestWindow temperature_of_day(const PourCase& pour) {
    const auto check = std::ranges::find_if(
        pour.plan.checks, [](const Check& one) { return one.is(check_ids::placing_temperature); });
    TestWindow window;
    if (check != pour.plan.checks.end() && check->limit) {
        window.low = check->limit->low;
        window.high = check->limit->high;
    }
    for (const PouredPart& part : pour.card.parts) { // colder concrete presses harder
        if (part.forces && part.forces->concrete_c && window.low && presses_by_formula(part)) {
            window.low = std::max(*window.low, *part.forces->concrete_c);
        }
    }
    return window;
}

} // namespace

PourLimits pour_limits(const PourCase& pour) {
    const PlacingTables& placing = pour.tables.placing;
    return {.slump_mm = slump_of_day(pour),
            .air_percent = air_of_day(pour),
            .concrete_c = temperature_of_day(pour),
            .w_cm = pour.plan.proportions.selection.w_cm_by_exposure,
            .discharge_h = placing.lifts.discharge_h,
            .free_fall_mm = placing.crew.free_fall_mm,
            .hose_apart_mm = placing.crew.hose_apart_mm};
}

} // namespace boardmark::core
