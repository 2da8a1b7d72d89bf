#include "wall_tables.hpp"

namespace boardmark::report {
namespace {

using core::Measure;

void add_course(LongTable& table, const core::RunCoursing& run, std::size_t number) {
    const core::StepCoursing& step = run.steps[number - 1];
    table.subject(run.name, "height", number);
    table.add("station", Measure::line_length, step.station_m);
    table.add("courses over", Measure::line_length, step.extent_m);
    table.add("height of a course", Measure::length, run.course_mm);
    table.add_count("whole courses", step.fit.whole);
    table.add("left", Measure::length, step.fit.remainder_mm,
              step.poor_cut ? "too narrow to look intended" : "");
    if (step.fit.whole_below_m) {
        table.add("whole below", Measure::line_length, step.fit.whole_below_m);
    }
    if (step.fit.whole_above_m) {
        table.add("whole above", Measure::line_length, step.fit.whole_above_m);
    }
}

} // namespace

void add_boards(LongTable& table, const WallResult& result) {
    const core::WallPlan& plan = result.plan;
    table.section("courses");
    for (const core::RunCoursing& run : plan.coursing.runs) {
        for (std::size_t number = 1; number <= run.steps.size(); ++number) {
            add_course(table, run, number);
        }
    }
    const core::BoardOrder& order = plan.boards;
    table.section("boards");
    std::size_t number = 0;
    for (const core::BoughtBoards& boards : order.boards) {
        table.subject("", "stock length", ++number);
        table.add("stock length", Measure::line_length, boards.stock_m);
        table.add_count("cut", boards.cut);
        table.add_count("to buy", boards.bought);
    }
    table.subject("in all");
    table.add_count("to buy", order.count);
    table.add("bought", Measure::line_length, order.length_m);
    table.add("waste or spoiled", Measure::percent, order.waste_percent);
    table.add("waste of cutting", Measure::percent, order.cut_waste_percent);
    table.add_count("uses of a board", result.wall.boards->uses);
    table.add("joints between boards", Measure::line_length, order.lined_m);
    table.add("bought to cut", Measure::line_length, order.plan.bought_m);
    table.add("any cutting plan needs at least", Measure::line_length, order.plan.lower_bound_m,
              order.plan.proven ? "no cutting plan needs less than this one" : "");
}

} // namespace boardmark::report
