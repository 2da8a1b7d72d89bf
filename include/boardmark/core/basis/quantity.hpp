#pragma once

namespace boardmark::core {

/// What a number of a result measures, and with it the SI unit it is in.
enum class Measure {
    w_cm,             ///< mass ratio of mixing water to cementitious material
    ratio,            ///< any other plain ratio
    percent,          ///< %
    chloride,         ///< % of cementitious material
    sulfate,          ///< % of soil
    strength,         ///< MPa
    slump,            ///< mm
    aggregate_size,   ///< mm
    length,           ///< mm
    concentration,    ///< kg per m3 of concrete
    alkali,           ///< kg of Na2O equivalent per m3 of concrete
    water_amount,     ///< kg of water per m3 of concrete, small amounts
    fresh_density,    ///< kg/m3 of fresh concrete
    bulk_density,     ///< kg/m3 of dry-rodded aggregate
    relative_density, ///< to water
    fineness_modulus,
    bulk_volume,     ///< dry-rodded volume of coarse aggregate per volume of concrete
    absolute_volume, ///< m3 per m3 of concrete
    count,
    age,                    ///< d
    volume,                 ///< m3
    mass,                   ///< kg
    temperature,            ///< degC
    temperature_difference, ///< K
    dose,                   ///< mL of product per 100 kg of cementitious material
    pressure,               ///< kPa, of fresh concrete on its form
    force,                  ///< kN
    rate_of_rise,           ///< m/h, of fresh concrete in its form
    area,                   ///< m2
    line_length,            ///< m, of a wall or another length measured in feet

    // of placing, weather and joints
    wind,        ///< km/h
    evaporation, ///< kg/m2 per h
    duration,    ///< h
    steel_area,  ///< mm2 per m of wall
    money,       ///< of a currency named beside it, per m3 of concrete
};

/// On which side of a value that somebody must keep to a rounded one is safe. Heeded of durations,
/// temperatures, amounts of 1 m3, pressures, forces and rates of rise.
enum class Keep { nearest, at_most, at_least };

/// A value in the unit that its measure states.
struct Quantity {
    double value;
    Measure measure;
    Keep keep = Keep::nearest;

    bool operator==(const Quantity&) const = default;
};

} // namespace boardmark::core
