#include <boardmark/core/placing/vibration.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// How many stretches of at most a length make up a whole.
int stretches(double whole, double at_most) {
    return std::max(1, static_cast<int>(std::ceil(whole / at_most - relative_rounding)));
}

} // namespace

std::optional<double> radius_of_action_mm(double head_mm, const VibrationRules& rules) {
    std::optional<double> least_mm;
    for (const VibratorGroup& group : rules.groups) {
        if (below(head_mm, group.head_from_mm) || above(head_mm, group.head_to_mm)) {
            continue;
        }
        const double part =
            (head_mm - group.head_from_mm) / (group.head_to_mm - group.head_from_mm);
        const double radius_mm =
            group.radius_from_mm + part * (group.radius_to_mm - group.radius_from_mm);
        least_mm = std::min(least_mm.value_or(radius_mm), radius_mm);
    }
    return least_mm;
}

VibrationPlan vibration_plan(const VibratedLift& lift, const VibrationRules& rules) {
    const double spacing_mm = rules.spacing_in_radii.value * lift.radius_mm;
    const int rows = stretches(lift.thickness_mm, spacing_mm);
    const int insertions = rows * stretches(1000 * lift.length_m, spacing_mm);
    return {.spacing_mm = spacing_mm,
            .rows = rows,
            .insertions = insertions,
            .immersion_mm = 1000 * lift.lift_m + rules.into_lift_below_mm.value,
            .least_s = rules.insertion_least_s.value,
            .most_s = rules.insertion_most_s.value,
            .least_minutes = insertions * rules.insertion_least_s.value / 60};
}

int vibrators_at_work(const VibrationPlan& plan, double lift_h) {
    constexpr double seconds_in_hour = 3600;
    return stretches(plan.insertions * plan.most_s, lift_h * seconds_in_hour);
}

} // namespace boardmark::core
