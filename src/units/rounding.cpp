#include <boardmark/units/rounding.hpp>

#include <cmath>
#include <numeric>

namespace boardmark::units {

double nearest(Graduated reading) {
    // A tie that binary fractions miss by their last digits (2.5 steps stored as 2.4999…) is a tie.
    const double steps = reading.amount / reading.step;
    const double whole = std::floor(std::abs(steps) + 0.5 + 1e-9);
    return whole == 0 ? 0 : std::copysign(whole, steps) * reading.step; // no minus before a zero
}

std::string inch_fraction(double inches) {
    constexpr long parts = 16;
    const auto sixteenths = std::lround(nearest({.amount = inches, .step = 1.0 / parts}) * parts);
    const long whole = std::abs(sixteenths) / parts;
    const long rest = std::abs(sixteenths) % parts;
    std::string text = sixteenths < 0 ? "-" : "";
    if (whole != 0 || rest == 0) {
        text += std::to_string(whole);
    }
    if (rest != 0) {
        const long divisor = std::gcd(rest, parts);
        text += (whole != 0 ? " " : "") + std::to_string(rest / divisor) + "/" +
                std::to_string(parts / divisor);
    }
    return text;
}

} // namespace boardmark::units
