#include <boardmark/core/forms/pressure_method_names.hpp>
#include <boardmark/core/paper/job_papers.hpp>

#include "../../mix/door/faults.hpp"
#include "wall_faults.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr Bounds weather_c{.low = -90, .high = 90};

/// A number of the placing and what is possible of it.
struct PlacingNumber {
    std::optional<double> WallPlacing::*number;
    Bounds bounds;
};

constexpr PlacingNumber placing_numbers[] = {
    {&WallPlacing::rise_m_h, above_nothing},
    {&WallPlacing::output_m3_h, above_nothing},
    {&WallPlacing::lift_m, above_nothing},
    {&WallPlacing::concrete_c, weather_c},
    {&WallPlacing::air_c, weather_c},
    {&WallPlacing::humidity_percent, whole_share},
    {&WallPlacing::wind_km_h, nothing_or_more},
    {&WallPlacing::setting_h, above_nothing},
    {&WallPlacing::truck_m3, above_nothing},
    {&WallPlacing::round_trip_min, above_nothing},
    {&WallPlacing::vibrator_head_mm, above_nothing},
    {&WallPlacing::vibrator_depth_m, above_nothing},
    {&WallPlacing::form_pressure_kpa, above_nothing},
    {&WallPlacing::spread_mm, above_nothing},
    {&WallPlacing::end_of_set_h, above_nothing},
    {&WallPlacing::strip_after_h, above_nothing},
    {&WallPlacing::lowest_air_c, weather_c},
    {&WallPlacing::held_at_c, weather_c},
    {&WallPlacing::protected_until_h, above_nothing},
    {&WallPlacing::loaded_after_h, above_nothing},
    {&WallPlacing::soffit_strip_after_h, above_nothing},
    {&WallPlacing::soffit_strength_percent, whole_share},
    {&WallPlacing::strip_strength_mpa, above_nothing},
};

void find_price_faults(const WallPrices& prices, const FaultList& list) {
    for (const auto& [what, price] : prices.item) {
        list.hold(Field::wall_prices, price.low, nothing_or_more);
        list.hold(Field::wall_prices, price.likely, {.low = price.low, .high = out_of_all_reach});
        list.hold(Field::wall_prices, price.high, {.low = price.likely, .high = out_of_all_reach});
    }
}

} // namespace

void find_work_faults(const WallWork& work, const FaultList& list) {
    for (const PlacingNumber& of_placing : placing_numbers) {
        list.hold(Field::placing, work.placing.*of_placing.number, of_placing.bounds);
    }
    if (work.placing.flow_class) {
        list.hold(Field::placing, *work.placing.flow_class, {.low = 1, .high = 6});
    }
    const std::string& method = work.placing.pressure_method;
    if (!method.empty() && std::ranges::count(pressure_method_names, method) == 0) {
        list.unknown(Field::placing, method);
    }
    if (work.mockup) {
        list.hold(Field::mockup, work.mockup->length_m, above_nothing);
        list.hold(Field::mockup, work.mockup->height_m, above_nothing);
        list.hold(Field::mockup, work.mockup->thickness_mm, above_nothing);
        list.hold(Field::mockup, work.mockup->number, {.low = 1, .high = 1000});
    }
    if (work.panels) {
        find_panel_faults(*work.panels, list);
    }
    list.hold(Field::order, work.order.waste_percent, {.low = 0, .high = 99});
    list.hold(Field::order, work.order.increment_m3, above_nothing);
    for (const Embedment& embedment : work.embedments) {
        list.hold(Field::embedments, embedment.count, {.low = 1, .high = 1e6});
    }
    if (work.prices) {
        find_price_faults(*work.prices, list);
    }
    if (work.papers) {
        find_paper_faults(*work.papers, list);
    }
}

} // namespace boardmark::core
