#include "part_quantities.hpp"

namespace boardmark::core {

PartQuantities planter_quantities(const Planter& planter) {
    const double thickness_m = planter.thickness_mm / 1000;
    const double inner_length_m = planter.length_m - 2 * thickness_m;
    const double inner_width_m = planter.width_m - 2 * thickness_m;
    const double inner_height_m = planter.height_m - planter.floor_mm / 1000;
    const double outer_m = 2 * (planter.length_m + planter.width_m);
    const double inner_m = 2 * (inner_length_m + inner_width_m);
    PartQuantities part;
    part.name = planter.name;
    part.soil_m3 = planter.count * inner_length_m * inner_width_m * inner_height_m;
    part.concrete_m3 =
        planter.count * planter.length_m * planter.width_m * planter.height_m - part.soil_m3;
    part.shown_m2 = planter.count * outer_m * planter.height_m;
    part.form_face_m2 = part.shown_m2 + planter.count * inner_m * inner_height_m;
    const double floor_m2 = planter.floor_mm > 0 ? inner_length_m * inner_width_m : 0;
    part.open_top_m2 =
        planter.count * (outer_m + inner_m) / 2 * thickness_m + planter.count * floor_m2;
    part.top_edge_m = planter.count * outer_m;
    part.edges_m = part.top_edge_m + planter.count * 4 * planter.height_m;
    return part;
}

PartQuantities bench_quantities(const BenchTop& bench) {
    const double depth_m = bench.depth_mm / 1000;
    const double thickness_m = bench.thickness_mm / 1000;
    const double overhang_m = bench.overhang_mm / 1000;
    PartQuantities part;
    part.name = bench.name;
    part.concrete_m3 = bench.count * bench.length_m * depth_m * thickness_m;
    part.shown_m2 =
        bench.count * ((bench.length_m + 2 * depth_m) * thickness_m + bench.length_m * overhang_m);
    part.form_face_m2 = part.shown_m2;
    part.open_top_m2 = bench.count * bench.length_m * depth_m;
    part.top_edge_m = bench.count * (bench.length_m + 2 * depth_m);
    const double lower_edge_m = overhang_m > 0 ? bench.length_m + 2 * overhang_m : 0;
    part.edges_m = part.top_edge_m + bench.count * (lower_edge_m + 2 * thickness_m);
    return part;
}

} // namespace boardmark::core
