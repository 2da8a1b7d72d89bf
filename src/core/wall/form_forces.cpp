#include "form_forces.hpp"

#include "wall_checks.hpp"

#include <cmath>
#include <utility>

namespace boardmark::core {
namespace {

/// Rows of ties in the middle of equal strips, as they are counted.
TieGrid tie_grid_of(const Ties& ties, double height_m) {
    const double up_m = ties.up_mm / 1000;
    constexpr double as_good_as_whole = 1e-9;
    const double rows = std::max(1.0, std::ceil(height_m / up_m - as_good_as_whole));
    const double spacing_m = height_m / rows;
    return {row_heights({.first_m = spacing_m / 2, .spacing_m = spacing_m, .top_m = height_m}),
            ties.across_mm / 1000};
}

std::optional<TieRating> rating_of(const Ties& ties) {
    if (ties.working_load_kn) {
        return TieRating{.kn = *ties.working_load_kn};
    }
    return ties.breaking_load_kn ? std::optional{TieRating{*ties.breaking_load_kn, true}}
                                 : std::nullopt;
}

} // namespace

FormForces form_forces(const Wall& wall, const FormedWall& formed, const Proportions& proportions,
                       const Tables& tables, std::vector<Check>& checks) {
    const FormRise rise{formed.smallest_plan_m2, wall.placing.rise_m_h, formed.output_m3_h};
    if (const auto check = rise_check(rise, tables.system)) {
        checks.push_back(of_wall(formed.name, *check));
    }
    const FormCase pour = form_case(wall, proportions, formed.height_m, rise.fastest_m_h(), tables);
    FormForces forces{.wall = formed.name,
                      .height_m = formed.height_m,
                      .rise = rise,
                      .concrete_c = pour.temperature_c,
                      .slump_mm = pour.highest_slump_mm,
                      .pressures = {},
                      .tie_rows = {},
                      .rise_by_form = {},
                      .rise_by_ties = {}};
    for (FormPressure& pressure : form_pressures(pour, tables)) {
        if (pressure.data_suffice || forces.pressures.empty()) {
            forces.pressures.push_back(std::move(pressure));
        }
    }
    const FormPressure& first = forces.pressures.front();
    if (wall.placing.form_pressure_kpa) {
        forces.rise_by_form = allowable_rise(pour, *wall.placing.form_pressure_kpa, tables);
        checks.push_back(of_wall(
            formed.name, form_pressure_check(first, wall.placing.form_pressure_kpa, tables)));
    }
    if (wall.ties) {
        const TieGrid grid = tie_grid_of(*wall.ties, formed.height_m);
        const auto rating = rating_of(*wall.ties);
        forces.tie_rows = tie_loads(first, grid);
        checks.push_back(of_wall(formed.name, tie_check(first, grid, rating, tables)));
        if (rating) {
            const double area_m2 =
                formed.height_m / double(grid.row_heights_m.size()) * grid.column_spacing_m;
            forces.rise_by_ties = allowable_rise(
                pour, pressure_of_ties_kpa({working_load_kn(*rating, tables), area_m2}), tables);
        }
    }
    return forces;
}

} // namespace boardmark::core
