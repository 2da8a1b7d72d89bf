#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/checks/finding.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <vector>

namespace boardmark::core {

/// Whether a study gives the cementitious material other shares than the mix as written, whose own
/// strengths are of its shares.
bool leaves_own_strengths(const Mix& written, const Mix& studied);

/// What holds by those strengths is a watch then.
void watch_own_strengths(std::vector<Finding>& findings);
void watch_own_strengths(std::vector<Check>& checks);

} // namespace boardmark::core
