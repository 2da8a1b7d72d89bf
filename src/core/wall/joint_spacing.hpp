#pragma once

#include <boardmark/core/wall/joint_layout.hpp>

#include <vector>

namespace boardmark::core {

/// A part of a wall between two joints that must be, or its ends.
struct FixedSpan {
    double from_m;
    double to_m;
    double spacing_m;
    bool corner_at_start;
    bool corner_at_end;
};

/// Joints strictly inside a span: equal panels, half as wide at a corner. None stands nearer than
/// joints may to another or to an end of the span; the panels are then wider than the spacing.
std::vector<double> joints_within_m(const FixedSpan& span, const ContractionJointRules& rules);

/// Whether the rules ask a joint of a span that ends at a corner.
bool asks_a_joint(const FixedSpan& span, const ContractionJointRules& rules);

} // namespace boardmark::core
