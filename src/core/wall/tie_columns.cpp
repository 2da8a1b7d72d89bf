#include "tie_columns.hpp"

#include "../tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// What one column holds along the wall: the stated spacing, half to each side.
FaceBox strip_along(const TieForm& form, double station_m) {
    const double half_m = form.ties.across_mm / 2000;
    return {.from_m = station_m - half_m, .to_m = station_m + half_m, .low_m = 0, .high_m = 0};
}

/// The greatest height between two stations.
double highest_between_m(const Profile& profile, const FaceBox& strip) {
    double height_m = 0;
    for (const Stretch& stretch : profile.stretches) {
        const double low_m = std::max(strip.from_m, stretch.from_m);
        const double high_m = std::min(strip.to_m, stretch.to_m);
        if (below(low_m, high_m)) {
            height_m = std::max({height_m, stretch.height_at(low_m), stretch.height_at(high_m)});
        }
    }
    return height_m;
}

/// Rows of a column up to a height: at least one, which a stated `first` may put above the top.
std::vector<double> rows_up_to(const TieForm& form, double top_m) {
    const double up_m = form.ties.up_mm / 1000;
    double first_m =
        form.floor_m + (form.ties.first_mm ? *form.ties.first_mm / 1000 : up_m / 2);
    if (!form.ties.first_mm && !below(first_m, top_m)) {
        first_m = (form.floor_m + top_m) / 2;
    }
    const auto rows = row_heights({.first_m = first_m, .spacing_m = up_m, .top_m = top_m});
    return rows.empty() ? std::vector{first_m} : rows;
}

bool is_inside(const FaceBox& box, const TiePlace& tie) {
    return above(tie.station_m, box.from_m) && below(tie.station_m, box.to_m) &&
           above(tie.height_m, box.low_m) && below(tie.height_m, box.high_m);
}

/// Of the face inside the box what is concrete.
double concrete_m2(const TieForm& form, const FaceBox& box) {
    double area_m2 = form.profile.face_m2(box);
    for (const FaceBox& opening : form.openings) {
        const FaceBox common{.from_m = std::max(box.from_m, opening.from_m),
                             .to_m = std::min(box.to_m, opening.to_m),
                             .low_m = std::max(box.low_m, opening.low_m),
                             .high_m = std::min(box.high_m, opening.high_m)};
        if (common.width_m() > 0 && common.height_m() > 0) {
            area_m2 -= form.profile.face_m2(common);
        }
    }
    return area_m2;
}

using Columns = std::vector<TieColumn>;

/// The tie where a row crosses a column, if one stands there. Numbers past either end wrap round
/// to above the last.
TiePlace* tie_at(Columns& columns, std::size_t column, std::size_t row) {
    if (column >= columns.size() || row >= columns[column].crossings.size()) {
        return nullptr;
    }
    TieCrossing& crossing = columns[column].crossings[row];
    return crossing.at == TieCrossing::At::tie ? &crossing.tie : nullptr;
}

/// The nearest tie of a row to the right (1) or to the left (-1).
TiePlace* nearest(Columns& columns, std::size_t column, std::size_t row, std::size_t step) {
    for (column += step; column < columns.size(); column += step) {
        if (TiePlace* tie = tie_at(columns, column, row)) {
            return tie;
        }
    }
    return nullptr;
}

/// Who holds the form where no tie stands: the neighbours; beside a wide opening that has none the
/// next ties of the row.
std::vector<TiePlace*> neighbours(Columns& columns, std::size_t column, std::size_t row) {
    constexpr std::size_t left = static_cast<std::size_t>(-1);
    std::vector<TiePlace*> found{tie_at(columns, column - 1, row),
                                 tie_at(columns, column + 1, row)};
    if (columns[column].crossings[row].at == TieCrossing::At::opening) {
        TiePlace* below_it = tie_at(columns, column, row - 1);
        TiePlace* above_it = tie_at(columns, column, row + 1);
        if (!found[0] && !found[1] && !(below_it && above_it)) {
            found = {nearest(columns, column, row, left), nearest(columns, column, row, 1)};
        }
        found.push_back(below_it);
        found.push_back(above_it);
    }
    std::erase(found, nullptr);
    return found;
}

} // namespace

TieColumn tie_column(const TieForm& form, double station_m) {
    FaceBox strip = strip_along(form, station_m);
    const double top_m = form.profile.height_at(station_m);
    TieColumn column{station_m, highest_between_m(form.profile, strip), {}};
    auto rows_m = rows_up_to(form, column.held_m);
    // A top that falls little beside the column: its highest tie holds the rest.
    const bool falls_little = !above(column.held_m - top_m, form.ties.up_mm / 2000);
    while (falls_little && rows_m.size() > 1 && !below(rows_m.back(), top_m)) {
        rows_m.pop_back();
    }
    for (std::size_t row = 0; row < rows_m.size(); ++row) {
        const bool highest = row + 1 == rows_m.size();
        const double low_m = row == 0 ? 0 : (rows_m[row - 1] + rows_m[row]) / 2;
        const double high_m = highest ? column.held_m : (rows_m[row] + rows_m[row + 1]) / 2;
        const TiePlace tie{.station_m = station_m,
                           .height_m = rows_m[row],
                           .depth_m = column.held_m - rows_m[row],
                           .deepest_m = column.held_m - low_m,
                           .strip_m = high_m - low_m,
                           .area_m2 = (high_m - low_m) * strip.width_m()};
        const bool in_opening = std::ranges::any_of(
            form.openings, [&](const FaceBox& box) { return is_inside(box, tie); });
        column.crossings.push_back({!below(rows_m[row], top_m) ? TieCrossing::At::above_the_top
                                    : in_opening               ? TieCrossing::At::opening
                                                               : TieCrossing::At::tie,
                                    tie});
    }
    return column;
}

bool hand_over(const TieForm& form, Columns& columns) {
    constexpr double nothing_m2 = 1e-6;
    bool all_held = true;
    for (std::size_t column = 0; column < columns.size(); ++column) {
        for (std::size_t row = 0; row < columns[column].crossings.size(); ++row) {
            const TieCrossing& gap = columns[column].crossings[row];
            if (gap.at == TieCrossing::At::tie) {
                continue;
            }
            FaceBox box = strip_along(form, gap.tie.station_m);
            box.low_m = columns[column].held_m - gap.tie.deepest_m;
            box.high_m = box.low_m + gap.tie.strip_m;
            const double open_m2 = concrete_m2(form, box);
            if (open_m2 < nothing_m2) {
                continue;
            }
            const auto takers = neighbours(columns, column, row);
            all_held = all_held && !takers.empty();
            for (TiePlace* taker : takers) {
                taker->area_m2 += open_m2;
                taker->deepest_m = std::max(taker->deepest_m, gap.tie.deepest_m);
                taker->takes_over = true;
            }
        }
    }
    return all_held;
}

} // namespace boardmark::core
