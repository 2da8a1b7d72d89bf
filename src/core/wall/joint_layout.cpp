#include <boardmark/core/wall/joint_layout.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/remembered_limit.hpp"
#include "joint_spacing.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string>
#include <utility>

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

/// A station that bounds panels: an end, a corner, or a joint that must be.
struct Bound {
    double at_m;
    bool corner = false;
    bool joint = false;
};

std::vector<double> steps_m(const JointedWall& wall) {
    std::vector<double> stations;
    double at_m = 0;
    for (std::size_t i = 0; i + 1 < wall.stretches.size(); ++i) {
        at_m += wall.stretches[i].length_m;
        if (changes(wall.stretches[i], wall.stretches[i + 1])) {
            stations.push_back(at_m);
        }
    }
    return stations;
}

/// Adds joints at the stations that are far enough from all bounds before them.
void add_joints(std::vector<double> stations, double least_m, std::vector<Bound>& bounds,
                JointLayout& layout) {
    std::ranges::sort(stations);
    for (const double at_m : stations) {
        const auto distance_m = [&](const Bound& bound) { return std::abs(bound.at_m - at_m); };
        const auto nearest = std::ranges::min_element(bounds, {}, distance_m);
        const bool there_already = nearest->joint && same(nearest->at_m, at_m);
        if (!there_already && below(distance_m(*nearest), least_m)) {
            layout.left_out_m.push_back(at_m);
        } else if (!there_already) {
            bounds.push_back({.at_m = at_m, .joint = true});
        }
    }
}

/// Ends, corners and the joints that must be, by station.
std::vector<Bound> bounds_of(const JointedWall& wall, double least_m, JointLayout& layout) {
    const double whole_m = length_m(wall);
    std::vector<Bound> bounds{{.at_m = 0, .corner = wall.corner_at_start},
                              {.at_m = whole_m, .corner = wall.corner_at_end}};
    const auto inside = [&](double at_m) { return above(at_m, 0) && below(at_m, whole_m); };
    for (const double corner_m : wall.corners_m) {
        if (inside(corner_m)) {
            bounds.push_back({.at_m = corner_m, .corner = true});
        }
    }
    add_joints(steps_m(wall), least_m, bounds, layout);
    std::vector<double> openings_m;
    std::ranges::copy_if(wall.openings_m, std::back_inserter(openings_m), inside);
    add_joints(std::move(openings_m), least_m, bounds, layout);
    std::ranges::sort(bounds, {}, &Bound::at_m);
    std::ranges::sort(layout.left_out_m);
    return bounds;
}

/// The closest spacing of the stretches that a span touches.
const JointSpacing& spacing_within(double from_m, double to_m, const JointedWall& wall,
                                   const std::vector<JointSpacing>& spacings) {
    const JointSpacing* closest = nullptr;
    double begin_m = 0;
    for (std::size_t i = 0; i < wall.stretches.size(); ++i) {
        const double end_m = begin_m + wall.stretches[i].length_m;
        const bool touched = below(begin_m, to_m) && above(end_m, from_m);
        if (touched && (!closest || spacings[i].m < closest->m)) {
            closest = &spacings[i];
        }
        begin_m = end_m;
    }
    return closest ? *closest : spacings.front();
}

/// A panel beside what the rules allow it.
struct HeldPanel {
    double width_m;
    JointSpacing by_rule;

    double part_of_rule() const { return width_m / by_rule.m; }
};

void add_left_out(const JointLayout& layout, const ContractionJointRules& rules, Check& check) {
    check.message.text += "; no joint at {stations}, nearer than {least} to an end, a corner or "
                          "another joint: a crack may start there; bars across it keep it narrow";
    std::string stations;
    for (std::size_t i = 0; i < layout.left_out_m.size(); ++i) {
        const std::string name = "left_out_" + std::to_string(i + 1);
        stations += (i == 0 ? "{" : ", {") + name + "}";
        check.message.arguments.push_back(
            quantity(name, {layout.left_out_m[i], Measure::line_length}));
    }
    check.message.text.replace(check.message.text.find("{stations}"), 10, stations);
    check.message.arguments.push_back(
        quantity("least", {rules.least_apart_m.value, Measure::line_length}));
}

void add_without(const JointLayout& layout, const ContractionJointRules& rules, Check& check) {
    std::string sides;
    for (std::size_t i = 0; i < layout.without.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        sides += (i == 0 ? "{" : ", {") + ("side_from_" + number) + "} to {side_to_" + number + "}";
        check.message.arguments.push_back(
            quantity("side_from_" + number, {layout.without[i].from_m, Measure::line_length}));
        check.message.arguments.push_back(
            quantity("side_to_" + number, {layout.without[i].to_m, Measure::line_length}));
    }
    check.message.text += "; no joint on the side from " + sides +
                          ": joints are kept at least {apart} from a corner or an end, where bars "
                          "round the corner keep cracks narrow";
    check.message.arguments.push_back(
        quantity("apart", {rules.least_apart_m.value, Measure::line_length}));
}

/// Panels wider than the rules come of a stated spacing, or of joints that stand too near.
Check spacing_check(const JointedWall& wall, const JointLayout& layout, const HeldPanel& hardest,
                    const ContractionJointRules& rules) {
    const bool wide = above(hardest.width_m, hardest.by_rule.m);
    Check check{.id = check_ids::joints_spacing,
                .verdict = wide ? Verdict::watch : Verdict::holds,
                .value = hardest.width_m,
                .limit = Limit{.low = std::nullopt, .high = hardest.by_rule.m},
                .measure = Measure::line_length,
                .requirement = "contraction joints",
                .source = hardest.by_rule.source,
                .message = {wide ? "panels up to {value} wide, at most {limit} by the rules: "
                                   "expect cracks between the joints, or add horizontal steel"
                                 : "panels up to {value} wide, at most {limit}",
                            {quantity("value", {hardest.width_m, Measure::line_length}),
                             quantity("limit", {hardest.by_rule.m, Measure::line_length})}}};
    if (!layout.left_out_m.empty()) {
        check.verdict = Verdict::watch;
        add_left_out(layout, rules, check);
    }
    if (!layout.without.empty()) {
        check.verdict = Verdict::watch;
        add_without(layout, rules, check);
    }
    if (wall.openings_unplaced) {
        check.verdict = Verdict::watch;
        check.message.text += "; openings whose stations ('at') are not stated have no joint yet";
    }
    if (wall.corners_assumed) {
        check.verdict = Verdict::watch;
        check.message.text += "; its corners are taken at its ends: state where they are, as in "
                              "'{key}'";
        check.message.arguments.push_back(word("key", "corners: {12 ft: 90 deg}"));
    }
    watch_what_is_from_memory(check);
    return check;
}

Check groove_check(double groove, double least_mm, const ContractionJointRules& rules) {
    const bool shallow = below(groove, least_mm);
    return {.id = check_ids::joints_groove,
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

/// Joint to joint, round corners too; beyond the start of a closed wall it goes on at its end.
std::vector<HeldPanel> panels_through_corners(const JointedWall& wall,
                                              const std::vector<JointSpacing>& by_rule,
                                              const JointLayout& layout) {
    const double whole_m = length_m(wall);
    const auto& joints = layout.positions_m;
    std::vector<double> stations = joints;
    if (!wall.closed || joints.empty()) {
        stations.insert(stations.begin(), 0);
        stations.push_back(whole_m);
    }
    std::vector<HeldPanel> panels;
    for (std::size_t i = 1; i < stations.size(); ++i) {
        panels.push_back({stations[i] - stations[i - 1],
                          spacing_within(stations[i - 1], stations[i], wall, by_rule)});
    }
    if (wall.closed && !joints.empty()) {
        const JointSpacing& first = spacing_within(0, joints.front(), wall, by_rule);
        const JointSpacing& last = spacing_within(joints.back(), whole_m, wall, by_rule);
        panels.push_back(
            {joints.front() + whole_m - joints.back(), last.m < first.m ? last : first});
    }
    return panels;
}

/// Measures the panels; the one that comes nearest to its rule, or breaks it most.
HeldPanel measure_panels(const JointedWall& wall, const std::vector<JointSpacing>& by_rule,
                         JointLayout& layout) {
    const auto panels = panels_through_corners(wall, by_rule, layout);
    layout.widest_m = std::ranges::max(panels, {}, &HeldPanel::width_m).width_m;
    return std::ranges::max(panels, {}, &HeldPanel::part_of_rule);
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
    const auto bounds = bounds_of(wall, rules.least_apart_m.value, layout);
    for (std::size_t i = 1; i < bounds.size(); ++i) {
        const Bound& left = bounds[i - 1];
        const Bound& right = bounds[i];
        const FixedSpan span{left.at_m, right.at_m,
                             spacing_within(left.at_m, right.at_m, wall, layout.spacings).m,
                             left.corner, right.corner};
        const auto joints = joints_within_m(span, rules);
        if (joints.empty() && asks_a_joint(span, rules)) {
            layout.without.push_back({left.at_m, right.at_m});
        }
        std::ranges::copy(joints, std::back_inserter(layout.positions_m));
        if (right.joint) {
            layout.positions_m.push_back(right.at_m);
        }
    }
    const HeldPanel hardest = measure_panels(wall, by_rule, layout);
    const double least_groove_mm = groove_mm(thickest_mm, rules);
    layout.groove_mm = wall.groove_mm.value_or(least_groove_mm);
    layout.checks = {spacing_check(wall, layout, hardest, rules),
                     groove_check(layout.groove_mm, least_groove_mm, rules)};
    return layout;
}

} // namespace boardmark::core
