#include <boardmark/report/wall_report.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "flow.hpp"
#include "grid.hpp"
#include "html.hpp"
#include "quantity_format.hpp"
#include "text_parts.hpp"
#include "wall_parts.hpp"

#include <fmt/format.h>

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
             range(long_length(lowest_m(run), system), long_length(highest_m(run), system)),
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

Flow flow_of(const WallResult& result, const TextStyle& style) {
    const core::Wall& wall = result.wall;
    Flow page = paragraph(text::printable(wall.title), {}) +
                paragraph("concrete of " + text::printable(result.mix_file), {});
    page += section("WALLS") + text_of_runs(wall.runs, style.system);
    if (!wall.planters.empty() || !wall.benches.empty() || !wall.embedments.empty()) {
        page += section("WITH THEM") + text_of_parts(wall, style.system);
    }
    return page;
}

} // namespace

std::string text(const WallResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const WallResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style), {.title = result.wall.title, .command = "wall"});
}

} // namespace boardmark::report
