#pragma once

#include <boardmark/core/batch/batch.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// What whole sacks do to one batch.
struct SackStudy {
    Sack main;          ///< of the sacked materials the one the mix holds most of
    double exact_sacks; ///< of it, in the volume ordered
    Batch rounded;      ///< the volume ordered, each sacked material by the nearest whole sack
    std::optional<double> volume_below_m3; ///< next lower volume of whole main sacks, w/cm kept
};

/// The sacks with the one of the material that the mix holds most of first. Asserts that each names
/// a cementitious material of the mix.
std::vector<Sack> main_first(std::vector<Sack> sacks, const Proportions& proportions);

/// Rounds the sacks of an order and leaves the rest as it is.
///
/// @param order one charge; its sacks are not empty, the main one first
/// Unresolved as batch() is.
Outcome<SackStudy> study_sacks(const Proportions& proportions, BatchOrder order,
                               double water_density_kg_m3);

} // namespace boardmark::core
