#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/strength/strength_line.hpp>

namespace boardmark::core {

/// `strength.line`: whether a ratio may be read from a line, with the band of its fall.
Check line_check(const StrengthLine& line);

} // namespace boardmark::core
