#pragma once

#include <boardmark/core/basis/source.hpp>

#include <string>

namespace boardmark::core {

/// A size of reinforcing bar as the trade names it.
struct BarSize {
    std::string name; ///< "No. 4", "16 mm"
    double diameter_mm;
    double area_mm2; ///< as printed, else of the circle
    Source source;
};

} // namespace boardmark::core
