#include "trucks.hpp"

#include "form_forces.hpp"

#include <algorithm>

namespace boardmark::core {

/// Trucks for the highest run, at the crew's output or as fast as the concrete may rise.
std::optional<TruckPlan> trucks_of(const Wall& wall, const WallPlan& plan, const Tables& tables) {
    const WallPlacing& placing = wall.placing;
    const auto formed = formed_walls(wall);
    const auto highest = std::ranges::max_element(formed, {}, &FormedWall::height_m);
    std::optional<double> output_m3_h = placing.output_m3_h;
    if (!output_m3_h && placing.rise_m_h && highest != formed.end()) {
        output_m3_h = *placing.rise_m_h * highest->plan_area_m2;
    }
    if (!placing.truck_m3 || !output_m3_h) {
        return std::nullopt;
    }
    TruckedPour pour{.volume_m3 = plan.quantities.order.order_m3,
                     .output_m3_h = *output_m3_h,
                     .truck_m3 = *placing.truck_m3};
    if (placing.round_trip_min) {
        pour.round_trip_h = *placing.round_trip_min / 60;
    }
    return truck_plan(pour, tables.placing.lifts);
}

} // namespace boardmark::core
