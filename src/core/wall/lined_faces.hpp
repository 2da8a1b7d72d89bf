#pragma once

#include <boardmark/core/wall/board_order.hpp>

namespace boardmark::core {

/// Every face that shows with the boards that line it, not yet cut out of anything: runs, planters,
/// benches. The wall file has boards.
std::vector<LinedFace> lined_faces(const Wall& wall, const JointStations& joints);

} // namespace boardmark::core
