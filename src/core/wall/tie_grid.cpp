#include "../tolerance.hpp"
#include "parts.hpp"
#include "profile.hpp"

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

/// The greatest height between two stations.
double highest_m(const Profile& profile, double from_m, double to_m) {
    double height_m = 0;
    for (const Stretch& stretch : profile.stretches) {
        const double low_m = std::max(from_m, stretch.from_m);
        const double high_m = std::min(to_m, stretch.to_m);
        if (below(low_m, high_m)) {
            height_m = std::max({height_m, stretch.height_at(low_m), stretch.height_at(high_m)});
        }
    }
    return height_m;
}

} // namespace

TieCount run_ties(const WallRun& run, const Ties& ties) {
    const Profile profile = profile_of(run);
    TieCount grid{.name = run.name,
                  .columns = parts_of(run.length_m, ties.across_mm / 1000),
                  .rows = parts_of(profile.greatest_height_m, ties.up_mm / 1000),
                  .ties = 0};
    const double width_m = run.length_m / grid.columns;
    for (int column = 0; column < grid.columns; ++column) {
        const double height_m = highest_m(profile, column * width_m, (column + 1) * width_m);
        grid.ties += parts_of(height_m, ties.up_mm / 1000);
    }
    return grid;
}

TieCount planter_ties(const Planter& planter, const Ties& ties) {
    const double thickness_m = planter.thickness_mm / 1000;
    const double across_m = ties.across_mm / 1000;
    const int columns = 2 * parts_of(planter.length_m - thickness_m, across_m) +
                        2 * parts_of(planter.width_m - thickness_m, across_m);
    const double inner_m = planter.height_m - planter.floor_mm / 1000;
    const int rows = parts_of(inner_m, ties.up_mm / 1000);
    return {.name = planter.name,
            .columns = columns * planter.count,
            .rows = rows,
            .ties = columns * rows * planter.count};
}

} // namespace boardmark::core
