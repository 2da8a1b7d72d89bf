#pragma once

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>

namespace boardmark::core {

struct Tables;

/// Adds the aggregates that the fresh density leaves beside water, binder and admixtures, shared by
/// mass, saturated surface-dry; the air is what all of it leaves of 1 m3, none where it is more.
/// Gives why none follow: a reading is missing, or nothing is left.
std::optional<Unresolved> add_british_aggregates(const Mix& mix, const Tables& tables,
                                                 Proportions& proportions);

} // namespace boardmark::core
