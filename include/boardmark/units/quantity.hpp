#pragma once

#include <boardmark/units/misreading.hpp>
#include <boardmark/units/unit.hpp>

#include <string_view>

namespace boardmark::units {

/// An amount with the unit it was written in.
struct Quantity {
    double amount;
    const Unit* unit;

    /// The value in the inside unit of its dimension.
    double inside() const { return unit->to_inside(amount); }
};

/// Reads `AMOUNT UNIT`: `4500 psi`, `1 1/2 in`, `8 fl oz/cwt`, `6%`, `0.1lb`.
///
/// Refused: an amount without a unit, a spelling that is not in all_units() (with advice where only
/// the case differs), and `ton`, which means three different masses.
Reading<Quantity> read_quantity(std::string_view text);

} // namespace boardmark::units
