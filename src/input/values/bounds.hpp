#pragma once

#include <boardmark/units/unit.hpp>

#include "../fields/fields.hpp"

#include <string>

namespace boardmark::input {

/// Three digits of a bound that is rough itself, without an exponent.
std::string roughly(double bound);

/// A range in a unit, or of bare numbers: "0 in to 12 in", "above 0 m"; without its upper end where
/// that is not to be told.
std::string words_of(const Range& range, const units::Unit* unit, bool tells_high);

/// Whether a range has an upper end that is more than a guard of the arithmetic.
bool has_told_end(const Range& range, const units::Unit* unit);

} // namespace boardmark::input
