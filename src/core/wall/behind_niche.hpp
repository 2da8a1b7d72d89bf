#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/wall/wall.hpp>

#include "placed_box.hpp"

#include <string>
#include <vector>

namespace boardmark::core {

/// What a niche leaves of the thickness of its run.
struct BehindNiche {
    std::string niche;
    double depth_mm; ///< of the niche, and of one back to back with it in the other face
    double left_mm;  ///< of concrete behind it, where the run is thinnest; may be 0 or less
};

/// One for each place of a niche. Without a sill it may be where a battered run is thinnest.
std::vector<BehindNiche> behind_niches(const WallRun& run);

/// Holds the layers of bars behind the niches too: `steel.layers` fails where they do not fit
/// there, and is a `watch` where they must be moved to have their cover.
///
/// @param cover of the run, held against the least of its face
void hold_layers_behind_niches(const WallRun& run, const Reinforcement& bars, const Check& cover,
                               Check& layers);

/// Holds a check of the cover behind the niches too, against its own limit: a `watch` where bars
/// must be moved for it; where they do not fit even so, the worst that the check may be.
void hold_cover_behind_niches(const WallRun& run, const Reinforcement& bars, Verdict worst,
                              Check& cover);

} // namespace boardmark::core
