#include <boardmark/core/layout/visible_part.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// An upright rectangle on a face.
struct Upright {
    double from_m;
    double to_m;
    double low_m;
    double high_m;
};

Upright upright_of(const LaidBoard& board) {
    return {board.x_m, board.x_m + (board.stands ? board.width_m : board.length_m), board.z_m,
            board.z_m + (board.stands ? board.length_m : board.width_m)};
}

/// Adds a straight piece of the top, cut off at the rectangle's edges.
void add_piece(const DrawnPoint& from, const DrawnPoint& to, const Upright& box,
               std::vector<DrawnPoint>& line) {
    const double left_m = std::max(from.x_m, box.from_m);
    const double right_m = std::min(to.x_m, box.to_m);
    if (!below(left_m, right_m)) {
        return;
    }
    const double slope = (to.z_m - from.z_m) / (to.x_m - from.x_m);
    std::vector<double> stations_m{left_m, right_m};
    for (const double level_m : {box.low_m, box.high_m}) {
        const double crossing_m = slope == 0 ? left_m : from.x_m + (level_m - from.z_m) / slope;
        if (above(crossing_m, left_m) && below(crossing_m, right_m)) {
            stations_m.push_back(crossing_m);
        }
    }
    std::ranges::sort(stations_m);
    for (const double station_m : stations_m) {
        const double top_m = from.z_m + slope * (station_m - from.x_m);
        line.push_back({station_m, std::clamp(top_m, box.low_m, box.high_m)});
    }
}

bool one_place(const DrawnPoint& one, const DrawnPoint& other) {
    return same(one.x_m, other.x_m) && same(one.z_m, other.z_m);
}

} // namespace

std::vector<DrawnPoint> top_of(const Elevation& elevation) {
    return {elevation.outline.rbegin(), elevation.outline.rend() - 2};
}

std::vector<DrawnPoint> visible_part(const LaidBoard& board, const Elevation& elevation) {
    const Upright box = upright_of(board);
    const auto top = top_of(elevation);
    std::vector<DrawnPoint> line;
    for (std::size_t next = 1; next < top.size(); ++next) {
        add_piece(top[next - 1], top[next], box, line);
    }
    std::vector<DrawnPoint> corners{{box.from_m, box.low_m}, {box.to_m, box.low_m}};
    for (auto point = line.rbegin(); point != line.rend(); ++point) {
        if (!one_place(corners.back(), *point) && !one_place(corners.front(), *point)) {
            corners.push_back(*point);
        }
    }
    return corners;
}

} // namespace boardmark::core
