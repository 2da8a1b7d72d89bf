#include "measured.hpp"

#include <boardmark/units/unit.hpp>

#include "measure_units.hpp"

namespace boardmark::report {
namespace {

using core::Measure;

double converted(double value, std::string_view from, std::string_view to) {
    return units::unit(to).from_inside(units::unit(from).to_inside(value));
}

} // namespace

Measured measured(core::Quantity quantity, core::UnitSystem system) {
    const double value = quantity.value;
    const auto& [measure, si, us] = units_of(quantity.measure);
    if (system == core::UnitSystem::si) {
        return {value, measure == Measure::absolute_volume ? "m3/m3" : std::string{si}};
    }
    const auto in_us = [unit = std::string{us}](double amount) { return Measured{amount, unit}; };
    switch (measure) { // units of several parts
    case Measure::absolute_volume:
        return in_us(27 * value);
    case Measure::temperature_difference:
        return in_us(1.8 * value);
    case Measure::evaporation:
        return in_us(converted(value, "kg", "lb") / converted(1, "m2", "ft2"));
    case Measure::steel_area:
        return in_us(converted(value, "mm2", "in2") / converted(1, "m", "ft"));
    case Measure::money:
        return in_us(value / converted(1, "m3", "yd3"));
    default:
        return in_us(si == us ? value : converted(value, si, us));
    }
}

} // namespace boardmark::report
