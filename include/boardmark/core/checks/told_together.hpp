#pragma once

#include <boardmark/core/checks/check.hpp>

#include <cstddef>
#include <vector>

namespace boardmark::core {

/// A check as a reader is told it.
struct ToldCheck {
    Check check;           ///< its sentence begins with the names of all its parts
    std::size_t parts = 1; ///< checks that it stands for
};

/// Parts of which the same is true share one sentence, which stands where the first of them stood.
std::vector<ToldCheck> told_together(const std::vector<Check>& checks);

} // namespace boardmark::core
