#pragma once

#include <boardmark/core/check.hpp>
#include <boardmark/core/wall.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// A check that says which wall it is of.
Check of_wall(const std::string& wall, Check check);

/// `placing.temperature`: the concrete in the form against the least for its section and the
/// hottest permitted; not checked where its temperature is not stated.
Check check_placing_temperature(const Wall& wall, double thickness_mm,
                                const WeatherTables& weather);

} // namespace boardmark::core
