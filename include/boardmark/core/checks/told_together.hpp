#pragma once

#include <boardmark/core/checks/check.hpp>

#include <vector>

namespace boardmark::core {

/// The checks as a reader is told them: parts of which the same is true share one sentence, which
/// begins with all their names and stands where the first of them stood. Verdicts are counted from
/// the checks themselves.
std::vector<Check> told_together(const std::vector<Check>& checks);

} // namespace boardmark::core
