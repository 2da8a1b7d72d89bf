#include "joint_spacing.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <optional>

namespace boardmark::core {
namespace {

/// In heights of the wall; on a boundary of the table the closer.
double by_height_m(double height_m, const ContractionJointRules& rules) {
    const auto row = std::ranges::find_if(
        rules.by_height, [&](const HeightSpacing& one) { return below(height_m, one.below_m); });
    return height_m * (row == rules.by_height.end() ? rules.by_height.back() : *row).heights;
}

/// Panels of a span of equal ones, but narrower where they end at a corner.
struct SpanPanels {
    double inner_m;
    double corner_m;
};

int corners_of(const FixedSpan& span) {
    return (span.corner_at_start ? 1 : 0) + (span.corner_at_end ? 1 : 0);
}

/// Nothing where joints would stand closer than they may.
std::optional<SpanPanels> panels_of(const FixedSpan& span, int joints,
                                    const ContractionJointRules& rules) {
    const double length_m = span.to_m - span.from_m;
    const double least_m = rules.least_apart_m.value;
    const double share = rules.corner_share.value;
    const int panels = joints + 1;
    const int corners = corners_of(span);
    SpanPanels found{};
    if (panels == corners) {
        found = {length_m / corners, length_m / corners};
    } else {
        found.inner_m = length_m / (panels - corners * (1 - share));
        found.corner_m = share * found.inner_m;
        if (corners > 0 && below(found.corner_m, least_m)) {
            found = {(length_m - corners * least_m) / (panels - corners), least_m};
        }
    }
    const bool close =
        below(found.inner_m, least_m) || (corners > 0 && below(found.corner_m, least_m));
    return close ? std::nullopt : std::optional{found};
}

double first_from_corner_m(const FixedSpan& span, const ContractionJointRules& rules) {
    return std::min(rules.corner_share.value * span.spacing_m, rules.first_from_corner_m.value);
}

bool keep_the_rules(const SpanPanels& panels, const FixedSpan& span, int joints, double corner_m) {
    const bool cornered = corners_of(span) > 0;
    const bool has_inner = joints + 1 > corners_of(span);
    return (!cornered || !above(panels.corner_m, corner_m)) &&
           (!has_inner || !above(panels.inner_m, span.spacing_m));
}

} // namespace

JointSpacing joint_spacing(const WallStretch& stretch, bool many_openings,
                           const ContractionJointRules& rules) {
    const TypicalFigure& practice =
        many_openings ? rules.spacing_many_openings_m : rules.spacing_solid_m;
    const double thinnest_mm = stretch.thinnest_mm.value_or(stretch.thickness_mm);
    const double by_thickness_m = rules.spacing_in_thicknesses.value * thinnest_mm / 1000;
    JointSpacing closest{practice.value, SpacingRule::practice, practice.source};
    if (below(by_thickness_m, closest.m)) {
        closest = {by_thickness_m, SpacingRule::thickness, rules.spacing_in_thicknesses.source};
    }
    const TypicalFigure& floor_m = rules.low_wall_spacing_m;
    const double height_m = by_height_m(stretch.height_m, rules);
    if (below(std::max(height_m, floor_m.value), closest.m)) {
        closest = below(height_m, floor_m.value)
                      ? JointSpacing{floor_m.value, SpacingRule::low_wall, floor_m.source}
                      : JointSpacing{height_m, SpacingRule::height, rules.height_source};
    }
    return closest;
}

double groove_mm(double thickness_mm, const ContractionJointRules& rules) {
    return std::max(rules.groove_share.value * thickness_mm, rules.groove_least_mm.value);
}

bool asks_a_joint(const FixedSpan& span, const ContractionJointRules& rules) {
    const double length_m = span.to_m - span.from_m;
    return corners_of(span) > 0 &&
           !keep_the_rules({length_m, length_m}, span, 0, first_from_corner_m(span, rules));
}

std::vector<double> joints_within_m(const FixedSpan& span, const ContractionJointRules& rules) {
    const double corner_m = first_from_corner_m(span, rules);
    SpanPanels panels{.inner_m = span.to_m - span.from_m, .corner_m = span.to_m - span.from_m};
    int joints = 0;
    while (!keep_the_rules(panels, span, joints, corner_m)) {
        const auto closer = panels_of(span, joints + 1, rules);
        if (!closer) {
            break; // the panels would be narrower than joints may stand apart
        }
        panels = *closer;
        ++joints;
    }
    std::vector<double> stations;
    double at_m = span.from_m + (span.corner_at_start ? panels.corner_m : panels.inner_m);
    for (int i = 0; i < joints; ++i, at_m += panels.inner_m) {
        stations.push_back(at_m);
    }
    return stations;
}

} // namespace boardmark::core
