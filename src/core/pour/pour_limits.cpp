#include "../paper/fresh_windows.hpp"
#include "pour_case.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// What the day may have of air; a code that only states a least air lets no less of it count.
TestWindow air_of_day(const PourCase& pour) {
    TestWindow window = air_window_of(pour.plan.proportions.selection, pour.tables);
    const AirRules& rules = pour.tables.code->air;
    const auto asked = std::ranges::find_if(
        pour.plan.mix_checks, [](const Check& one) { return one.is(check_ids::air_exposure); });
    const bool one_sided = rules.below_percent < rules.tolerance_percent;
    if (one_sided && asked != pour.plan.mix_checks.end() && asked->limit) {
        window.low = std::max(*window.low, asked->limit->low.value_or(0));
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
    return {.slump_mm = slump_window_of(pour.asked, pour.tables),
            .air_percent = air_of_day(pour),
            .concrete_c = temperature_of_day(pour),
            .w_cm = pour.plan.proportions.selection.w_cm_by_exposure,
            .discharge_h = placing.lifts.discharge_h,
            .free_fall_mm = placing.crew.free_fall_mm,
            .hose_apart_mm = placing.crew.hose_apart_mm};
}

} // namespace boardmark::core
