#include "finite.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string>

namespace boardmark::report {
namespace {

bool is_finite(const Json& value) {
    if (value.is_number_float()) {
        return std::isfinite(value.get<double>());
    }
    return !value.is_structured() || std::all_of(value.begin(), value.end(), is_finite);
}

/// Says where: the way there is made only where a figure is not finite.
void demand_finite_below(const Json& value, const std::string& place) {
    if (value.is_number_float() && !std::isfinite(value.get<double>())) {
        throw std::logic_error("a figure of the result is not finite: " + place);
    }
    if (value.is_structured()) {
        for (const auto& [key, member] : value.items()) {
            demand_finite_below(member, place.empty() ? key : place + "." + key);
        }
    }
}

} // namespace

double finite(double value) {
    if (!std::isfinite(value)) {
        throw std::logic_error("a figure of the result is not finite");
    }
    return value;
}

void demand_finite(const Json& result) {
    if (!is_finite(result)) {
        demand_finite_below(result, "");
    }
}

} // namespace boardmark::report
