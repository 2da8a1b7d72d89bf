#pragma once

#include <string>
#include <string_view>

namespace boardmark::text {

/// The SHA-256 of some bytes, as 64 hexadecimal digits (FIPS 180-4).
std::string sha256(std::string_view bytes);

} // namespace boardmark::text
