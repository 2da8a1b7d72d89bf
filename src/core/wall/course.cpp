#include <boardmark/core/wall/course.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// What the lowest course measures.
double lowest_m(double height_m, double course_m, CoursesFrom from) {
    const double courses = height_m / course_m;
    const bool whole = same(courses, std::round(courses));
    if (from == CoursesFrom::bottom || whole) {
        return course_m;
    }
    const double left_m = (courses - std::floor(courses)) * course_m;
    if (from == CoursesFrom::top) {
        return left_m;
    }
    return courses < 1 ? course_m : (left_m + course_m) / 2;
}

} // namespace

std::vector<Course> courses_of(double height_m, const Boards& boards, CoursesFrom from) {
    const double course_m = boards.course_mm / 1000;
    const double first_m = lowest_m(height_m, course_m, from);
    std::vector<Course> courses{{0, std::min(first_m, height_m)}};
    for (int next = 0; below(first_m + next * course_m, height_m); ++next) {
        const double low_m = first_m + next * course_m;
        courses.push_back({low_m, std::min(first_m + (next + 1) * course_m, height_m)});
    }
    return courses;
}

std::vector<double> board_joints_m(double height_m, const Boards& boards, CoursesFrom from) {
    std::vector<double> joints_m;
    for (const Course& course : courses_of(height_m, boards, from)) {
        if (course.low_m > 0) {
            joints_m.push_back(course.low_m);
        }
    }
    return joints_m;
}

} // namespace boardmark::core
