#include <boardmark/core/form_ties.hpp>

#include "../phrases.hpp"
#include "../tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// A strip of form between two depths below the top of the concrete.
struct Strip {
    double upper_m;
    double lower_m;
};

/// The force on one metre of a strip: exact, for the envelope is made of straight lines.
double force_kn_m(const FormPressure& pressure, Strip strip) {
    const auto above_depth = [&](double depth_m) {
        const double liquid_m = std::min(depth_m, pressure.hydrostatic_depth_m);
        const double rest_m = depth_m - liquid_m;
        return pressure_at(pressure, liquid_m) * liquid_m / 2 + pressure.kpa * rest_m;
    };
    return above_depth(strip.lower_m) - above_depth(strip.upper_m);
}

/// Halfway to the neighbours, the outer rows to the ends of the concrete.
Strip strip_of(const std::vector<double>& depths_m, std::size_t row, double bottom_m) {
    const bool highest = row + 1 == depths_m.size();
    return {.upper_m = highest ? 0 : (depths_m[row] + depths_m[row + 1]) / 2,
            .lower_m = row == 0 ? bottom_m : (depths_m[row] + depths_m[row - 1]) / 2};
}

} // namespace

std::vector<double> row_heights(EvenRows rows) {
    std::vector<double> heights_m;
    for (int row = 0; below(rows.first_m + row * rows.spacing_m, rows.top_m); ++row) {
        heights_m.push_back(rows.first_m + row * rows.spacing_m);
    }
    return heights_m;
}

std::vector<TieRowLoad> tie_loads(const FormPressure& pressure, const TieGrid& grid) {
    const double bottom_m = pressure.envelope.back().depth_m;
    std::vector<double> depths_m; // from the lowest row up
    for (const double height_m : grid.row_heights_m) {
        if (below(height_m, bottom_m)) {
            depths_m.push_back(bottom_m - height_m);
        }
    }
    std::vector<TieRowLoad> loads;
    for (std::size_t row = 0; row < depths_m.size(); ++row) {
        const Strip strip = strip_of(depths_m, row, bottom_m);
        const double strip_m = strip.lower_m - strip.upper_m;
        const double area_m2 = strip_m * grid.column_spacing_m;
        const double highest_kpa = pressure_at(pressure, strip.lower_m);
        const double average_kpa = std::min(force_kn_m(pressure, strip) / strip_m, highest_kpa);
        loads.push_back({.height_m = bottom_m - depths_m[row],
                         .depth_m = depths_m[row],
                         .strip_m = strip_m,
                         .area_m2 = area_m2,
                         .average_kpa = average_kpa,
                         .highest_kpa = highest_kpa,
                         .average_load_kn = tie_load_kn({average_kpa, area_m2}),
                         .load_kn = tie_load_kn({highest_kpa, area_m2})});
    }
    return loads;
}

Phrase tie_load_remark() {
    return {"A tie holds the form halfway to its neighbours, at the highest pressure of that area; "
            "what wales, studs and cantilevers send to it otherwise is the form designer's.",
            {}};
}

double tie_load_kn(TieArea area) {
    return area.kpa * area.area_m2;
}

double working_load_kn(TieRating rating, const Tables& tables) {
    return rating.breaking ? rating.kn / tables.forms.tie_safety_factor.value : rating.kn;
}

std::optional<double> tie_spacing_m(TieRows rows, UnitSystem system) {
    const double step_m = system == UnitSystem::us ? 0.0254 : 0.01;
    const double widest_m = rows.working_kn / (rows.kpa * rows.row_spacing_m);
    const double spacing_m = std::floor(widest_m / step_m + relative_rounding) * step_m;
    return spacing_m > 0 ? std::optional{spacing_m} : std::nullopt;
}

double pressure_of_ties_kpa(TieCapacity capacity) {
    return capacity.working_kn / capacity.area_m2;
}

} // namespace boardmark::core
