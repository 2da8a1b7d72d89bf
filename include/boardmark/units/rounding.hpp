#pragma once

#include <string>

namespace boardmark::units {

/// An amount and the step of the scale, ruler or table it is read on.
struct Graduated {
    double amount;
    double step; ///< > 0
};

/// The nearest whole number of steps; a half goes away from zero.
double nearest(Graduated reading);

/// Inches as the trade writes them, to the nearest sixteenth: "3/4", "1 1/2", "4".
std::string inch_fraction(double inches);

} // namespace boardmark::units
