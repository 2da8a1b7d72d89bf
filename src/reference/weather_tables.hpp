#pragma once

#include <boardmark/core/tables.hpp>

namespace boardmark::reference {

core::WeatherTables weather_tables(core::UnitSystem system);

} // namespace boardmark::reference
