#pragma once

#include <boardmark/core/mix/mix.hpp>

#include "view.hpp"

#include <string>
#include <vector>

namespace boardmark::report {

/// A length as a drawing says it: "8 ft 6 7/8 in", "5 1/2 in", "2613 mm". What is no sixteenth of
/// an inch, because it was divided, is shown to the nearest eighth of an inch from a foot on.
std::string dimension(double metres, core::UnitSystem system);

/// Whether a drawing rounds a length so: a chain of such lengths may not add up.
bool is_shown_rounded(double metres, core::UnitSystem system);

/// What a chain of dimensions is drawn from.
struct Chain {
    std::vector<double> stations_m; ///< increasing, at least two
    double y_mm;                    ///< of its line
    double first_x_mm;              ///< of the first station
    double scale;
};

/// Draws a chain; words that find no room between their ticks stand in rows below. Returns what it
/// takes below its line, mm.
double draw_chain(const Chain& chain, core::UnitSystem system, View& view);

/// An upright dimension of a length; the words left of its line.
struct UprightDimension {
    double x_mm;
    double top_mm;
    double bottom_mm;
    double metres;
};
void draw_upright(const UprightDimension& dimension, core::UnitSystem system, View& view);

} // namespace boardmark::report
