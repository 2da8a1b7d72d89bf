#include "trucks.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/cast_part.hpp>

#include "form_forces.hpp"

#include <algorithm>
#include <utility>

namespace boardmark::core {
namespace {

int count_of(const std::string& part, const Wall& wall) {
    if (const auto one = std::ranges::find(wall.planters, part, &Planter::name);
        one != wall.planters.end()) {
        return one->count;
    }
    const auto one = std::ranges::find(wall.benches, part, &BenchTop::name);
    return one != wall.benches.end() ? one->count : 1;
}

/// Footings and benches are low: one lift, at the output of all.
UnloadedPart low_part(const CastPart& part, const Wall& wall) {
    const WallPlacing& placing = wall.placing;
    UnloadedPart unloaded{.name = part.name, .lifts = {}, .count = count_of(part.name, wall)};
    if (placing.output_m3_h) {
        const double volume_m3 = part.plan_m2 * part.height_m;
        unloaded.lifts.push_back({volume_m3, volume_m3 / *placing.output_m3_h});
    }
    return unloaded;
}

} // namespace

std::vector<UnloadedPart> unloaded_parts(const Wall& wall, const Tables& tables) {
    std::vector<UnloadedPart> parts;
    for (const FormedWall& formed : formed_walls(wall, tables)) {
        parts.push_back({.name = formed.name,
                         .lifts = filled_lifts(poured_wall(formed, wall), tables.placing->lifts),
                         .count = count_of(formed.name, wall),
                         .by_output = formed.output_m3_h.has_value()});
    }
    for (const CastPart& part : cast_parts(wall)) {
        if (part.kind == CastKind::footing || part.kind == CastKind::bench) {
            parts.push_back(low_part(part, wall));
        }
    }
    return parts;
}

std::optional<TruckedPour> trucked_pour(const Wall& wall, double order_m3,
                                        std::vector<UnloadedPart> parts) {
    const WallPlacing& placing = wall.placing;
    if (!placing.truck_m3) {
        return std::nullopt;
    }
    TruckedPour pour{.order_m3 = order_m3,
                     .truck_m3 = *placing.truck_m3,
                     .parts = std::move(parts),
                     .haul_h = requirements_of(wall.mix).placing.haul_h};
    if (const auto& minutes = requirements_of(wall.mix).time_to_place_min) {
        pour.time_to_place_h = *minutes / 60;
    }
    if (placing.round_trip_min) {
        pour.round_trip_h = *placing.round_trip_min / 60;
    }
    return pour;
}

/// Trucks as fast as each part takes its concrete: from lift to lift the slower of the crew's
/// output and of the rise that is stated.
std::optional<TruckPlan> trucks_of(const Wall& wall, const WallPlan& plan, const Tables& tables) {
    const auto pour =
        trucked_pour(wall, plan.quantities.order.order_m3, unloaded_parts(wall, tables));
    return pour ? truck_plan(*pour, tables.placing->lifts) : std::nullopt;
}

} // namespace boardmark::core
