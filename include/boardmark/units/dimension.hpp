#pragma once

#include <string_view>

namespace boardmark::units {

/// What a quantity measures. Each dimension has one unit inside the library; see inside_unit().
enum class Dimension {
    length,
    mass,
    volume,
    stress,
    mass_per_volume,
    percentage,
    time,
    temperature,
    dose, ///< volume of an admixture per mass of cementitious material
    mass_ratio,
};

/// The dimension in the words of an error message, with examples: "a stress (psi, MPa)".
std::string_view describe(Dimension dimension);

/// The unit that every value of this dimension has inside the library: "mm", "MPa", "kg/m3".
std::string_view inside_unit(Dimension dimension);

} // namespace boardmark::units
