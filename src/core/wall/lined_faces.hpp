#pragma once

#include <boardmark/core/wall/board_order.hpp>

namespace boardmark::core {

/// Every piece that lines the faces that show, once. The wall file has boards.
std::vector<Pieces> lined_pieces(const Wall& wall, const JointStations& joints);

} // namespace boardmark::core
