#pragma once

#include "../fields/fields.hpp"

#include <string>

namespace boardmark::input {

/// What may be written under a key, with the range of its numbers: "a length (in, ft, mm, m), 0 in
/// to 12 in".
std::string value_words(const Field& field);

} // namespace boardmark::input
