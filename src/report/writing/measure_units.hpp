#pragma once

#include <boardmark/core/basis/quantity.hpp>

#include <string>
#include <string_view>

namespace boardmark::report {

/// The units of one measure.
struct MeasureUnits {
    core::Measure measure;
    std::string_view si; ///< that of the value inside, as JSON names it; "1" for plain numbers
    std::string_view us; ///< that of a spreadsheet in US units; the same where it has but one
};

/// The row of a measure.
const MeasureUnits& units_of(core::Measure measure);

/// The SI unit of a measure, as JSON names it: "kg/m3", "MPa", "1" for plain numbers.
std::string si_unit(core::Measure measure);

} // namespace boardmark::report
