#pragma once

#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <string>

namespace boardmark::report {

/// An unrounded number and the unit it is in.
struct Measured {
    double amount;
    std::string unit; ///< "1" for plain numbers
};

/// A quantity in the unit that a spreadsheet or a figure of the system gets, without rounding.
Measured measured(core::Quantity quantity, core::UnitSystem system);

} // namespace boardmark::report
