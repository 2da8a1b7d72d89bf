#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/weather/weather_tables.hpp>

namespace boardmark::reference {

core::WeatherTables weather_tables(core::UnitSystem system);

} // namespace boardmark::reference
