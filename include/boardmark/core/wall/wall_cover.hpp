#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/placing/placing_tables.hpp>
#include <boardmark/core/wall/joint_tables.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// What a face of concrete is cast against or looks at.
enum class FaceExposure {
    against_earth, ///< cast against it and always in contact
    weather,       ///< weather or ground
    inside,
};

struct CoveredFace {
    FaceExposure exposure = FaceExposure::weather;
    double relief_mm = 0; ///< depth of the deepest board joint or reveal
};

/// What is left of the cover at the bottom of the deepest board joint, mm.
double cover_at_relief_mm(double nominal_mm, double relief_mm);

/// Least cover of ACI 318-19 for bars of a diameter, mm.
TypicalFigure least_cover_mm(const CoveredFace& face, double bar_mm, const JointTables& joints);

/// `cover.least`: the cover at the deepest joint against the code; `not checked` where no cover is
/// stated. What salt asks besides, `cover.salt` says.
Check check_cover(const Reinforcement& bars, const CoveredFace& face, const JointTables& joints);

/// Clear room for a vibrator head beside or between the layers of bars of a wall, mm: between the
/// two layers, or beside the one. Nothing where cover or bars are not stated; layers that are not
/// stated count as two. May be negative.
std::optional<double> room_for_vibrator_mm(const Reinforcement& bars, double thickness_mm);

/// `vibrator.fits`: fails where the head does not go in at all, `watch` where it has less than an
/// inch of room (common practice, no source).
Check check_vibrator(const Reinforcement& bars, double thickness_mm, std::optional<double> head_mm,
                     const VibrationRules& rules);

} // namespace boardmark::core
