#include <boardmark/core/wall/coursing.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// What is left of an extent after whole courses; lengths closer than a millionth of a course are
/// whole.
double remainder_mm(double extent_m, double course_mm) {
    const double courses = extent_m * 1000 / course_mm;
    return same(courses, std::round(courses)) ? 0 : (courses - std::floor(courses)) * course_mm;
}

/// The highest course below a step's top where courses hang from a greater height.
double highest_from_top_mm(double below_top_m, double course_mm) {
    const double taken_mm = remainder_mm(below_top_m, course_mm);
    return taken_mm == 0 ? 0 : course_mm - taken_mm;
}

/// Which cut course looks like a mistake.
struct CutRule {
    TypicalFigure least; ///< percent of a course
    CoursesFrom from;
};

/// What the cut course of an extent measures, by where courses are counted from; 0: none is cut,
/// or what is left is shared out, so that each cut one is at least half a course.
double cut_course_mm(const StepCoursing& step, double greatest_m, CoursesFrom from) {
    switch (from) {
    case CoursesFrom::bottom:
        return step.fit.remainder_mm;
    case CoursesFrom::top:
        return same(greatest_m, step.extent_m) ? step.lowest_from_top_mm : step.highest_from_top_mm;
    case CoursesFrom::both:
        break;
    }
    return 0;
}

StepCoursing step_coursing(const HeightAt& extent, double greatest_m, double course_mm,
                           const CutRule& rule) {
    StepCoursing step{.station_m = extent.station_m,
                      .extent_m = extent.height_m,
                      .fit = fit_courses(extent.height_m, course_mm),
                      .lowest_from_top_mm = remainder_mm(greatest_m, course_mm),
                      .highest_from_top_mm =
                          highest_from_top_mm(greatest_m - extent.height_m, course_mm),
                      .poor_cut = false};
    const double cut_mm = cut_course_mm(step, greatest_m, rule.from);
    step.poor_cut = cut_mm > 0 && below(cut_mm, course_mm * rule.least.value / 100);
    return step;
}

Phrase poor_cut(const RunCoursing& run, const StepCoursing& step) {
    const bool stands = run.direction == BoardDirection::vertical;
    Phrase caution{
        "{name}: " + std::string(stands ? "a length" : "a height") + " of {extent} leaves a cut " +
            (stands ? "board" : "course") + " of {remainder}, too narrow to look intended",
        {word("name", run.name), quantity("extent", {step.extent_m * 1000, Measure::length}),
         quantity("remainder", {step.fit.remainder_mm, Measure::length})}};
    const auto whole = [&](const char* name, const std::optional<double>& extent_m) {
        caution.arguments.push_back(quantity(name, {*extent_m * 1000, Measure::length}));
    };
    if (step.fit.whole_below_m) {
        caution.text += "; {below} or {above} would make it whole";
        whole("below", step.fit.whole_below_m);
    } else {
        caution.text += "; {above} would make it whole";
    }
    whole("above", step.fit.whole_above_m);
    return caution;
}

void add(const Boards& boards, std::string name, const std::vector<HeightAt>& extents,
         const CutRule& rule, WallCoursing& coursing) {
    RunCoursing run{.name = std::move(name),
                    .direction = boards.direction,
                    .course_mm = boards.course_mm,
                    .steps = {}};
    const double greatest_m = std::ranges::max(extents, {}, &HeightAt::height_m).height_m;
    for (const HeightAt& extent : extents) {
        StepCoursing step = step_coursing(extent, greatest_m, boards.course_mm, rule);
        step.repeats = std::ranges::any_of(run.steps, [&](const StepCoursing& before) {
            return same(before.extent_m, step.extent_m);
        });
        run.steps.push_back(step);
        if (step.poor_cut && !step.repeats) {
            coursing.worksheet.cautions.push_back(poor_cut(run, run.steps.back()));
        }
    }
    coursing.runs.push_back(std::move(run));
}

void say_the_rule(const Boards& boards, const TypicalFigure& least, WallCoursing& coursing) {
    const std::string text =
        boards.direction == BoardDirection::horizontal
            ? "whole courses of {course} counted from the top of the footing; a "
              "cut course below {least} of one looks like a mistake"
            : "whole boards of {course} counted from the start of the run; a cut "
              "board below {least} of one looks like a mistake";
    coursing.worksheet.steps.push_back(
        {.quantity = "courses",
         .value = std::nullopt,
         .measure = Measure::count,
         .provenance = Provenance::computed,
         .reason = {text,
                    {quantity("course", {boards.course_mm, Measure::length}),
                     percent_of("least", least.value)}},
         .source = least.source,
         .marks = with_confidence({}, least.source)});
}

} // namespace

CourseFit fit_courses(double extent_m, double course_mm) {
    CourseFit fit{.whole = 0,
                  .remainder_mm = remainder_mm(extent_m, course_mm),
                  .whole_below_m = std::nullopt,
                  .whole_above_m = std::nullopt};
    const double courses = extent_m * 1000 / course_mm;
    fit.whole = static_cast<int>(fit.remainder_mm == 0 ? std::round(courses) : std::floor(courses));
    if (fit.remainder_mm > 0) {
        fit.whole_above_m = (fit.whole + 1) * course_mm / 1000;
        if (fit.whole > 0) {
            fit.whole_below_m = fit.whole * course_mm / 1000;
        }
    }
    return fit;
}

WallCoursing coursing(const Wall& wall, const PracticeTables& practice) {
    WallCoursing coursing;
    if (!wall.boards) {
        return coursing;
    }
    const TypicalFigure& least = practice.cut_course_percent;
    const bool stands = wall.boards->direction == BoardDirection::vertical;
    const CutRule rule{least, stands ? CoursesFrom::bottom : wall.layout.courses_from};
    say_the_rule(*wall.boards, least, coursing);
    for (const WallRun& run : wall.runs) {
        add(*wall.boards, run.name, stands ? std::vector<HeightAt>{{0, run.length_m}} : run.heights,
            rule, coursing);
    }
    for (const Planter& planter : wall.planters) {
        std::vector<HeightAt> extents{{0, stands ? planter.length_m : planter.height_m}};
        if (stands) {
            extents.push_back({0, planter.width_m});
        }
        add(*wall.boards, planter.name, extents, rule, coursing);
    }
    return coursing;
}

} // namespace boardmark::core
