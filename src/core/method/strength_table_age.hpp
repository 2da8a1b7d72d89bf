#pragma once

namespace boardmark::core {

/// Age for which the method's table of strengths holds.
constexpr double strength_table_age_d = 28;

} // namespace boardmark::core
