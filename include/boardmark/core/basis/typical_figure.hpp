#pragma once

#include <boardmark/core/basis/source.hpp>

namespace boardmark::core {

/// A published figure with its source; it often stands in where the papers give none.
struct TypicalFigure {
    double value;
    Source source;
};

} // namespace boardmark::core
