#pragma once

#include <boardmark/core/weather/weather_tables.hpp>

namespace boardmark::core {

/// A wet surface of concrete and the air above it.
struct WetSurface {
    double concrete_c;       ///< of the concrete's surface, 0–60
    double air_c;            ///< −20–60
    double humidity_percent; ///< 0–100
    double wind_km_h;        ///< ≥ 0, half a metre above the surface
};

/// Water that evaporates from a wet surface. For a formed wall that is the top edge, and the face
/// after stripping: never the face in its form.
struct Evaporation {
    double kg_m2_h;        ///< by Uno's formula; never negative: condensation counts as nothing
    double low_kg_m2_h;    ///< within the formula's uncertainty
    double high_kg_m2_h;   ///<
    double menzel_kg_m2_h; ///< a second opinion, by the older formula
};

/// Rate of evaporation by ACI 305R, in the printed form of the tables' system of units. The metric
/// print is rounded and runs 5 % low.
Evaporation evaporation(const WetSurface& surface, const WeatherTables& weather);

/// The rate from which a surface is protected: half of the usual where silica fume keeps the
/// concrete from bleeding.
const TypicalFigure& evaporation_precaution(bool silica_fume, const WeatherTables& weather);

} // namespace boardmark::core
