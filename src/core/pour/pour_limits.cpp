#include "../paper/fresh_windows.hpp"
#include "pour_case.hpp"

#include <algorithm>
#include <vector>

namespace boardmark::core {
namespace {

TestWindow temperature_of_day(const PourCase& pour) {
    std::vector<const FormForces*> pressed;
    for (const PouredPart& part : pour.card.parts) {
        if (part.forces) {
            pressed.push_back(part.forces);
        }
    }
    return temperature_window_of(pour.plan, pressed);
}

/// Water may raise the ratio neither above what the classes permit nor above what the strength
/// needs.
std::optional<double> most_w_cm(const Selection& selection) {
    const auto& by_exposure = selection.w_cm_by_exposure;
    const auto& by_strength = selection.w_cm_by_strength;
    return by_exposure && by_strength ? std::min(*by_exposure, *by_strength)
           : by_exposure              ? by_exposure
                                      : by_strength;
}

} // namespace

PourLimits pour_limits(const PourCase& pour) {
    const PlacingTables& placing = pour.tables.placing;
    return {.slump_mm = slump_window_of(pour.asked, pour.tables),
            .air_percent =
                air_window_of(pour.plan.proportions.selection, pour.plan.mix_checks, pour.tables),
            .concrete_c = temperature_of_day(pour),
            .w_cm = most_w_cm(pour.plan.proportions.selection),
            .discharge_h = placing.lifts.discharge_h,
            .free_fall_mm = placing.crew.free_fall_mm,
            .hose_apart_mm = placing.crew.hose_apart_mm};
}

} // namespace boardmark::core
