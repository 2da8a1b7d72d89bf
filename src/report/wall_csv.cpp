#include <boardmark/report/wall_report.hpp>
#include <boardmark/report/words.hpp>

#include "csv_parts.hpp"
#include "wall_parts.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

/// The units of the columns.
struct Units {
    bool us;
    std::string_view long_length = us ? "ft" : "m";
    std::string_view volume = us ? "yd3" : "m3";
    std::string_view area = us ? "ft2" : "m2";
    std::string_view pressure = us ? "psf" : "kPa";
    std::string_view force = us ? "lbf" : "kN";
    std::string_view length = us ? "in" : "mm";
};

const core::WallRun* run_of(const core::Wall& wall, const std::string& name) {
    const auto found = std::ranges::find(wall.runs, name, &core::WallRun::name);
    return found == wall.runs.end() ? nullptr : &*found;
}

/// Lengths of a run; empty for planters and benches.
std::vector<std::string> shape_cells(const core::WallRun* run, const Units& units) {
    constexpr double mm_in_m = 1000;
    if (!run) {
        return {"", "", "", ""};
    }
    return {csv_cell_in(mm_in_m * run->length_m, units.long_length),
            csv_cell_in(mm_in_m * highest_m(*run), units.long_length),
            csv_cell_in(run->thickness_mm, units.length),
            csv_cell_in(run->bottom_thickness_mm, units.length)};
}

/// What the fresh concrete does to the forms, by the first method, with its caution.
std::vector<std::string> force_cells(const core::WallPlan& plan, const std::string& name,
                                     const Units& units) {
    const auto found = std::ranges::find(plan.forces, name, &core::FormForces::wall);
    if (found == plan.forces.end()) {
        return {"", "", "", "", ""};
    }
    const core::FormPressure& pressure = found->pressures.front();
    const auto tie_kn = hardest_tie_kn(*found);
    constexpr double kpa_in_mpa = 1000;
    std::string governor{core::name_of(pressure.governed_by)};
    std::ranges::replace(governor, '_', ' ');
    return {pressure.method, csv_cell_in(pressure.kpa / kpa_in_mpa, units.pressure), governor,
            tie_kn ? csv_cell_in(*tie_kn, units.force) : "",
            csv_cell(words(core::form_caution(), core::UnitSystem::si))};
}

} // namespace

std::string csv(const WallResult& result, core::UnitSystem system) {
    const Units units{.us = system == core::UnitSystem::us};
    std::string text = csv_row(
        {"wall", fmt::format("length ({})", units.long_length),
         fmt::format("highest ({})", units.long_length),
         fmt::format("thickness ({})", units.length),
         fmt::format("thickness at the foot ({})", units.length),
         fmt::format("concrete ({})", units.volume), fmt::format("footing ({})", units.volume),
         fmt::format("formed ({})", units.area), fmt::format("showing ({})", units.area), "ties",
         "method", fmt::format("pressure ({})", units.pressure), "governed by",
         fmt::format("hardest tie ({})", units.force), "caution"});
    for (const core::PartQuantities& part : result.plan.quantities.parts) {
        std::vector<std::string> row{csv_cell(part.name)};
        const auto add = [&](std::vector<std::string> cells) {
            row.insert(row.end(), cells.begin(), cells.end());
        };
        add(shape_cells(run_of(result.wall, part.name), units));
        add({csv_cell_in(part.concrete_m3, units.volume),
             csv_cell_in(part.footing_m3, units.volume), csv_cell_in(part.form_face_m2, units.area),
             csv_cell_in(part.shown_m2, units.area), std::to_string(part.ties)});
        add(force_cells(result.plan, part.name, units));
        text += csv_row(row);
    }
    return text;
}

} // namespace boardmark::report
