#pragma once

#include <string>
#include <string_view>

namespace boardmark::text {

/// The text with its ASCII letters small.
std::string lower(std::string_view text);

/// Whether two texts differ at most in the case of their ASCII letters.
bool equal_but_for_case(std::string_view left, std::string_view right);

} // namespace boardmark::text
