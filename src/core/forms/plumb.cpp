#include <boardmark/core/forms/plumb.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {

std::optional<double> plumb_tolerance_mm(double height_mm, bool exposed_edge,
                                         const PlumbRules& rules) {
    if (above(height_mm, rules.up_to_mm)) {
        return std::nullopt;
    }
    const double percent = exposed_edge ? rules.edge_share_percent : rules.share_percent;
    return std::min(percent / 100 * height_mm, exposed_edge ? rules.edge_most_mm : rules.most_mm);
}

} // namespace boardmark::core
