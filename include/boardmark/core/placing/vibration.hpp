#pragma once

#include <boardmark/core/placing/placing_tables.hpp>

#include <optional>

namespace boardmark::core {

/// A lift that an internal vibrator consolidates.
struct VibratedLift {
    double length_m;
    double thickness_mm;
    double lift_m;
    double radius_mm; ///< of action, > 0
};

struct VibrationPlan {
    double spacing_mm;   ///< of insertions at most, 1.5 times the radius
    int rows;            ///< across the thickness
    int insertions;      ///< in one lift
    double immersion_mm; ///< of the head's tip below the lift's top, into the lift below
    double least_s;      ///< at each insertion
    double most_s;
    double least_minutes; ///< of vibration in one lift, at the least time
};

/// Radius in which a head acts, mm, by its diameter. Between the printed ends of a group it is
/// taken linear, where groups overlap as the smaller. Nothing for a head that no group holds. ACI
/// 309R.
std::optional<double> radius_of_action_mm(double head_mm, const VibrationRules& rules);

/// Insertions of one lift, none farther than half the spacing from an end.
VibrationPlan vibration_plan(const VibratedLift& lift, const VibrationRules& rules);

/// Vibrators that get through the insertions of a lift, each of its longest time, while it fills.
///
/// @param lift_h > 0
int vibrators_at_work(const VibrationPlan& plan, double lift_h);

} // namespace boardmark::core
