#include <boardmark/core/weather/weather_tables.hpp>

#include <algorithm>

namespace boardmark::core {

const ColdSection& WeatherTables::section(double thickness_mm) const {
    const auto found = std::ranges::find_if(
        cold, [&](const ColdSection& row) { return thickness_mm < row.below_mm; });
    return found == cold.end() ? cold.back() : *found;
}

} // namespace boardmark::core
