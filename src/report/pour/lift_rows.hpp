#pragma once

#include <boardmark/core/placing/placing_day.hpp>

#include <span>
#include <string>
#include <vector>

namespace boardmark::report {

/// The lifts of one part, from the bottom up; where the sheet has no room for each of several like
/// parts, of the first and of the last of them.
struct LiftRow {
    std::span<const core::LiftOfDay> first;
    std::span<const core::LiftOfDay> last; ///< the same where it stands alone

    bool is_single() const { return first.data() == last.data(); }
};

std::vector<LiftRow> lift_rows(const std::vector<core::LiftOfDay>& lifts);

/// "corner planter 2 of 2", "corner planter 1 to 12".
std::string name_of(const LiftRow& row);

/// "corner planter 2 of 2".
std::string name_of_copy(const core::LiftOfDay& lift);

} // namespace boardmark::report
