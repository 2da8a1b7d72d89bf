#pragma once

#include <string>
#include <string_view>

namespace boardmark::input {

/// A text of the table of keys with its US quantities in SI, to two digits: "slump: 4 in" becomes
/// "slump: 100 mm". Prices and sizes that have no unit stay as they are.
std::string in_si(std::string_view text);

} // namespace boardmark::input
