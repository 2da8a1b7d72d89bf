#pragma once

#include <boardmark/core/basis/source.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// Where a flow class of EN 206 ends; F6 has no end.
struct FlowClassEnd {
    double spread_mm;
    std::optional<double> slump_mm; ///< absent where slump no longer tells the classes apart
};

struct FlowClasses {
    std::vector<FlowClassEnd> ends; ///< F1 first, increasing
    Source source;
};

/// Classes from the stiffer to the more fluid, 1 to 6.
struct FlowRange {
    int stiffest;
    int most_fluid;
};

/// The class of a spread on the flow table, 1 to 6.
int flow_class_of_spread(double spread_mm, const FlowClasses& classes);

/// The class that goes with a slump; above the last slump of the table those that it leaves open.
FlowRange flow_classes_of_slump(double slump_mm, const FlowClasses& classes);

/// How many classes a class lies outside a range, 0 inside.
int classes_outside(int flow_class, FlowRange range);

} // namespace boardmark::core
