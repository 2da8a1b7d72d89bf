#include "joint_spacing.hpp"

#include "tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// In heights of the wall; on a boundary of the table the closer.
double by_height_m(double height_m, const ContractionJointRules& rules) {
    const auto row = std::ranges::find_if(
        rules.by_height, [&](const HeightSpacing& one) { return below(height_m, one.below_m); });
    return height_m * (row == rules.by_height.end() ? rules.by_height.back() : *row).heights;
}

} // namespace

JointSpacing joint_spacing(const WallStretch& stretch, bool many_openings,
                           const ContractionJointRules& rules) {
    const TypicalFigure& practice =
        many_openings ? rules.spacing_many_openings_m : rules.spacing_solid_m;
    const double by_thickness_m = rules.spacing_in_thicknesses.value * stretch.thickness_mm / 1000;
    JointSpacing closest{practice.value, SpacingRule::practice, practice.source};
    if (below(by_thickness_m, closest.m)) {
        closest = {by_thickness_m, SpacingRule::thickness, rules.spacing_in_thicknesses.source};
    }
    const double height_m = by_height_m(stretch.height_m, rules);
    if (below(height_m, closest.m)) {
        closest = {height_m, SpacingRule::height, rules.height_source};
    }
    return closest;
}

double groove_mm(double thickness_mm, const ContractionJointRules& rules) {
    return std::max(rules.groove_share.value * thickness_mm, rules.groove_least_mm.value);
}

std::vector<double> joints_within_m(const FixedSpan& span, const ContractionJointRules& rules) {
    const double share = rules.corner_share.value;
    const double length_m = span.to_m - span.from_m;
    const int corners = (span.corner_at_start ? 1 : 0) + (span.corner_at_end ? 1 : 0);
    const double corner_m = std::min(share * span.spacing_m, rules.first_from_corner_m.value);
    if (!above(length_m, corners > 0 ? corner_m : span.spacing_m)) {
        return {};
    }
    // Panels counted in widths of an inner one; those at corners count as a share of it.
    int panels = corners == 2 ? 2 : 1;
    double width_m = 0;
    do {
        width_m = length_m / (panels - corners * (1 - share));
        ++panels;
    } while (above(width_m, span.spacing_m) || (corners > 0 && above(share * width_m, corner_m)));
    std::vector<double> joints;
    double at_m = span.from_m + width_m * (span.corner_at_start ? share : 1);
    while (below(at_m, span.to_m)) {
        joints.push_back(at_m);
        at_m += width_m;
    }
    return joints;
}

} // namespace boardmark::core
