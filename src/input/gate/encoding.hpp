#pragma once

#include "source_text.hpp"

namespace boardmark::input {

/// Throws Refused where the bytes of a file are no text: not UTF-8, or with control characters.
void demand_text(const SourceText& source);

} // namespace boardmark::input
