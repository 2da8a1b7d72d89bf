#include <boardmark/report/wall/wall_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "../drawing/drawing_flow.hpp"
#include "../study/added_cost_report.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/verdicts.hpp"
#include "wall_after_text.hpp"
#include "wall_forces_text.hpp"
#include "wall_lines.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::UnitSystem;

std::string long_length(double metres, UnitSystem system) {
    return system == UnitSystem::us
               ? fmt::format("{:.2f} ft", units::unit("ft").from_inside(1000 * metres))
               : fmt::format("{:.2f} m", metres);
}

std::string thickness(double mm, UnitSystem system) {
    return shown({mm, core::Measure::length}, system);
}

std::string range(const std::string& low, const std::string& high) {
    return low == high ? low : low + " to " + high;
}

Flow text_of_runs(const std::vector<core::WallRun>& runs, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::left, Align::right}};
    grid.head({"wall", "length", "height", "thickness", "shows", "openings"});
    for (const core::WallRun& run : runs) {
        grid.add(
            {text::printable(run.name), long_length(run.length_m, system),
             range(long_length(lowest_m(run), system),
                   long_length(core::greatest_height_m(run), system)),
             range(thickness(run.thickness_mm, system), thickness(run.bottom_thickness_mm, system)),
             std::string{name_of(run.shows)}, std::to_string(openings_of(run))});
    }
    return grid;
}

/// Planters, benches and embedments in a line each.
Flow text_of_parts(const core::Wall& wall, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::left}};
    for (const core::Planter& planter : wall.planters) {
        grid.add({text::printable(planter.name),
                  fmt::format("{} planter{}", planter.count, planter.count == 1 ? "" : "s"),
                  fmt::format("{} x {} x {}", long_length(planter.length_m, system),
                              long_length(planter.width_m, system),
                              long_length(planter.height_m, system))});
    }
    for (const core::BenchTop& bench : wall.benches) {
        grid.add({text::printable(bench.name),
                  fmt::format("{} bench top{}", bench.count, bench.count == 1 ? "" : "s"),
                  fmt::format("{} x {} x {}", long_length(bench.length_m, system),
                              thickness(bench.depth_mm, system),
                              thickness(bench.thickness_mm, system))});
    }
    for (const core::Embedment& embedment : wall.embedments) {
        grid.add({text::printable(embedment.name), fmt::format("{} cast in", embedment.count), ""});
    }
    return grid;
}

std::string counted(double value, core::Measure measure, UnitSystem system) {
    return value == 0 ? "-" : shown({value, measure}, system);
}

Flow text_of_quantities(const core::WallQuantities& quantities, UnitSystem system) {
    using core::Measure;
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right, Align::right}};
    grid.head({"", "concrete", "footing", "formed", "showing", "ties"});
    const auto add = [&](const core::PartQuantities& part, const std::string& name) {
        grid.add({name, counted(part.concrete_m3, Measure::volume, system),
                  counted(part.footing_m3, Measure::volume, system),
                  counted(part.form_face_m2, Measure::area, system),
                  counted(part.shown_m2, Measure::area, system),
                  part.ties == 0 ? "-" : std::to_string(part.ties)});
    };
    for (const core::PartQuantities& part : quantities.parts) {
        add(part, column_name(part.name));
    }
    add(quantities.total, "total");
    const core::ConcreteOrder& order = quantities.order;
    const double footings_m3 = quantities.footing_order.order_m3;
    return grid +
           paragraph("Order " + shown({order.order_m3, Measure::volume}, system) +
                         " for the walls: " + shown({order.net_m3, Measure::volume}, system) +
                         fmt::format(" and {:.3g} % more, rounded up", order.waste_percent) +
                         (footings_m3 > 0 ? "; footings separately, " +
                                                shown({footings_m3, Measure::volume}, system)
                                          : "") +
                         ".",
                     {"  ", "  "});
}

std::string remainder_text(const core::CourseFit& fit, UnitSystem system) {
    if (!fit.whole_above_m) {
        return "whole";
    }
    std::string text = thickness(fit.remainder_mm, system) + " left; whole at ";
    if (fit.whole_below_m) {
        text += long_length(*fit.whole_below_m, system) + " or ";
    }
    return text + long_length(*fit.whole_above_m, system);
}

std::string times_told(int times) {
    return times == 1 ? "once" : fmt::format("{} times", times);
}

Flow text_of_boards(const WallResult& result, UnitSystem system) {
    const core::BoardOrder& order = result.plan.boards;
    Grid courses{{Align::left, Align::right, Align::right, Align::left}};
    courses.head(
        {"courses of " + thickness(result.wall.boards->course_mm, system), "over", "whole", ""});
    for (const core::RunCoursing& run : result.plan.coursing.runs) {
        for (const core::StepCoursing& step : run.steps) {
            if (!step.repeats) {
                courses.add({column_name(run.name), long_length(step.extent_m, system),
                             std::to_string(step.fit.whole), remainder_text(step.fit, system)});
            }
        }
    }
    std::string bought;
    for (const core::BoughtBoards& boards : order.boards) {
        bought += (bought.empty() ? "" : ", ") + fmt::format("{} of ", boards.bought) +
                  long_length(boards.stock_m, system);
    }
    const std::string bound = order.plan.proven
                                  ? "No cutting plan needs less."
                                  : "Any cutting plan needs at least " +
                                        long_length(order.plan.lower_bound_m, system) + ".";
    return courses +
           paragraph(fmt::format("Buy {} boards: {}; {} in all, {:.1f} % of it waste or spoiled, "
                                 "each board used {}. {} {} of joints between boards.",
                                 order.count, bought, long_length(order.length_m, system),
                                 order.waste_percent, times_told(result.wall.boards->uses), bound,
                                 long_length(order.lined_m, system)),
                     {"  ", "  "});
}

Flow text_of_placing(const WallResult& result, UnitSystem system) {
    using core::Measure;
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::left}};
    grid.head({"", "lifts", "each", "between lifts", "vibrator"});
    for (const core::RunPlan& run : result.plan.runs) {
        const auto minutes = run.lifts.between_lifts_min;
        const std::string vibrator =
            run.vibration
                ? fmt::format("{} insertions a lift, at most {} apart, {:.0f} to {:.0f} s, "
                              "tip {} below the lift's top",
                              run.vibration->insertions,
                              thickness(run.vibration->spacing_mm, system), run.vibration->least_s,
                              run.vibration->most_s, thickness(run.vibration->immersion_mm, system))
                : "";
        grid.add({column_name(run.wall), std::to_string(run.lifts.lifts),
                  thickness(1000 * run.lifts.lift_m, system),
                  minutes ? shown({*minutes / 60, Measure::duration}, system) : "-", vibrator});
    }
    Flow text = result.plan.runs.empty() ? Flow{} : Flow{grid};
    if (const auto& trucks = result.plan.trucks) {
        text += paragraph(words(told(*trucks), system) + ".", {"  ", "  "});
    }
    text += text_of_after(result.plan.after, system);
    return text;
}

Flow text_of_structure(const WallResult& result, UnitSystem system) {
    using core::Measure;
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::left}};
    grid.head(
        {"", "vertical, least", "horizontal, least", "grooves together", "contraction joints at"});
    for (const core::RunPlan& run : result.plan.runs) {
        std::vector<std::string> joints;
        for (const double position_m : run.joints.positions_m) {
            joints.push_back(long_length(position_m, system));
        }
        grid.add({column_name(run.wall),
                  shown({run.least_steel.vertical_mm2_m, Measure::steel_area}, system),
                  shown({run.least_steel.horizontal_mm2_m, Measure::steel_area}, system),
                  thickness(run.joints.groove_mm, system),
                  joints.empty() ? "none" : fmt::format("{}", fmt::join(joints, ", "))});
    }
    Flow text = grid;
    if (std::ranges::any_of(result.plan.runs, &core::RunPlan::round_a_planter)) {
        text += paragraph("Stations of a planter run round its outside from a corner, a length "
                          "first; its corners are cast in one piece.",
                          {"  ", "  "});
    }
    return text;
}

Flow wall_heading(const WallResult& result, UnitSystem system) {
    return paragraph(text::printable(result.wall.title), {}) + file_line(result.inputs) +
           paragraph("Concrete of " + text::printable(result.mix_file), {}) + "\n" +
           verdict_line(verdicts_of(result.plan), system) +
           strength_line(result.plan.mix_checks, system);
}

/// The figures that a wall file is opened for.
Flow text_of_figures_asked(const WallResult& result, const TextStyle& style) {
    const core::WallPlan& plan = result.plan;
    Flow text = section("QUANTITIES, by the nominal faces") +
                text_of_quantities(plan.quantities, style.system);
    if (!plan.forces.empty()) {
        text += section("FORCES ON THE FORMS, for planning") + text_of_forces(plan.forces, style) +
                text_of_rise(plan.forces, style.system);
    }
    text += section("PLACING") + text_of_placing(result, style.system);
    if (result.wall.boards) {
        text += section("BOARDS") + text_of_boards(result, style.system);
    }
    if (!plan.runs.empty()) {
        text += section("JOINTS AND STEEL") + text_of_structure(result, style.system);
    }
    return text;
}

/// What the file says of the walls, and the drawings of it.
Flow text_of_walls(const WallResult& result, UnitSystem system) {
    const core::Wall& wall = result.wall;
    Flow text;
    if (!wall.runs.empty()) {
        text += section("WALLS") + text_of_runs(wall.runs, system);
    }
    if (!wall.planters.empty() || !wall.benches.empty() || !wall.embedments.empty()) {
        text += section(wall.runs.empty() ? "PARTS" : "WITH THEM") + text_of_parts(wall, system);
    }
    return text + drawn_elevations(result.plan.layout, system) +
           drawn_sections(result.plan.layout, system);
}

Flow text_of_all_reasons(const WallResult& result, const TextStyle& style) {
    const core::WallPlan& plan = result.plan;
    Flow text;
    if (!plan.forces.empty()) {
        for (const core::FormPressure& pressure : plan.forces.front().pressures) {
            text += folded_section("REASONS, " + pressure.method + ", " +
                                   column_name(plan.forces.front().wall)) +
                    text_of_reasons(pressure.steps, style);
        }
    }
    text += folded_section("REASONS, quantities") +
            text_of_reasons(plan.quantities.worksheet.steps, style);
    return text + folded_section("LIMITS, where they come from") + text_of_limits(plan.checks) +
           text_of_limits(plan.mix_checks);
}

Flow flow_of(const WallResult& result, const TextStyle& style) {
    const core::WallPlan& plan = result.plan;
    Flow page = wall_heading(result, style.system) + text_of_figures_asked(result, style);
    page += section("CHECKS of the walls") + text_of_checks(plan.checks, style.system);
    page += section("CHECKS of the mix") + text_of_checks(plan.mix_checks, style.system);
    if (plan.added_cost) {
        page += section("ADDED COST over plain panels") +
                flow_of_added_cost(*plan.added_cost, style.system);
    }
    page += text_of_walls(result, style.system);
    if (style.explain) {
        page += text_of_all_reasons(result, style);
    }
    return page + section("CAUTIONS") + text_of_cautions(plan.cautions, style);
}

} // namespace

std::string text(const WallResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const WallResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.wall.title, .command = "wall", .inputs = result.inputs});
}

} // namespace boardmark::report
