#pragma once

#include <boardmark/core/strength/strength_line.hpp>

#include "findings.hpp"

namespace boardmark::core {

/// `strength.line`: whether a ratio may be read from a line, with the band of its fall.
void check_fall(const StrengthLine& line, Findings& findings);

} // namespace boardmark::core
