#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

struct MethodTables;
struct Tables;

/// Fineness modulus of a blend by mass, recorded. Nothing where a sand states none.
std::optional<double> blend_fineness_modulus(const std::vector<Share>& fine, const Tables& tables,
                                             Worksheet& worksheet);

/// Volume that is left of 1 m3. Unresolved where nothing is.
Outcome<double> room_for_aggregate_m3(const std::vector<Ingredient>& others);
Outcome<double> room_for_fine_aggregate_m3(const std::vector<Ingredient>& others);

void record_fine_volume(double volume_m3, const MethodTables& method, Worksheet& worksheet);
/// The aggregates as they were blended to their target.
void record_blend(const AggregateBlend& blend, Worksheet& worksheet);

void record_fine_share(double percent, Worksheet& worksheet);

} // namespace boardmark::core
