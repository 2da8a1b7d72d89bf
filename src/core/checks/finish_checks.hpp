#pragma once

#include "checks.hpp"

namespace boardmark::core {

// Advice for a board-marked face: each holds, is to be watched or could not be checked; none fails.

/// The requirement of each.
constexpr const char* board_marked = "board-marked";

void check_finish_volumes(const CheckContext& context, Findings& findings);
void check_finish_fines(const CheckContext& context, Findings& findings);
void check_finish_constancy(const CheckContext& context, Findings& findings);
void check_finish_slump(const CheckContext& context, Findings& findings);
void check_finish_deicer(const CheckContext& context, Findings& findings);

} // namespace boardmark::core
