#pragma once

#include <boardmark/core/placing/placing_day.hpp>

#include <span>
#include <string>
#include <vector>

namespace boardmark::report {

/// The lifts of one part, or of one of several like parts, from the bottom up.
using LiftRow = std::span<const core::LiftOfDay>;

std::vector<LiftRow> lift_rows(const std::vector<core::LiftOfDay>& lifts);

/// "corner planter 2 of 2".
std::string name_of(const LiftRow& row);

} // namespace boardmark::report
