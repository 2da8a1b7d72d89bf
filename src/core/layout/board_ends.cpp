#include "board_ends.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace boardmark::core {
namespace {

/// A course, or what stands on one station.
struct EndedCourse {
    double at_m;
    std::vector<double> ends_m = {};
};

double along_m(const LaidBoard& board) {
    return board.stands ? board.z_m : board.x_m;
}

double course_of_m(const LaidBoard& board) {
    return board.stands ? board.x_m : board.z_m;
}

bool at_a_joint(const Elevation& elevation, double station_m) {
    return std::ranges::any_of(elevation.joints,
                               [&](const FaceJoint& joint) { return same(joint.x_m, station_m); });
}

/// Courses from the first, with the ends where a board begins as another ends.
std::vector<EndedCourse> courses_with_ends(const Elevation& elevation) {
    std::vector<LaidBoard> boards = elevation.boards;
    std::ranges::sort(boards, [](const LaidBoard& one, const LaidBoard& other) {
        return same(course_of_m(one), course_of_m(other)) ? along_m(one) < along_m(other)
                                                          : course_of_m(one) < course_of_m(other);
    });
    std::vector<EndedCourse> courses;
    const LaidBoard* before = nullptr;
    for (const LaidBoard& board : boards) {
        if (courses.empty() || !same(courses.back().at_m, course_of_m(board))) {
            courses.push_back({course_of_m(board)});
            before = nullptr;
        }
        const double begins_m = along_m(board);
        if (before && same(along_m(*before) + before->length_m, begins_m) &&
            (board.stands || !at_a_joint(elevation, begins_m))) {
            courses.back().ends_m.push_back(begins_m);
        }
        before = &board;
    }
    return courses;
}

} // namespace

std::optional<double> least_stagger_m(const Elevation& elevation) {
    const auto courses = courses_with_ends(elevation);
    std::optional<double> least_m;
    for (std::size_t course = 1; course < courses.size(); ++course) {
        for (std::size_t below = course - std::min<std::size_t>(course, 2); below < course;
             ++below) {
            for (const double end_m : courses[course].ends_m) {
                for (const double other_m : courses[below].ends_m) {
                    const double apart_m = std::abs(end_m - other_m);
                    least_m = std::min(least_m.value_or(apart_m), apart_m);
                }
            }
        }
    }
    return least_m;
}

} // namespace boardmark::core
