#pragma once

#include <boardmark/core/forms/stripping.hpp>
#include <boardmark/core/weather/weather_tables.hpp>

#include <optional>

namespace boardmark::core {

/// What decides how long fresh concrete is protected from cold.
struct ColdPour {
    std::optional<double> coldest_c = {}; ///< air at placing or forecast, the colder
    bool exposed = true;                  ///< to freezing and thawing later on
    std::optional<bool> loaded = {};      ///< while it is young; absent: nobody says
    bool accelerated = false;             ///< Type III cement or an accelerating admixture
    double thinnest_mm = 0;
    double thickest_mm = 0;
    double frost_strength_mpa = 0; ///< that it must have before it freezes
    std::optional<double> held_at_c = {};
    TemperatureHistory held = {}; ///< of the concrete, as if it were held on and on
    StrippedLift lift = {};       ///< its strength by age
};

/// The plan for the cold; only where the air is below 40 °F at placing or forecast.
struct ColdPlan {
    double coldest_c = 0;
    double days = 0;                 ///< of protection
    double days_if_loaded = 0;       ///< the same where a load comes on it while it is young
    std::optional<bool> loaded = {}; ///< as stated
    TypicalFigure least_c = {};      ///< of the concrete while it is protected
    TypicalFigure most_fall_k = {};  ///< in the first 24 h after the protection
    double frost_strength_mpa = 0;   ///< before it freezes
    std::optional<double> frost_strength_h = {}; ///< until then at the temperature held, estimated
    std::optional<double> fall_k = {};           ///< from the temperature held to the coldest air
    Source days_source = {};
    bool freezes = false; ///< the air is at or below freezing
};

/// Nothing where neither air nor forecast is below the bound of cold weather.
std::optional<ColdPlan> cold_plan(const ColdPour& pour, const CuringRules& rules,
                                  const WeatherTables& weather);

} // namespace boardmark::core
