#include <boardmark/core/wall/tie_layout.hpp>

#include "../basis/tolerance.hpp"
#include "tie_columns.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// The fewest equal parts of at most `spacing_m` that a length is divided into.
int parts_of(double length_m, double spacing_m) {
    const double parts = length_m / spacing_m;
    const double nearest = std::round(parts);
    return std::max(1, static_cast<int>(same(parts, nearest) ? nearest : std::ceil(parts)));
}

constexpr double right_angle_deg = 90;

/// How far the outer face of a bend goes beyond the middle line, on either side of it. A wall that
/// turns by more than five sixths back on itself has a blunt end there, not a longer point.
double beyond_m(double thickness_mm, double turn_deg) {
    constexpr double radians_in_degree = 3.14159265358979323846 / 180;
    constexpr double sharpest_deg = 150;
    return thickness_mm / 2000 * std::tan(std::min(turn_deg, sharpest_deg) / 2 * radians_in_degree);
}

/// Bends without a place are taken as right angles.
double farthest_beyond_m(const WallRun& run) {
    const double thickness_mm = std::max(run.thickness_mm, run.bottom_thickness_mm);
    double farthest_m =
        run.corners > 0 && run.corners_at.empty() ? beyond_m(thickness_mm, right_angle_deg) : 0;
    for (const Corner& corner : run.corners_at) {
        farthest_m = std::max(farthest_m, beyond_m(thickness_mm, corner.turn_deg));
    }
    return farthest_m;
}

/// What a tie next to a corner holds along the wall, over the stated spacing.
double share_beside_corner(const TieForm& form, double beyond_m) {
    const double length_m = form.profile.whole().to_m;
    const double across_m = form.ties.across_mm / 1000;
    return beyond_m > 0 ? (length_m / parts_of(length_m, across_m) + beyond_m) / across_m : 0;
}

/// Adds the ties of one straight form whose left end stands at a station.
void put_form(const TieForm& form, double start_m, TieLayout& layout) {
    const double length_m = form.profile.whole().to_m;
    const int spaces = parts_of(length_m, form.ties.across_mm / 1000);
    std::vector<TieColumn> columns;
    for (int column = 0; column < spaces; ++column) {
        columns.push_back(tie_column(form, (column + 0.5) * length_m / spaces));
        layout.stations_m.push_back(start_m + columns.back().station_m);
    }
    layout.all_held = hand_over(form, columns) && layout.all_held;
    for (const TieColumn& column : columns) {
        layout.rows = std::max(layout.rows, column.crossings.size());
        for (const TieCrossing& crossing : column.crossings) {
            layout.left_out += crossing.at == TieCrossing::At::opening;
            if (crossing.at == TieCrossing::At::tie) {
                layout.ties.push_back(crossing.tie);
                layout.ties.back().station_m += start_m;
            }
        }
    }
}

} // namespace

std::vector<double> row_heights(EvenRows rows) {
    std::vector<double> heights_m;
    for (int row = 0; below(rows.first_m + row * rows.spacing_m, rows.top_m); ++row) {
        heights_m.push_back(rows.first_m + row * rows.spacing_m);
    }
    return heights_m;
}

TieLayout tie_layout(const WallRun& run, const Ties& ties) {
    TieLayout layout{.name = run.name};
    TieForm form{.profile = profile_of(run), .openings = {}, .ties = ties};
    for (const Opening& opening : run.openings) {
        if (opening.depth_mm) {
            continue; // a niche: its tie goes through the concrete behind it
        }
        const auto boxes = boxes_of(opening, form.profile);
        form.openings.insert(form.openings.end(), boxes.begin(), boxes.end());
        layout.on_assumed_openings =
            layout.on_assumed_openings || !opening.sill_m || opening.at_m.empty();
    }
    put_form(form, 0, layout);
    layout.beside_corner = share_beside_corner(form, farthest_beyond_m(run));
    return layout;
}

TieLayout tie_layout(const Planter& planter, const Ties& ties) {
    TieLayout layout{.name = planter.name};
    const double thickness_m = planter.thickness_mm / 1000;
    double start_m = 0;
    for (const double outside_m :
         {planter.length_m, planter.width_m, planter.length_m, planter.width_m}) {
        const double length_m = outside_m - thickness_m;
        const WallRun side{.name = planter.name,
                           .length_m = length_m,
                           .heights = {{0, planter.height_m}},
                           .thickness_mm = planter.thickness_mm,
                           .bottom_thickness_mm = planter.thickness_mm};
        const TieForm form{.profile = profile_of(side),
                           .openings = {},
                           .ties = ties,
                           .floor_m = planter.floor_mm / 1000};
        put_form(form, start_m, layout);
        layout.beside_corner =
            std::max(layout.beside_corner,
                     share_beside_corner(form, beyond_m(planter.thickness_mm, right_angle_deg)));
        start_m += length_m;
    }
    return layout;
}

TieLayout tie_layout(const Wall& wall, const std::string& name, const Ties& ties) {
    const auto run = std::ranges::find(wall.runs, name, &WallRun::name);
    return run != wall.runs.end()
               ? tie_layout(*run, ties)
               : tie_layout(*std::ranges::find(wall.planters, name, &Planter::name), ties);
}

} // namespace boardmark::core
