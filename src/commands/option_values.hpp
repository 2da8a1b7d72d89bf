#pragma once

#include <boardmark/units/quantity.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::commands {

/// Values that an option may have, in the inside unit, ends included.
struct Bounds {
    double least;
    double most;
};

/// A dimension that an option may be written in, and its values.
struct Permitted {
    units::Dimension dimension;
    Bounds bounds;
};

/// An option's name and what was written for it.
struct OptionText {
    std::string_view option;
    std::string written;
};

/// The quantity of an option, of one of the dimensions permitted and within its bounds. Throws
/// Failure where it is not.
units::Quantity read_quantity_option(const OptionText& text, std::vector<Permitted> permitted);

/// The same where there is one dimension: the value in its inside unit.
double read_option(const OptionText& text, units::Dimension dimension, Bounds bounds);

/// The bare number of an option.
double read_number_option(const OptionText& text, Bounds bounds);

/// The same where it is a whole number.
double read_whole_option(const OptionText& text, Bounds bounds);

/// A pair NAME=VALUE.
struct NamedText {
    std::string name;
    std::string written;
};

/// How pairs are written, for whoever wrote them otherwise.
struct PairForm {
    std::string_view form; ///< "NAME=PERCENT"
    std::string_view example;
};

/// The pairs of an option, no name twice. Throws Failure where a part is no pair.
std::vector<NamedText> read_pairs(const OptionText& text, const PairForm& form);

/// The parts of a text, without the spaces around them.
std::vector<std::string> split(const std::string& text, char separator);

} // namespace boardmark::commands
