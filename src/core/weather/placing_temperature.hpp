#pragma once

#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>
#include <boardmark/core/weather/weather_tables.hpp>

#include <optional>

namespace boardmark::core {

struct Tables;

/// Whether stated air makes the weather cold.
bool is_cold(const PlacingConditions& placing, const WeatherTables& weather);

/// Temperature of a load after its haul; its own where haul or air are not stated.
std::optional<double> after_haul_c(double mixed_c, const PlacingConditions& placing,
                                   const WeatherTables& weather);

/// Least temperature as mixed in cold air, by the section; without a thickness the thinnest's.
const TypicalFigure& least_mixed(const Requirements& requirements, const WeatherTables& weather);

/// Least and most as placed, likewise.
const ColdSection& cold_section(const Requirements& requirements, const WeatherTables& weather);

/// Works out the temperature of a mix whose file speaks of temperatures, and what would bring it
/// within the limits: steps `mixture_temperature`, `placing_temperature`,
/// `advised_water_temperature`, `advised_ice`.
///
/// Unresolved where more ice is asked for than there is water to batch
std::optional<Unresolved> record_temperature(const Requirements& requirements,
                                             const BatchedWater& water, Proportions& proportions,
                                             const Tables& tables);

} // namespace boardmark::core
