#pragma once

#include <boardmark/units/dimension.hpp>

#include <span>
#include <string_view>

namespace boardmark::units {

/// One spelling that the program reads or prints, with its exact relation to the inside unit.
struct Unit {
    std::string_view spelling;
    Dimension dimension;
    double factor;           ///< inside value = (amount + offset) × factor
    double offset;           ///< zero for all but temperatures
    std::string_view source; ///< where the factor is defined

    /// The amount in this unit as a value in the dimension's inside unit.
    double to_inside(double amount) const { return (amount + offset) * factor; }
    /// A value in the dimension's inside unit as an amount in this unit.
    double from_inside(double value) const { return value / factor - offset; }
};

/// Every unit that is read. A spelling that is not listed is not a unit here.
std::span<const Unit> all_units();

/// The unit with this exact spelling (case matters), or nullptr.
const Unit* find_unit(std::string_view spelling);

/// The unit with this exact spelling. Asserts that it is one: for spellings written in the program.
const Unit& unit(std::string_view spelling);

} // namespace boardmark::units
