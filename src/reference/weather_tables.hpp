#pragma once

#include <boardmark/core/basis/tables.hpp>

namespace boardmark::reference {

core::WeatherTables weather_tables(core::UnitSystem system);

} // namespace boardmark::reference
