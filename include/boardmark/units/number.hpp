#pragma once

#include <boardmark/units/misreading.hpp>

#include <string_view>

namespace boardmark::units {

/// A number at the start of a text and how many bytes it took.
struct LeadingNumber {
    double value;
    std::size_t length;
};

/// Reads the number that a text begins with: the one grammar for numbers in every file and option.
///
/// Accepted: `4500`, `-5`, `0.45`, `.45`, `1.5e3`, `3/4`, `1 1/2`, `1-1/2`.
/// Refused: `1,5` and `4,500` (commas), `010` (leading zero), `0x10`, `.nan`, `.inf`, `1e400`,
/// `3/0`, `5.`, the empty text.
Reading<LeadingNumber> read_leading_number(std::string_view text);

/// Reads a text that is a number and nothing else.
Reading<double> read_number(std::string_view text);

} // namespace boardmark::units
