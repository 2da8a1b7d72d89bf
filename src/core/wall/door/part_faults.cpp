#include "../../basis/conversions.hpp"
#include "wall_faults.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr Bounds some_pieces{.low = 1, .high = 1e6};

} // namespace

void find_planter_faults(const Planter& planter, const FaultList& list) {
    for (const double measure :
         {planter.length_m, planter.width_m, planter.height_m, planter.thickness_mm}) {
        list.hold(Field::planter, measure, above_nothing);
    }
    list.hold(Field::planter, planter.floor_mm, nothing_or_more);
    list.hold(Field::part_count, planter.count, some_pieces);
    list.hold(Field::part_output, planter.output_m3_h, above_nothing);
    if (!(std::min(planter.length_m, planter.width_m) > 2 * planter.thickness_mm / mm_in_m)) {
        list.impossible(Field::planter, "has walls that leave no room between them");
    }
    if (!(planter.floor_mm < planter.height_m * mm_in_m)) {
        list.impossible(Field::planter, "has a floor that fills it");
    }
}

void find_bench_faults(const BenchTop& bench, const FaultList& list) {
    for (const double measure : {bench.length_m, bench.depth_mm, bench.thickness_mm}) {
        list.hold(Field::bench, measure, above_nothing);
    }
    list.hold(Field::bench, bench.overhang_mm, {.low = 0, .high = bench.depth_mm});
    list.hold(Field::bench, bench.span_m, nothing_or_more);
    list.hold(Field::bench, bench.live_load_kpa, nothing_or_more);
    list.hold(Field::bench, bench.cover_mm, nothing_or_more);
    list.hold(Field::part_count, bench.count, some_pieces);
}

} // namespace boardmark::core
