#pragma once

#include <boardmark/core/placing/placing_plan.hpp>

namespace boardmark::core {

/// `truck.discharge` of a part: haul and unloading, or the round trip and unloading, against the
/// time from batching to the end of discharge. Without a haul the round trip, which nobody knows to
/// count this unloading, fails nothing; unloading alone does.
Check truck_discharge(const UnloadedPart& part, const TruckedPour& pour, const LiftRules& rules);

} // namespace boardmark::core
