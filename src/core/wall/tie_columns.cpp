#include "tie_columns.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

/// Rows of a column up to a height: at least one, which a stated `first` may put above the top.
std::vector<double> rows_up_to(const TieForm& form, double top_m) {
    const double up_m = form.ties.up_mm / 1000;
    double first_m = form.floor_m + (form.ties.first_mm ? *form.ties.first_mm / 1000 : up_m / 2);
    if (!form.ties.first_mm && !below(first_m, top_m)) {
        first_m = (form.floor_m + top_m) / 2;
    }
    const auto rows = row_heights({.first_m = first_m, .spacing_m = up_m, .top_m = top_m});
    return rows.empty() ? std::vector{first_m} : rows;
}

/// The openings that a column goes through.
std::vector<FaceBox> openings_at(double station_m, const TieForm& form) {
    std::vector<FaceBox> here;
    std::ranges::copy_if(form.openings, std::back_inserter(here), [&](const FaceBox& box) {
        return above(station_m, box.from_m) && below(station_m, box.to_m);
    });
    return here;
}

bool stands_at_height(const FaceBox& box, double height_m) {
    return above(height_m, box.low_m) && below(height_m, box.high_m);
}

} // namespace

FaceBox strip_along(const TieForm& form, double station_m) {
    const double half_m = form.ties.across_mm / 2000;
    return {.from_m = station_m - half_m, .to_m = station_m + half_m, .low_m = 0, .high_m = 0};
}

TieColumn tie_column(const TieForm& form, double station_m) {
    const FaceBox strip = strip_along(form, station_m);
    const double top_m = form.profile.height_at(station_m);
    TieColumn column{station_m, form.profile.highest_along_m(strip), {}};
    auto rows_m = rows_up_to(form, column.held_m);
    // A top that falls little beside the column: its highest tie holds the rest.
    const bool falls_little = !above(column.held_m - top_m, form.ties.up_mm / 2000);
    while (falls_little && rows_m.size() > 1 && !below(rows_m.back(), top_m)) {
        rows_m.pop_back();
    }
    const std::vector<FaceBox> openings = openings_at(station_m, form);
    for (std::size_t row = 0; row < rows_m.size(); ++row) {
        const bool highest = row + 1 == rows_m.size();
        const double low_m = row == 0 ? 0 : (rows_m[row - 1] + rows_m[row]) / 2;
        const double high_m = highest ? column.held_m : (rows_m[row] + rows_m[row + 1]) / 2;
        const TiePlace tie{.station_m = station_m,
                           .height_m = rows_m[row],
                           .depth_m = column.held_m - rows_m[row],
                           .deepest_m = column.held_m - low_m,
                           .strip_m = high_m - low_m,
                           .area_m2 = (high_m - low_m) * form.ties.across_mm / 1000};
        const bool in_opening = std::ranges::any_of(openings, [&](const FaceBox& box) {
            return stands_at_height(box, tie.height_m);
        });
        column.crossings.push_back({!below(rows_m[row], top_m) ? TieCrossing::At::above_the_top
                                    : in_opening               ? TieCrossing::At::opening
                                                               : TieCrossing::At::tie,
                                    tie});
    }
    return column;
}

} // namespace boardmark::core
