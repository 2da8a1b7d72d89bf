#include <boardmark/core/wall/tie_layout.hpp>
#include <boardmark/core/wall/wall_quantities.hpp>

#include "../basis/tolerance.hpp"
#include "part_quantities.hpp"
#include "quantity_rules.hpp"

#include <utility>

namespace boardmark::core {
namespace {

/// What follows from the faces and edges of a part.
void complete(const Wall& wall, PartQuantities& part) {
    part.release_m2 = part.form_face_m2;
    part.curing_m2 = part.form_face_m2 + part.open_top_m2;
    const bool chamfered = wall.edges && wall.edges->kind == EdgeKind::chamfered;
    part.chamfer_strip_m = chamfered ? part.edges_m : 0;
}

/// Of all parts of one name.
TieCount tie_count(const TieLayout& layout, int parts = 1) {
    return {.name = layout.name,
            .columns = parts * static_cast<int>(layout.stations_m.size()),
            .rows = static_cast<int>(layout.rows),
            .ties = parts * static_cast<int>(layout.ties.size())};
}

void put_ties(const TieCount& grid, int faces_that_show, WallQuantities& quantities) {
    quantities.parts.back().ties = grid.ties;
    quantities.parts.back().tie_holes = grid.ties * faces_that_show;
    quantities.tie_grids.push_back(grid);
}

void measure_parts(const Wall& wall, WallQuantities& quantities) {
    for (const WallRun& run : wall.runs) {
        quantities.parts.push_back(run_quantities(run));
        if (wall.ties) {
            put_ties(tie_count(tie_layout(run, *wall.ties)), run.shows == ShownFaces::both ? 2 : 1,
                     quantities);
        }
    }
    for (const Planter& planter : wall.planters) {
        quantities.parts.push_back(planter_quantities(planter));
        if (wall.ties) {
            put_ties(tie_count(tie_layout(planter, *wall.ties), planter.count), 1, quantities);
        }
    }
    for (const BenchTop& bench : wall.benches) {
        quantities.parts.push_back(bench_quantities(bench));
    }
    for (PartQuantities& part : quantities.parts) {
        complete(wall, part);
    }
}

constexpr double PartQuantities::*summed[] = {
    &PartQuantities::concrete_m3,  &PartQuantities::box_outs_m3, &PartQuantities::footing_m3,
    &PartQuantities::form_face_m2, &PartQuantities::shown_m2,    &PartQuantities::footing_form_m2,
    &PartQuantities::open_top_m2,  &PartQuantities::release_m2,  &PartQuantities::curing_m2,
    &PartQuantities::top_edge_m,   &PartQuantities::edges_m,     &PartQuantities::chamfer_strip_m,
    &PartQuantities::soil_m3,
};

PartQuantities sum(const std::vector<PartQuantities>& parts) {
    PartQuantities total;
    for (const PartQuantities& part : parts) {
        for (const auto member : summed) {
            total.*member += part.*member;
        }
        total.ties += part.ties;
        total.tie_holes += part.tie_holes;
    }
    return total;
}

/// A chamfer takes the triangle under its leg off each edge.
double chamfer_m2(const Wall& wall) {
    const double leg_m = wall.edges ? wall.edges->size_mm / 1000 : 0;
    return leg_m * leg_m / 2;
}

FaceDeductions deductions(const Wall& wall, const PartQuantities& total, double least_percent) {
    FaceDeductions less{};
    less.chamfers_m3 = total.chamfer_strip_m * chamfer_m2(wall);
    less.relief_at_most_m3 = wall.boards ? total.shown_m2 * wall.boards->relief_mm / 1000 : 0;
    if (total.concrete_m3 > 0) {
        less.chamfers_percent = 100 * less.chamfers_m3 / total.concrete_m3;
        less.relief_percent = 100 * less.relief_at_most_m3 / total.concrete_m3;
    }
    less.chamfers_deducted = above(less.chamfers_percent, least_percent);
    less.relief_matters = above(less.relief_percent, least_percent);
    return less;
}

} // namespace

WallQuantities wall_quantities(const Wall& wall, const PracticeTables& practice) {
    WallQuantities quantities{};
    measure_parts(wall, quantities);
    quantities.deductions =
        deductions(wall, sum(quantities.parts), practice.face_deduction_matters_percent.value);
    if (quantities.deductions.chamfers_deducted) {
        for (PartQuantities& part : quantities.parts) {
            part.concrete_m3 -= part.chamfer_strip_m * chamfer_m2(wall);
        }
    }
    quantities.total = sum(quantities.parts);
    quantities.order = concrete_order(quantities.total.concrete_m3, wall.order);
    quantities.footing_order = concrete_order(quantities.total.footing_m3, wall.order);
    quantities.worksheet = quantity_rules(wall, quantities, practice);
    return quantities;
}

} // namespace boardmark::core
