#include <boardmark/core/wall/course.hpp>

#include "../basis/tolerance.hpp"
#include "layout_parts.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// A level part of a face's top.
struct LevelTop {
    double from_m;
    double to_m;
    double height_m;
};

std::vector<LevelTop> level_tops(const Elevation& elevation) {
    std::vector<LevelTop> tops;
    const auto& outline = elevation.outline;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const DrawnPoint& one = outline[i];
        const DrawnPoint& next = outline[(i + 1) % outline.size()];
        if (one.z_m > 0 && same(one.z_m, next.z_m)) {
            tops.push_back({std::min(one.x_m, next.x_m), std::max(one.x_m, next.x_m), one.z_m});
        }
    }
    std::ranges::sort(tops, {}, &LevelTop::from_m);
    return tops;
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
    for (const LevelTop& top : level_tops(elevation)) {
        for (const Course& course : courses) {
            const double width_m = std::min(course.high_m, top.height_m) - course.low_m;
            if (above(width_m, 0) && below(width_m, least_m)) {
                slivers.push_back({top.from_m, course.low_m, top.to_m - top.from_m, width_m});
            }
        }
    }
    return slivers;
}

} // namespace boardmark::core
