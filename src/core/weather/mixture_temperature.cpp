#include <boardmark/core/weather/mixture_temperature.hpp>

namespace boardmark::core {
namespace {

double water_equivalent_kg(const MixtureHeat& heat, const WeatherTables& weather) {
    return weather.solids_heat.value * heat.solids_kg + heat.free_water_kg + heat.water_kg;
}

/// The water that would cool a mixture as much as ice of a temperature does.
double ice_as_water_c(double ice_c, const WeatherTables& weather) {
    return weather.ice_as_water_c.value + weather.ice_heat.value * ice_c;
}

/// Heat of all but the batched water, as kg of water times °C.
double heat_of_others(const MixtureHeat& heat, const WeatherTables& weather) {
    return weather.solids_heat.value * heat.solids_kg * heat.solids_c +
           heat.free_water_kg * heat.free_water_c +
           heat.frozen_kg * (ice_as_water_c(heat.frozen_c, weather) - heat.frozen_c);
}

} // namespace

double mixture_temperature_c(const MixtureHeat& heat, const WeatherTables& weather) {
    const double sum = heat_of_others(heat, weather) +
                       (heat.water_kg - heat.ice_kg) * heat.water_c +
                       heat.ice_kg * weather.ice_as_water_c.value;
    return sum / water_equivalent_kg(heat, weather);
}

std::optional<double> water_temperature_for_c(const MixtureHeat& heat, double mixture_c,
                                              const WeatherTables& weather) {
    if (heat.ice_kg >= heat.water_kg) {
        return std::nullopt;
    }
    const double needed = mixture_c * water_equivalent_kg(heat, weather) -
                          heat_of_others(heat, weather) -
                          heat.ice_kg * weather.ice_as_water_c.value;
    return needed / (heat.water_kg - heat.ice_kg);
}

double ice_for_kg(const MixtureHeat& heat, double mixture_c, const WeatherTables& weather) {
    const double surplus = heat_of_others(heat, weather) + heat.water_kg * heat.water_c -
                           mixture_c * water_equivalent_kg(heat, weather);
    return surplus / (heat.water_c - weather.ice_as_water_c.value);
}

double haul_loss_k_per_h(double concrete_c, double air_c, const WeatherTables& weather) {
    return weather.haul_share.value * (concrete_c - air_c);
}

} // namespace boardmark::core
