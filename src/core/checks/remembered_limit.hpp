#pragma once

#include <boardmark/core/checks/check.hpp>

namespace boardmark::core {

/// Says where a limit was not read again.
void append_memory(const Source& source, Phrase& message);

/// A limit that was not read again never holds: that it seems to is a watch, and says so.
void watch_what_is_from_memory(Check& check);

} // namespace boardmark::core
