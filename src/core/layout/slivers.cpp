#include <boardmark/core/layout/visible_part.hpp>
#include <boardmark/core/wall/course.hpp>

#include "../basis/tolerance.hpp"
#include "layout_parts.hpp"

#include <algorithm>
#include <optional>

namespace boardmark::core {
namespace {

/// A straight part of a face's top from left to right, level or sloping.
struct TopEdge {
    DrawnPoint from;
    DrawnPoint to;
};

std::vector<TopEdge> top_edges(const Elevation& elevation) {
    std::vector<TopEdge> edges;
    const auto top = top_of(elevation);
    for (std::size_t next = 1; next < top.size(); ++next) {
        if (above(top[next].x_m, top[next - 1].x_m)) {
            edges.push_back({top[next - 1], top[next]});
        }
    }
    return edges;
}

/// A course below one edge of the top.
struct CourseBelow {
    const TopEdge& edge;
    const Course& course;
    double least_m;

    double shown_m(const DrawnPoint& top) const {
        return std::min(course.high_m, top.z_m) - course.low_m;
    }
    bool too_narrow(double shown_m) const { return above(shown_m, 0) && below(shown_m, least_m); }

    /// Where the edge meets a height.
    double station_m(double height_m) const {
        return edge.from.x_m + (edge.to.x_m - edge.from.x_m) * (height_m - edge.from.z_m) /
                                   (edge.to.z_m - edge.from.z_m);
    }
    /// How far what begins at one end of the edge stays too narrow on the way to the other.
    double ends_at(const DrawnPoint& begin, const DrawnPoint& end) const {
        const bool falls = begin.z_m > end.z_m;
        return too_narrow(shown_m(end)) ? end.x_m : station_m(course.low_m + (falls ? 0 : least_m));
    }
};

/// Below a sloping edge every course that the slope crosses runs out to nothing: that is how a
/// slope looks, and no height avoids it. What looks like a mistake is a course that shows too
/// little where the edge ends, and so ends blunt: another height there would avoid it.
std::optional<Sliver> sliver_below(const CourseBelow& below_edge) {
    const TopEdge& edge = below_edge.edge;
    const double left = below_edge.shown_m(edge.from);
    const double right = below_edge.shown_m(edge.to);
    const bool at_left = below_edge.too_narrow(left);
    const bool at_right = below_edge.too_narrow(right);
    if (!at_left && !at_right) {
        return std::nullopt;
    }
    const double from_m = at_left ? edge.from.x_m : below_edge.ends_at(edge.to, edge.from);
    const double to_m = at_right ? edge.to.x_m : below_edge.ends_at(edge.from, edge.to);
    const double width_m = !at_right ? left : !at_left ? right : std::min(left, right);
    return Sliver{from_m, below_edge.course.low_m, to_m - from_m, width_m};
}

} // namespace

std::vector<Sliver> slivers_of(const LayoutCase& drawn, const Elevation& elevation) {
    if (elevation.boards.empty()) {
        return {};
    }
    const Boards& boards = *drawn.wall.boards;
    const double least_m = boards.course_mm / 1000 * drawn.sliver_percent / 100;
    std::vector<Sliver> slivers;
    for (const LaidBoard& board : elevation.boards) {
        if (board.stands && below(board.width_m, least_m)) {
            slivers.push_back({board.x_m, board.z_m, board.length_m, board.width_m, true});
        }
    }
    if (elevation.boards.front().stands) {
        return slivers;
    }
    const auto courses = courses_of(elevation.height_m, boards, drawn.wall.layout.courses_from);
    for (const TopEdge& edge : top_edges(elevation)) {
        for (const Course& course : courses) {
            if (const auto sliver = sliver_below({edge, course, least_m})) {
                slivers.push_back(*sliver);
            }
        }
    }
    return slivers;
}

} // namespace boardmark::core
