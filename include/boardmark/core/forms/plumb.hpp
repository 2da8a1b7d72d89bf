#pragma once

#include <boardmark/core/wall/joint_tables.hpp>

#include <optional>

namespace boardmark::core {

/// Deviation from plumb that ACI 117-10 permits a wall of a height, mm; of exposed edges and joint
/// grooves the closer one. Nothing above 83 ft 4 in, for which the rule is not printed.
std::optional<double> plumb_tolerance_mm(double height_mm, bool exposed_edge,
                                         const PlumbRules& rules);

} // namespace boardmark::core
