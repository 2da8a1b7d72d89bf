#include "slump_retention.hpp"

#include "../basis/tolerance.hpp"

namespace boardmark::core {

std::optional<double> retained_percent(const std::vector<RetentionPoint>& points, double minutes) {
    RetentionPoint before{0, 100};
    for (const RetentionPoint& point : points) {
        if (same(point.minutes, minutes)) {
            return point.percent;
        }
        if (minutes < point.minutes) {
            const double fraction = (minutes - before.minutes) / (point.minutes - before.minutes);
            return before.percent + fraction * (point.percent - before.percent);
        }
        before = point;
    }
    return same(minutes, 0) ? std::optional{100.0} : std::nullopt;
}

} // namespace boardmark::core
