#include "bounds.hpp"

#include <fmt/format.h>

#include <cmath>

namespace boardmark::input {
namespace {

double in_unit(double bound, const units::Unit* unit) {
    return unit ? unit->from_inside(bound) : bound;
}

std::string written_bound(double bound, const units::Unit* unit) {
    const double amount = in_unit(bound, unit);
    const std::string exactly = fmt::format("{:.6g}", amount);
    const bool whole = exactly.find_first_of(".e") == std::string::npos;
    return (whole ? exactly : roughly(amount)) + (unit ? " " + std::string{unit->spelling} : "");
}

} // namespace

std::string roughly(double bound) {
    constexpr double largest_with_decimals = 1000;
    if (std::abs(bound) < largest_with_decimals) {
        return fmt::format("{:.3g}", bound);
    }
    const double step = std::pow(10, std::floor(std::log10(std::abs(bound))) - 2);
    return fmt::format("{:.0f}", std::round(bound / step) * step);
}

bool has_told_end(const Range& range, const units::Unit* unit) {
    constexpr double largest_bound_told = 1e6;
    return in_unit(range.high, unit) < largest_bound_told;
}

std::string words_of(const Range& range, const units::Unit* unit, bool tells_high) {
    const std::string before = !range.low_itself ? "above " : tells_high ? "" : "at least ";
    return before + written_bound(range.low, unit) +
           (tells_high ? " to " + written_bound(range.high, unit) : "");
}

} // namespace boardmark::input
