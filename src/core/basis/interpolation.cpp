#include "interpolation.hpp"

#include "tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

std::optional<Position> locate_size(std::span<const double> sizes_mm, double size_mm) {
    for (std::size_t i = 0; i < sizes_mm.size(); ++i) {
        if (!above(std::abs(size_mm - sizes_mm[i]), size_tolerance * sizes_mm[i])) {
            return Position{i, i, 0};
        }
    }
    return locate(sizes_mm, size_mm);
}

} // namespace

std::optional<Position> locate(std::span<const double> axis, double at) {
    for (std::size_t i = 0; i < axis.size(); ++i) {
        if (same(axis[i], at)) {
            return Position{i, i, 0};
        }
    }
    if (axis.empty() || at < axis.front() || at > axis.back()) {
        return std::nullopt;
    }
    const auto above = std::ranges::upper_bound(axis, at);
    const auto upper = static_cast<std::size_t>(above - axis.begin());
    const double span = axis[upper] - axis[upper - 1];
    return Position{upper - 1, upper, (at - axis[upper - 1]) / span};
}

double interpolate(std::span<const double> values, Position position) {
    const double lower = values[position.lower];
    return lower + position.fraction * (values[position.upper] - lower);
}

std::optional<TableValue> value_at_size(const SizeRow& row, double size_mm) {
    const auto position = locate_size(row.sizes_mm, size_mm);
    if (!position) {
        return std::nullopt;
    }
    const double value = interpolate(row.values, *position);
    if (std::isnan(value)) {
        return std::nullopt;
    }
    return TableValue{value, position->between()};
}

} // namespace boardmark::core
