#pragma once

#include <boardmark/core/placing/placing_day.hpp>

#include <vector>

namespace boardmark::report {

/// Loads that stand in one row of the card: one, or several that follow each other alike.
struct LoadRow {
    const core::LoadOfDay* first;
    const core::LoadOfDay* last;
    double shortest_h; ///< from one of them to the next, and
    double longest_h;  ///< the longest; both that of the load itself where it stands alone

    bool is_single() const { return first == last; }
};

/// Every load by itself as far as the sheet goes; the others together, those of one part and one
/// interval in a row, or all in one where that is too many rows as well.
std::vector<LoadRow> load_rows(const std::vector<core::LoadOfDay>& loads);

} // namespace boardmark::report
