#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

struct Tables;

/// Records the fine aggregate by mass: the method's first estimate of fresh density less the other
/// ingredients (coarse aggregate oven-dry, as the handbook's own example does). A cross-check of
/// the volume method; where the table has no figure the step has no value.
void cross_check_by_mass(const Proportions& proportions, const Tables& tables,
                         Worksheet& worksheet);

} // namespace boardmark::core
