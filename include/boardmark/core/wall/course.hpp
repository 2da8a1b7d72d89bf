#pragma once

#include <boardmark/core/wall/wall.hpp>

#include <vector>

namespace boardmark::core {

/// A course of boards that lie, above the bottom of a face.
struct Course {
    double low_m;
    double high_m;

    double width_m() const { return high_m - low_m; }
};

/// Courses that cover a height, from the bottom up. Counted from the bottom the highest is cut,
/// from the top the lowest; from both, what whole courses leave is shared by the lowest and the
/// highest, with one course more, so that neither is less than half of one.
///
/// @param height_m > 0
std::vector<Course> courses_of(double height_m, const Boards& boards, CoursesFrom from);

/// Heights of the joints between them.
std::vector<double> board_joints_m(double height_m, const Boards& boards, CoursesFrom from);

} // namespace boardmark::core
