#pragma once

#include <boardmark/core/wall/wall_quantities.hpp>

namespace boardmark::core {

/// Says which rules the quantities of this wall follow from.
Worksheet quantity_rules(const Wall& wall, const WallQuantities& quantities,
                         const PracticeTables& practice);

} // namespace boardmark::core
