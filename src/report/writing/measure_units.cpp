#include "measure_units.hpp"

#include <array>
#include <cstddef>

namespace boardmark::report {
namespace {

using core::Measure;

/// In the order of `Measure`.
constexpr std::array measure_rows{
    MeasureUnits{Measure::w_cm, "1", "1"},
    MeasureUnits{Measure::ratio, "1", "1"},
    MeasureUnits{Measure::percent, "%", "%"},
    MeasureUnits{Measure::chloride, "%", "%"},
    MeasureUnits{Measure::sulfate, "%", "%"},
    MeasureUnits{Measure::strength, "MPa", "psi"},
    MeasureUnits{Measure::slump, "mm", "in"},
    MeasureUnits{Measure::aggregate_size, "mm", "in"},
    MeasureUnits{Measure::length, "mm", "in"},
    MeasureUnits{Measure::concentration, "kg/m3", "lb/yd3"},
    MeasureUnits{Measure::alkali, "kg/m3", "lb/yd3"},
    MeasureUnits{Measure::water_amount, "kg/m3", "lb/yd3"},
    MeasureUnits{Measure::fresh_density, "kg/m3", "lb/ft3"},
    MeasureUnits{Measure::bulk_density, "kg/m3", "lb/ft3"},
    MeasureUnits{Measure::relative_density, "1", "1"},
    MeasureUnits{Measure::fineness_modulus, "1", "1"},
    MeasureUnits{Measure::bulk_volume, "1", "1"},
    MeasureUnits{Measure::absolute_volume, "m3", "ft3/yd3"},
    MeasureUnits{Measure::count, "1", "1"},
    MeasureUnits{Measure::age, "d", "d"},
    MeasureUnits{Measure::volume, "m3", "yd3"},
    MeasureUnits{Measure::mass, "kg", "lb"},
    MeasureUnits{Measure::temperature, "degC", "degF"},
    MeasureUnits{Measure::temperature_difference, "K", "degF"},
    MeasureUnits{Measure::dose, "mL/100 kg", "fl oz/cwt"},
    MeasureUnits{Measure::pressure, "kPa", "psf"},
    MeasureUnits{Measure::force, "kN", "lbf"},
    MeasureUnits{Measure::rate_of_rise, "m/h", "ft/h"},
    MeasureUnits{Measure::area, "m2", "ft2"},
    MeasureUnits{Measure::line_length, "m", "ft"},
    MeasureUnits{Measure::wind, "km/h", "mph"},
    MeasureUnits{Measure::evaporation, "kg/m2/h", "lb/ft2/h"},
    MeasureUnits{Measure::duration, "h", "h"},
    MeasureUnits{Measure::steel_area, "mm2/m", "in2/ft"},
    MeasureUnits{Measure::money, "1/m3", "1/yd3"},
};

/// Whether the rows stand in the order of the measures, each once, down to the last.
constexpr bool follow_the_measures() {
    for (std::size_t i = 0; i < measure_rows.size(); ++i) {
        if (measure_rows[i].measure != static_cast<Measure>(i)) {
            return false;
        }
    }
    return measure_rows.back().measure == Measure::money;
}

static_assert(follow_the_measures(), "a row for each measure, in their order");

} // namespace

const MeasureUnits& units_of(Measure measure) {
    return measure_rows[static_cast<std::size_t>(measure)];
}

std::string si_unit(Measure measure) {
    return std::string{units_of(measure).si};
}

} // namespace boardmark::report
