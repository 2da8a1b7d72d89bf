#pragma once

#include "../fields/fields.hpp"

#include <nlohmann/json.hpp>

#include <string>

namespace boardmark::input {

using Schema = nlohmann::ordered_json;

/// The schema of one value as it is written.
Schema schema_of_value(const Value& value);

/// A pattern for the key of a table's row, between `^` and `$`.
std::string pattern_of_key(const Value& key);

} // namespace boardmark::input
