#pragma once

#include <boardmark/core/basis/typical_figure.hpp>

#include <vector>

namespace boardmark::core {

/// Temperatures of concrete in cold weather for sections below a least dimension.
struct ColdSection {
    double below_mm;
    TypicalFigure least_placed_c; ///< as placed and maintained
    TypicalFigure most_placed_c;
    TypicalFigure least_mixed_mild_c;   ///< air above `mild_air_c`
    TypicalFigure least_mixed_hard_c;   ///< air between the two
    TypicalFigure least_mixed_bitter_c; ///< air below `bitter_air_c`
    TypicalFigure most_fall_k;          ///< in the first 24 h after protection
};

/// Evaporation as scale × ((Tc + offset)^power − r (Ta + offset)^power)(calm + wind V), kg/m2 per
/// h, degC, km/h.
struct UnoForm {
    double scale;
    double offset_c;
    double power;
    double calm;
    double wind;
    Source source;
};

/// The older form, scale × (e0 − r ea)(calm + wind V), with saturation pressures in kPa.
struct MenzelForm {
    double scale;
    double calm;
    double wind;
    double saturation_kpa;
    double saturation_rate;
    double saturation_offset_c;
    Source source;
};

struct EvaporationTables {
    UnoForm uno;
    MenzelForm menzel;
    TypicalFigure precaution_kg_m2_h; ///< rate from which a surface is to be protected
    TypicalFigure precaution_with_silica_fume_kg_m2_h;
    TypicalFigure uncertainty_percent; ///< of any of the formulas
};

/// Temperature of fresh concrete and what the weather does to it.
struct WeatherTables {
    std::vector<ColdSection> cold; ///< increasing dimensions
    TypicalFigure cold_air_c;      ///< air below it makes the weather cold
    double mild_air_c;
    double bitter_air_c;
    TypicalFigure hottest_c;       ///< of fresh concrete
    TypicalFigure older_hottest_c; ///< that earlier editions allowed
    TypicalFigure solids_heat;     ///< specific heat of solids, relative to water
    TypicalFigure ice_as_water_c;  ///< ice counts as water of this temperature
    TypicalFigure ice_heat;        ///< part of the heat of water that ice below 0 °C holds
    TypicalFigure one_concrete_k;  ///< by which two files may differ about one concrete
    TypicalFigure haul_share;      ///< of concrete less air, lost in each hour of haul
    TypicalFigure hottest_water_c; ///< that may be batched
    EvaporationTables evaporation;

    /// The row of a least dimension.
    const ColdSection& section(double thickness_mm) const;
};

} // namespace boardmark::core
