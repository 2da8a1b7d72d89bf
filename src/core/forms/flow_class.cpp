#include <boardmark/core/forms/flow_class.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {

int flow_class_of_spread(double spread_mm, const FlowClasses& classes) {
    const auto end = std::ranges::find_if(
        classes.ends, [&](const FlowClassEnd& one) { return !above(spread_mm, one.spread_mm); });
    return 1 + static_cast<int>(end - classes.ends.begin());
}

FlowRange flow_classes_of_slump(double slump_mm, const FlowClasses& classes) {
    const auto end = std::ranges::find_if(classes.ends, [&](const FlowClassEnd& one) {
        return !one.slump_mm || !above(slump_mm, *one.slump_mm);
    });
    const int found = 1 + static_cast<int>(end - classes.ends.begin());
    const bool told_apart = end != classes.ends.end() && end->slump_mm;
    return {found, told_apart ? found : 1 + static_cast<int>(classes.ends.size())};
}

int classes_outside(int flow_class, FlowRange range) {
    return std::max({0, range.stiffest - flow_class, flow_class - range.most_fluid});
}

} // namespace boardmark::core
