#pragma once

#include <boardmark/core/weather/weather_tables.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Heat of the parts of fresh concrete, each counted as the water that would hold as much. Any
/// amount of concrete: 1 m3 or a batch.
struct MixtureHeat {
    double solids_kg;     ///< aggregates SSD and cementitious material
    double solids_c;      ///< their mean temperature, by mass
    double free_water_kg; ///< on the aggregates; negative where they take up water
    double free_water_c;  ///< that of the aggregates
    double water_kg;      ///< batched besides, ice included; ≥ 0
    double water_c;       ///< of the batched water that is no ice
    double ice_kg = 0;    ///< part of the batched water, 0 to `water_kg`
    double frozen_kg = 0; ///< part of the free water: on aggregate below 0 °C
    double frozen_c = 0;  ///< its temperature, ≤ 0
};

/// Temperature of the mixture when mixed, °C, by ACI 305R and 306R: solids hold 0.22 of the heat of
/// water, ice is melted, batched or frozen to the aggregates. Heat of mixing and of hydration is
/// left out.
double mixture_temperature_c(const MixtureHeat& heat, const WeatherTables& weather);

/// The batched water's temperature that brings the mixture to a temperature, °C. Nothing where all
/// of it is ice. It may be one that no water has: the caller holds it against its limits.
std::optional<double> water_temperature_for_c(const MixtureHeat& heat, double mixture_c,
                                              const WeatherTables& weather);

/// The ice that brings the mixture down to a temperature in place of as much of the batched water,
/// kg. Negative where the mixture is colder without any, above `water_kg` where ice is not enough.
double ice_for_kg(const MixtureHeat& heat, double mixture_c, const WeatherTables& weather);

/// What a drum of concrete loses in an hour of haul, K: a part of its difference to the air.
/// Negative in air that is warmer. An estimate.
double haul_loss_k_per_h(double concrete_c, double air_c, const WeatherTables& weather);

/// Temperature of a mix as far as the file states what it needs.
struct MixtureTemperature {
    std::vector<std::string> missing = {}; ///< keys without which it is not known
    std::optional<MixtureHeat> heat = {};  ///< of 1 m3
    std::optional<double> mixed_c = {};
    std::optional<double> placed_c = {}; ///< after the haul, where haul and air are stated
    double ice_kg_m3 = 0;                ///< part of the batched water
};

} // namespace boardmark::core
