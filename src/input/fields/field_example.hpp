#pragma once

#include "fields.hpp"

#include <string_view>

namespace boardmark::input {

/// What a field's example shows: of `slump: 4 in` the value, of `binder: {cement: 75 %}` the first
/// row, of `stock: [8 ft, 12 ft]` the first item.
struct FieldExample {
    std::string_view key = {}; ///< of a table's row; empty where the example is no table
    std::string_view value = {};
};

FieldExample example_of(const Field& field);

} // namespace boardmark::input
