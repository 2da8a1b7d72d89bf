#pragma once

#include <string_view>

namespace boardmark::commands {

/// The page that this program carries, an HTML file; empty where it was built without it.
std::string_view carried_page();

} // namespace boardmark::commands
