#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/practice_tables.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// How courses fill a height, or boards that stand a length.
struct CourseFit {
    int whole;                           ///< whole courses
    double remainder_mm;                 ///< what they leave; 0 where they fill it
    std::optional<double> whole_below_m; ///< nearest lower extent of whole courses, at least one
    std::optional<double> whole_above_m; ///< nearest higher one; both absent where it is whole
};

/// Courses against one stated height of a run, or against the length where boards stand.
struct StepCoursing {
    double station_m; ///< where the height is stated
    double extent_m;  ///< the height or length
    CourseFit fit;    ///< courses counted from the footing, or from the start of the run
    /// Where courses hang from the greatest height instead: what the lowest course measures and
    /// what the highest below this step's top measures. 0 where it is whole.
    double lowest_from_top_mm;
    double highest_from_top_mm;
    bool poor_cut;        ///< the cut course, counted from the footing, is too small to look meant
    bool repeats = false; ///< an earlier station has the same height: said once is enough
};

/// The coursing of one run or planter.
struct RunCoursing {
    std::string name;
    BoardDirection direction;
    double course_mm;
    std::vector<StepCoursing> steps; ///< one for each stated height; one where boards stand
};

/// The coursing of a wall file.
struct WallCoursing {
    std::vector<RunCoursing> runs; ///< then planters; empty where the file has no boards
    Worksheet worksheet;           ///< a caution for each cut course that is too small
};

/// @param extent_m > 0
/// @param course_mm > 0
CourseFit fit_courses(double extent_m, double course_mm);

/// Holds the courses against each height of each run and planter, or the boards that stand against
/// each length.
WallCoursing coursing(const Wall& wall, const PracticeTables& practice);

} // namespace boardmark::core
