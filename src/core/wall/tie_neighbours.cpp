#include "tie_columns.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Of the face inside the box what is concrete.
double concrete_of_face_m2(const TieForm& form, const FaceBox& box) {
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

using TieColumns = std::vector<TieColumn>;

/// The tie where a row crosses a column, if one stands there. Numbers past either end wrap round
/// to above the last.
TiePlace* tie_at(TieColumns& columns, std::size_t column, std::size_t row) {
    if (column >= columns.size() || row >= columns[column].crossings.size()) {
        return nullptr;
    }
    TieCrossing& crossing = columns[column].crossings[row];
    return crossing.at == TieCrossing::At::tie ? &crossing.tie : nullptr;
}

/// The nearest tie of a row to the right (1) or to the left (-1).
TiePlace* nearest_tie(TieColumns& columns, std::size_t column, std::size_t row, std::size_t step) {
    for (column += step; column < columns.size(); column += step) {
        if (TiePlace* tie = tie_at(columns, column, row)) {
            return tie;
        }
    }
    return nullptr;
}

/// Who holds the form where no tie stands: the neighbours; beside a wide opening that has none the
/// next ties of the row.
std::vector<TiePlace*> neighbours_of_gap(TieColumns& columns, std::size_t column, std::size_t row) {
    constexpr std::size_t left = static_cast<std::size_t>(-1);
    std::vector<TiePlace*> found{tie_at(columns, column - 1, row),
                                 tie_at(columns, column + 1, row)};
    if (columns[column].crossings[row].at == TieCrossing::At::opening) {
        TiePlace* below_it = tie_at(columns, column, row - 1);
        TiePlace* above_it = tie_at(columns, column, row + 1);
        if (!found[0] && !found[1] && !(below_it && above_it)) {
            found = {nearest_tie(columns, column, row, left), nearest_tie(columns, column, row, 1)};
        }
        found.push_back(below_it);
        found.push_back(above_it);
    }
    std::erase(found, nullptr);
    return found;
}

} // namespace

bool hand_over(const TieForm& form, TieColumns& columns) {
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
            const double open_m2 = concrete_of_face_m2(form, box);
            if (open_m2 < nothing_m2) {
                continue;
            }
            const auto takers = neighbours_of_gap(columns, column, row);
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
