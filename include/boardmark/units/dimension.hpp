#pragma once

#include <string_view>

namespace boardmark::units {

/// What a quantity measures, and the unit that its values have inside the library.
enum class Dimension {
    length,          ///< mm
    mass,            ///< kg
    volume,          ///< m3
    stress,          ///< MPa
    mass_per_volume, ///< kg/m3
    percentage,      ///< %
    time,            ///< d
    temperature,     ///< degC
    dose,            ///< m3/kg: volume of an admixture per mass of cementitious material
    mass_ratio,      ///< kg/kg
    area,            ///< m2
    force,           ///< kN
    speed,           ///< km/h
    volume_rate,     ///< m3/h
    angle,           ///< deg
};

/// The dimension in the words of an error message, with examples: "a stress (psi, MPa)".
std::string_view describe(Dimension dimension);

} // namespace boardmark::units
