#pragma once

#include <boardmark/core/site_water.hpp>

#include <vector>

namespace boardmark::core {

/// What is done at the mixer, in one order: charging, admixtures, slump, water held back, and the
/// high-range reducer last (common practice, no source). `site` is absent where nobody asked what
/// stays back; then a mix with a high-range reducer keeps a tenth of its water until the slump
/// before it is seen.
std::vector<Phrase> mixing_order(const Proportions& proportions, double volume_m3,
                                 const SiteWater* site);

} // namespace boardmark::core
