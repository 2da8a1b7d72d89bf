#include "measured.hpp"

#include <boardmark/units/unit.hpp>

#include "quantity_format.hpp"

namespace boardmark::report {
namespace {

using core::Measure;

double converted(double value, std::string_view from, std::string_view to) {
    return units::unit(to).from_inside(units::unit(from).to_inside(value));
}

/// Units in which both trades write a measure of one plain unit; empty where they are the same.
std::string_view us_unit(Measure measure) {
    switch (measure) {
    case Measure::strength:
        return "psi";
    case Measure::slump:
    case Measure::aggregate_size:
    case Measure::length:
        return "in";
    case Measure::concentration:
    case Measure::alkali:
    case Measure::water_amount:
        return "lb/yd3";
    case Measure::fresh_density:
    case Measure::bulk_density:
        return "lb/ft3";
    case Measure::volume:
        return "yd3";
    case Measure::mass:
        return "lb";
    case Measure::temperature:
        return "degF";
    case Measure::dose:
        return "fl oz/cwt";
    case Measure::pressure:
        return "psf";
    case Measure::force:
        return "lbf";
    case Measure::rate_of_rise:
        return "ft/h";
    case Measure::area:
        return "ft2";
    case Measure::line_length:
        return "ft";
    case Measure::wind:
        return "mph";
    default:
        return "";
    }
}

} // namespace

Measured measured(core::Quantity quantity, core::UnitSystem system) {
    const double value = quantity.value;
    const std::string si = si_unit(quantity.measure);
    if (system == core::UnitSystem::si) {
        return {value, quantity.measure == Measure::absolute_volume ? "m3/m3" : si};
    }
    switch (quantity.measure) {
    case Measure::absolute_volume:
        return {27 * value, "ft3/yd3"};
    case Measure::temperature_difference:
        return {1.8 * value, "degF"};
    case Measure::evaporation:
        return {converted(value, "kg", "lb") / converted(1, "m2", "ft2"), "lb/ft2/h"};
    case Measure::steel_area:
        return {converted(value, "mm2", "in2") / converted(1, "m", "ft"), "in2/ft"};
    case Measure::money:
        return {value / converted(1, "m3", "yd3"), "1/yd3"};
    default:
        break;
    }
    const std::string_view us = us_unit(quantity.measure);
    return us.empty() ? Measured{value, si} : Measured{converted(value, si, us), std::string{us}};
}

} // namespace boardmark::report
