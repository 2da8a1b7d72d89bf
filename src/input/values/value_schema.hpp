#pragma once

#include "../fields/fields.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace boardmark::input {

using Schema = nlohmann::ordered_json;

/// A text of a pattern, with the message that an editor shows where it does not match.
Schema matching(const std::string& pattern, const std::string& message);

/// The schema of one value as it is written; the example is for messages. Without one, or where the
/// example is a word, a plain one of the value's form serves.
Schema schema_of_value(const Value& value, std::string_view example);

/// What is written, for a message: "a length (in, ft, mm, m)".
std::string described(const Value& value);

/// A pattern for the key of a table's row, between `^` and `$`.
std::string pattern_of_key(const Value& key);

} // namespace boardmark::input
