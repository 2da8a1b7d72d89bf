#pragma once

#include <boardmark/core/basis/source.hpp>

#include <vector>

namespace boardmark::core {

/// A row of a table that is entered by nominal maximum size. A gap in the print is NaN.
struct SizeRow {
    Source source;
    std::vector<double> sizes_mm; ///< increasing
    std::vector<double> values;   ///< one for each size
};

} // namespace boardmark::core
