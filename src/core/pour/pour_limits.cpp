#include "../paper/fresh_windows.hpp"
#include "pour_case.hpp"

#include <algorithm>
#include <vector>

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

TestWindow temperature_of_day(const PourCase& pour) {
    std::vector<const FormForces*> pressed;
    for (const PouredPart& part : pour.card.parts) {
        if (part.forces) {
            pressed.push_back(part.forces);
        }
    }
    return temperature_window_of(pour.plan, pressed);
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
