#pragma once

#include "profile.hpp"

#include <cstddef>
#include <functional>
#include <vector>

namespace boardmark::core {

/// A box-out at one of its places.
struct PlacedBox {
    const Opening& opening;
    FaceBox box;

    bool through() const { return !opening.depth_mm; }
};

/// Every box-out of a run at each of its places; the run must outlive them.
std::vector<PlacedBox> placed_boxes(const WallRun& run, const Profile& profile);

/// Whether they may stand beside each other: a sill that is not stated leaves it open.
bool at_one_height(const PlacedBox& one, const PlacedBox& other);

/// Whether their stretches of length overlap.
bool at_one_station(const FaceBox& one, const FaceBox& other);

/// Visits each two boxes whose stretches of length overlap, once. Its time grows with what overlaps,
/// not with the square of all.
void visit_pairs_at_one_station(
    const std::vector<PlacedBox>& placed,
    const std::function<void(std::size_t one, std::size_t other)>& visit);

/// The concrete between the head of a box and the top of the run, stretch by stretch.
struct OverHead {
    double least_m; ///< not above 0 where the box reaches the top
    double most_m;
};
std::vector<OverHead> over_head(const FaceBox& box, const Profile& profile);

} // namespace boardmark::core
