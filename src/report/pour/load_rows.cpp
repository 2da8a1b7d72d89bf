#include "load_rows.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

constexpr std::size_t rows_of_single_loads = 8;
constexpr std::size_t rows_of_groups = 4;

double hours_of(const core::LoadOfDay& load) {
    return load.ends_h - load.begins_h;
}

LoadRow load_row_of(const core::LoadOfDay& load) {
    return {&load, &load, hours_of(load), hours_of(load)};
}

LoadRow joined(const LoadRow& row, const LoadRow& next) {
    return {row.first, next.last, std::min(row.shortest_h, next.shortest_h),
            std::max(row.longest_h, next.longest_h)};
}

/// Of the same parts, to the minute as long.
bool alike(const LoadRow& row, const LoadRow& next) {
    constexpr double minute_h = 1.0 / 60;
    return row.last->parts == next.first->parts &&
           std::abs(row.longest_h - next.longest_h) < minute_h / 2;
}

} // namespace

std::vector<LoadRow> load_rows(const std::vector<core::LoadOfDay>& loads) {
    const std::size_t single =
        loads.size() <= rows_of_single_loads + rows_of_groups ? loads.size() : rows_of_single_loads;
    std::vector<LoadRow> rows;
    for (std::size_t i = 0; i < single; ++i) {
        rows.push_back(load_row_of(loads[i]));
    }
    for (std::size_t i = single; i < loads.size(); ++i) {
        const LoadRow next = load_row_of(loads[i]);
        if (rows.size() > single && alike(rows.back(), next)) {
            rows.back() = joined(rows.back(), next);
        } else {
            rows.push_back(next);
        }
    }
    while (rows.size() > single + rows_of_groups) {
        const LoadRow last = rows.back();
        rows.pop_back();
        rows.back() = joined(rows.back(), last);
    }
    return rows;
}

} // namespace boardmark::report
