#pragma once

#include "checks.hpp"

namespace boardmark::core {

// Advice for a board-marked face: each holds, is to be watched or could not be checked; none fails.

Checks check_finish_volumes(const CheckContext& context);
Checks check_finish_fines(const CheckContext& context);
Checks check_finish_constancy(const CheckContext& context);
Checks check_finish_slump(const CheckContext& context);
Checks check_finish_deicer(const CheckContext& context);

} // namespace boardmark::core
