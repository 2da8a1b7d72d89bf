#pragma once

#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/batch/site_water.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// What is done at the mixer, in one order: admixtures into the water, charging, slump, water held
/// back, and the high-range reducer last (common practice, no source). `site` is absent where
/// nobody asked what stays back; then a mix with a high-range reducer keeps a tenth of its water,
/// in whole steps of the scale's `resolution_kg`, until the slump before it is seen.
std::vector<Phrase> mixing_order(const Proportions& proportions, const Batch& batch,
                                 const std::optional<double>& resolution_kg, const SiteWater* site);

} // namespace boardmark::core
