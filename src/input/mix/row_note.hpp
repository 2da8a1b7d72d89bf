#pragma once

#include <boardmark/core/code/printed_code.hpp>

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

namespace boardmark::input {

/// A note beside a row of a code's table; empty where it has none of that name.
inline std::string_view note_of(const core::PrintedRow& row, std::string_view name) {
    const auto found =
        std::ranges::find(row.notes, name, &std::pair<std::string, std::string>::first);
    return found == row.notes.end() ? std::string_view{} : std::string_view{found->second};
}

} // namespace boardmark::input
