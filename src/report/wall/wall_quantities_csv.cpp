#include "wall_lines.hpp"
#include "wall_tables.hpp"

namespace boardmark::report {
namespace {

using core::Measure;

void add_shape(LongTable& table, const core::WallRun& run) {
    table.subject(run.name);
    table.add("length", Measure::line_length, run.length_m);
    table.add_words("top", std::string{name_of(run.top)}, "");
    table.add("thickness", Measure::length, run.thickness_mm);
    table.add("thickness at the foot", Measure::length, run.bottom_thickness_mm);
    table.add_words("shows", std::string{name_of(run.shows)}, "");
    table.add_count("openings", openings_of(run));
    for (std::size_t i = 0; i < run.heights.size(); ++i) {
        table.subject(run.name, "height", i + 1);
        table.add("station", Measure::line_length, run.heights[i].station_m);
        table.add("height", Measure::line_length, run.heights[i].height_m);
    }
    for (std::size_t i = 0; i < run.corners_at.size(); ++i) {
        table.subject(run.name, "corner", i + 1);
        table.add("station", Measure::line_length, run.corners_at[i].station_m);
        table.add_in("turn", run.corners_at[i].turn_deg, "deg");
    }
}

void add_part(LongTable& table, const core::PartQuantities& part) {
    table.add("concrete", Measure::volume, part.concrete_m3);
    table.add("footing", Measure::volume, part.footing_m3);
    table.add("formed", Measure::area, part.form_face_m2);
    table.add("showing", Measure::area, part.shown_m2);
    table.add("edges of the top", Measure::line_length, part.top_edge_m);
    table.add("chamfer strip", Measure::line_length, part.chamfer_strip_m);
    table.add_count("ties", part.ties, with_form_caution());
    table.add_count("tie holes that show", part.tie_holes);
    table.add("release agent goes on", Measure::area, part.release_m2);
    table.add("to cure", Measure::area, part.curing_m2);
    table.add("soil", Measure::volume, part.soil_m3);
}

void add_order(LongTable& table, const char* what, const core::ConcreteOrder& order) {
    table.subject(what);
    table.add("net", Measure::volume, order.net_m3);
    table.add("waste", Measure::percent, order.waste_percent);
    table.add("order", Measure::volume, order.order_m3);
}

} // namespace

void add_shapes(LongTable& table, const core::Wall& wall) {
    table.section("walls");
    for (const core::WallRun& run : wall.runs) {
        add_shape(table, run);
    }
    for (const core::Planter& planter : wall.planters) {
        table.subject(planter.name);
        table.add_count("planters", planter.count);
        table.add("length", Measure::line_length, planter.length_m);
        table.add("width", Measure::line_length, planter.width_m);
        table.add("height", Measure::line_length, planter.height_m);
        table.add("thickness", Measure::length, planter.thickness_mm);
    }
    for (const core::BenchTop& bench : wall.benches) {
        table.subject(bench.name);
        table.add_count("bench tops", bench.count);
        table.add("length", Measure::line_length, bench.length_m);
        table.add("depth", Measure::length, bench.depth_mm);
        table.add("thickness", Measure::length, bench.thickness_mm);
    }
    for (const core::Embedment& embedment : wall.embedments) {
        table.subject(embedment.name);
        table.add_count("cast in", embedment.count);
    }
}

void add_quantities(LongTable& table, const core::WallQuantities& quantities) {
    table.section("quantities by the nominal faces");
    for (const core::PartQuantities& part : quantities.parts) {
        table.subject(part.name);
        add_part(table, part);
    }
    table.subject("total");
    add_part(table, quantities.total);
    table.section("order");
    add_order(table, "concrete of the walls", quantities.order);
    add_order(table, "concrete of the footings", quantities.footing_order);
}

} // namespace boardmark::report
