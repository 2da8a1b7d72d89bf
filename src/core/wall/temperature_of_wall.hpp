#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/wall/concrete_temperatures.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <vector>

namespace boardmark::core {

/// What concrete may have when it is placed, whatever is known of it.
Limit placing_temperatures(double thickness_mm, const WeatherTables& weather);

/// `placing.temperature`: the colder concrete of both files against the least for its section, the
/// warmer against the hottest permitted; a `watch` where the files disagree about concrete or air,
/// or where only the mix file tells it; not checked where neither does.
Check check_placing_temperature(const ConcreteTemperatures& temperatures, double thickness_mm,
                                const WeatherTables& weather);

/// Where the mix file's concrete is warmer than the one that the wall file states, a lift sets
/// sooner than the stated time: `lift.time` that held becomes a `watch`.
void watch_setting(const Wall& wall, const ConcreteTemperatures& temperatures,
                   const WeatherTables& weather, std::vector<Check>& checks);

/// `binder.heat` of the mix, where a part of the wall is mass concrete: at best a `watch`, with the
/// peak in its middle by the warmer concrete of both files.
void watch_mass_heat(const Wall& wall, const ConcreteTemperatures& temperatures,
                     const Proportions& proportions, const Tables& tables,
                     std::vector<Check>& mix_checks);

} // namespace boardmark::core
