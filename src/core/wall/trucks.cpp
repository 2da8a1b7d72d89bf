#include "trucks.hpp"

#include "form_forces.hpp"

#include <algorithm>

namespace boardmark::core {

/// Trucks as fast as the highest form takes its concrete: from lift to lift the slower of the
/// crew's output and of the rise that is stated.
std::optional<TruckPlan> trucks_of(const Wall& wall, const WallPlan& plan, const Tables& tables) {
    const WallPlacing& placing = wall.placing;
    const auto formed = formed_walls(wall, tables);
    const auto highest = std::ranges::max_element(formed, {}, &FormedWall::height_m);
    const auto pour_h =
        highest != formed.end()
            ? lift_plan(poured_wall(*highest, placing), tables.placing.lifts).pour_h
            : std::nullopt;
    if (!placing.truck_m3 || !pour_h) {
        return std::nullopt;
    }
    TruckedPour pour{.volume_m3 = plan.quantities.order.order_m3,
                     .output_m3_h = highest->volume_m3(0, highest->height_m) / *pour_h,
                     .truck_m3 = *placing.truck_m3};
    if (placing.round_trip_min) {
        pour.round_trip_h = *placing.round_trip_min / 60;
    }
    return truck_plan(pour, tables.placing.lifts);
}

} // namespace boardmark::core
