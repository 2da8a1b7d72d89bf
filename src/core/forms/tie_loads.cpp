#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/forms/form_ties.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::core {
namespace {

TieRowLoad load_of(const FormPressure& pressure, const TiePlace& tie) {
    const double highest_kpa = pressure_at(pressure, tie.deepest_m);
    return {.height_m = tie.height_m,
            .depth_m = tie.depth_m,
            .strip_m = tie.strip_m,
            .area_m2 = tie.area_m2,
            .highest_kpa = highest_kpa,
            .load_kn = tie_load_kn({highest_kpa, tie.area_m2}),
            .takes_over = tie.takes_over,
            .stations_m = {tie.station_m}};
}

} // namespace

std::vector<TieRowLoad> tie_loads(const FormPressure& pressure, const TieLayout& layout) {
    std::vector<TieRowLoad> rows;
    for (const TiePlace& tie : layout.ties) {
        const TieRowLoad load = load_of(pressure, tie);
        const auto row = std::ranges::find_if(
            rows, [&](const TieRowLoad& other) { return same(other.height_m, load.height_m); });
        if (row == rows.end()) {
            rows.push_back(load);
            continue;
        }
        auto stations_m = std::move(row->stations_m);
        stations_m.push_back(tie.station_m);
        if (load.load_kn > row->load_kn) {
            *row = load;
        }
        row->stations_m = std::move(stations_m);
    }
    std::ranges::sort(rows, {}, &TieRowLoad::height_m);
    return rows;
}

double hardest_tie_kn(const FormPressure& pressure, const TieLayout& layout) {
    double hardest_kn = 0;
    for (const TiePlace& tie : layout.ties) {
        hardest_kn =
            std::max(hardest_kn, tie_load_kn({pressure_at(pressure, tie.deepest_m), tie.area_m2}));
    }
    return hardest_kn;
}

Phrase tie_load_remark() {
    return {"A tie carries the form halfway to its neighbours, at the highest pressure on that "
            "area; load that wales, studs and cantilevers bring to it in other ways is for the "
            "form's designer.",
            {}};
}

double tie_load_kn(TieArea area) {
    return area.kpa * area.area_m2;
}

double working_load_kn(TieRating rating, const Tables& tables) {
    return rating.breaking ? rating.kn / tables.forms->tie_safety_factor.value : rating.kn;
}

std::optional<double> tie_spacing_m(TieRows rows, UnitSystem system) {
    const double step_m = system == UnitSystem::us ? 0.0254 : 0.01;
    const double widest_m = rows.working_kn / (rows.kpa * rows.row_spacing_m);
    const double spacing_m = std::floor(widest_m / step_m + relative_rounding) * step_m;
    return std::isfinite(spacing_m) && spacing_m > 0 ? std::optional{spacing_m} : std::nullopt;
}

} // namespace boardmark::core
