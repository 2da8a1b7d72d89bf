#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/batch/batch.hpp>

#include <optional>
#include <string>

namespace boardmark::core {

/// What concrete is mixed in.
enum class Vessel { mixer, truck };

/// A mixer or truck and how much concrete it takes at once.
struct VesselSize {
    Vessel vessel;
    double capacity_m3; ///< > 0; of a mixer the rated one, of a truck the load the supplier runs
};

/// An order divided into equal charges, or not divided.
struct Charging {
    int count = 1;
    double each_m3; ///< concrete in each
    std::optional<VesselSize> size = {};
};

/// The fewest equal charges that fit.
///
/// Unresolved where there would be more than a thousand, or where volume or capacity is no finite
/// number above 0.
Outcome<Charging> charges_of(double volume_m3, const std::optional<VesselSize>& size);

/// The same with a whole number of sacks in each charge: the volume grows to the next whole sack,
/// so that the proportions stay what they are.
///
/// Unresolved where not even one sack's concrete fits the vessel, and where `charges_of` is.
Outcome<Charging> charges_of_whole_sacks(double volume_m3, const std::optional<VesselSize>& size,
                                         const Proportions& proportions, const Sack& sack);

/// All charges together: a number of like batches.
Batch sum_of(const Batch& each, int count);

/// What to mind at a vessel of this size.
std::vector<Phrase> cautions_of(const Charging& charging);

} // namespace boardmark::core
