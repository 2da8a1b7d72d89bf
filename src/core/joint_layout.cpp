#include <boardmark/core/joint_layout.hpp>

#include "joint_spacing.hpp"
#include "phrases.hpp"
#include "tolerance.hpp"

#include <algorithm>
#include <iterator>
#include <limits>

namespace boardmark::core {
namespace {

double length_m(const JointedWall& wall) {
    double sum = 0;
    for (const WallStretch& stretch : wall.stretches) {
        sum += stretch.length_m;
    }
    return sum;
}

bool changes(const WallStretch& left, const WallStretch& right) {
    return !same(left.height_m, right.height_m) || !same(left.thickness_mm, right.thickness_mm);
}

/// The ends of the wall and every station that needs a joint, increasing, each once.
std::vector<double> fixed_stations_m(const JointedWall& wall) {
    const double whole_m = length_m(wall);
    std::vector<double> stations{0, whole_m};
    double at_m = 0;
    for (std::size_t i = 0; i + 1 < wall.stretches.size(); ++i) {
        at_m += wall.stretches[i].length_m;
        if (changes(wall.stretches[i], wall.stretches[i + 1])) {
            stations.push_back(at_m);
        }
    }
    for (const double opening_m : wall.openings_m) {
        if (above(opening_m, 0) && below(opening_m, whole_m)) {
            stations.push_back(opening_m);
        }
    }
    std::ranges::sort(stations);
    const auto rest = std::ranges::unique(stations, same);
    stations.erase(rest.begin(), rest.end());
    return stations;
}

/// The closest spacing of the stretches that a span touches.
double spacing_within_m(double from_m, double to_m, const JointedWall& wall,
                        const std::vector<JointSpacing>& spacings) {
    double closest_m = std::numeric_limits<double>::infinity();
    double begin_m = 0;
    for (std::size_t i = 0; i < wall.stretches.size(); ++i) {
        const double end_m = begin_m + wall.stretches[i].length_m;
        if (below(begin_m, to_m) && above(end_m, from_m)) {
            closest_m = std::min(closest_m, spacings[i].m);
        }
        begin_m = end_m;
    }
    return closest_m;
}

/// Only a stated spacing can be wider than the rules: the layout keeps them by itself.
Check spacing_check(const JointLayout& layout, const JointSpacing& by_rule) {
    const bool wide = above(layout.widest_m, by_rule.m);
    return {.id = "joints.spacing",
            .verdict = wide ? Verdict::watch : Verdict::holds,
            .value = 1000 * layout.widest_m,
            .limit = Limit{.low = std::nullopt, .high = 1000 * by_rule.m},
            .measure = Measure::length,
            .requirement = "contraction joints",
            .source = by_rule.source,
            .message = {wide ? "panels up to {value} wide, at most {limit} by the rules: expect "
                               "cracks between the joints, or more horizontal steel"
                             : "panels up to {value} wide, at most {limit}",
                        {quantity("value", {1000 * layout.widest_m, Measure::length}),
                         quantity("limit", {1000 * by_rule.m, Measure::length})}}};
}

Check groove_check(double groove, double least_mm, const ContractionJointRules& rules) {
    const bool shallow = below(groove, least_mm);
    return {.id = "joints.groove",
            .verdict = shallow ? Verdict::fails : Verdict::holds,
            .value = groove,
            .limit = Limit{.low = least_mm, .high = std::nullopt},
            .measure = Measure::length,
            .requirement = "the wall cracks in the groove",
            .source = rules.groove_share.source,
            .message = {shallow ? "grooves of {value}, both faces together: below {limit} the wall "
                                  "may crack beside them"
                                : "grooves of {value}, both faces together, at least {limit}",
                        {quantity("value", {groove, Measure::length}),
                         quantity("limit", {least_mm, Measure::length})}}};
}

void measure_panels(const JointedWall& wall, JointLayout& layout) {
    std::vector<double> stations = layout.positions_m;
    stations.insert(stations.begin(), 0);
    stations.push_back(length_m(wall));
    layout.widest_m = 0;
    layout.narrowest_m = stations.back();
    for (std::size_t i = 1; i < stations.size(); ++i) {
        layout.widest_m = std::max(layout.widest_m, stations[i] - stations[i - 1]);
        layout.narrowest_m = std::min(layout.narrowest_m, stations[i] - stations[i - 1]);
    }
}

} // namespace

JointLayout joint_layout(const JointedWall& wall, const ContractionJointRules& rules) {
    JointLayout layout{};
    std::vector<JointSpacing> by_rule;
    double thickest_mm = 0;
    for (const WallStretch& stretch : wall.stretches) {
        thickest_mm = std::max(thickest_mm, stretch.thickness_mm);
        by_rule.push_back(joint_spacing(stretch, wall.many_openings, rules));
        layout.spacings.push_back(wall.spacing_m
                                      ? JointSpacing{*wall.spacing_m, SpacingRule::stated, {}}
                                      : by_rule.back());
    }
    const auto fixed_m = fixed_stations_m(wall);
    for (std::size_t i = 1; i < fixed_m.size(); ++i) {
        const bool first = i == 1;
        const bool last = i + 1 == fixed_m.size();
        const FixedSpan span{fixed_m[i - 1], fixed_m[i],
                             spacing_within_m(fixed_m[i - 1], fixed_m[i], wall, layout.spacings),
                             first && wall.corner_at_start, last && wall.corner_at_end};
        std::ranges::copy(joints_within_m(span, rules), std::back_inserter(layout.positions_m));
        if (!last) {
            layout.positions_m.push_back(fixed_m[i]);
        }
    }
    measure_panels(wall, layout);
    const double least_groove_mm = groove_mm(thickest_mm, rules);
    layout.groove_mm = wall.groove_mm.value_or(least_groove_mm);
    // One stated spacing serves every stretch: the closest rule holds it. Else each has its own.
    const auto [closest, widest] = std::ranges::minmax(by_rule, {}, &JointSpacing::m);
    layout.checks = {spacing_check(layout, wall.spacing_m ? closest : widest),
                     groove_check(layout.groove_mm, least_groove_mm, rules)};
    return layout;
}

} // namespace boardmark::core
