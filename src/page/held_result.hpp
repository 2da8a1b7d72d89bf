#pragma once

#include <string>

namespace boardmark::page {

/// What the last command wrote; emptied by reading it.
std::string take_result();

} // namespace boardmark::page
