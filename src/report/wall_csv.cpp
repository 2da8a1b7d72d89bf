#include <boardmark/report/wall_report.hpp>

#include "csv_parts.hpp"
#include "wall_parts.hpp"

#include <fmt/format.h>

namespace boardmark::report {

std::string csv(const WallResult& result, core::UnitSystem system) {
    const bool us = system == core::UnitSystem::us;
    const std::string_view length = us ? "ft" : "m";
    const std::string_view thickness = us ? "in" : "mm";
    constexpr double mm_in_m = 1000;
    std::string text =
        csv_row({"wall", fmt::format("length ({})", length), fmt::format("lowest ({})", length),
                 fmt::format("highest ({})", length), fmt::format("thickness ({})", thickness),
                 fmt::format("thickness at the foot ({})", thickness), "shows", "openings"});
    for (const core::WallRun& run : result.wall.runs) {
        text += csv_row({csv_cell(run.name), csv_cell_in(mm_in_m * run.length_m, length),
                         csv_cell_in(mm_in_m * lowest_m(run), length),
                         csv_cell_in(mm_in_m * highest_m(run), length),
                         csv_cell_in(run.thickness_mm, thickness),
                         csv_cell_in(run.bottom_thickness_mm, thickness),
                         std::string{name_of(run.shows)}, std::to_string(openings_of(run))});
    }
    return text;
}

} // namespace boardmark::report
