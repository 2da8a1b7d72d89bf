#pragma once

#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/step.hpp>

#include <optional>
#include <span>

namespace boardmark::core {

/// Where a value lies on an increasing axis: on `lower` where the fraction is zero.
struct Position {
    std::size_t lower;
    std::size_t upper;
    double fraction;

    bool between() const { return fraction != 0; }
};

/// The position of a value between the ends of an axis, ends included; nothing outside them.
std::optional<Position> locate(std::span<const double> axis, double at);

/// The value at a position.
double interpolate(std::span<const double> values, Position position);

/// A value read from a table.
struct TableValue {
    double value;
    bool interpolated;

    Marks marks() const { return interpolated ? Marks{Mark::interpolated} : Marks{}; }
};

/// Of a printed size, how far another may be off and still take its column; common practice, no
/// source.
constexpr double size_tolerance = 0.07;

/// The value of a row at a nominal maximum size. A size within 7 % of a printed one takes its
/// column (10, 20 and 40 mm are the trade's names for 9.5, 19 and 37.5 mm). Nothing outside the
/// printed sizes and where a cell is empty.
std::optional<TableValue> value_at_size(const SizeRow& row, double size_mm);

} // namespace boardmark::core
