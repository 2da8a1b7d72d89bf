#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>
#include <boardmark/core/pour/pour_card.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include <span>

namespace boardmark::core {

/// Slumps permitted at placing: the window that is stated, else the tolerance of the slump.
TestWindow slump_window_of(const Requirements& asked, const Tables& tables);

/// Air permitted at placing: from the least to the most of the class, where its code states a
/// least; else within the tolerance of a load and what the class permits. Without entrained air
/// nothing is permitted or not.
TestWindow air_window_of(const Selection& selection, std::span<const Check> mix_checks,
                         const Tables& tables);

/// Temperatures permitted at placing: those of the thinnest section, and no colder than the
/// pressures by a formula count with.
TestWindow temperature_window_of(const WallPlan& plan, std::span<const FormForces* const> pressed);

/// The same of all forms of the plan.
TestWindow temperature_window_of(const WallPlan& plan);

} // namespace boardmark::core
