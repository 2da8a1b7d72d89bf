#pragma once

#include <string>
#include <string_view>

namespace boardmark::report {

/// A cell to be filled in by hand.
constexpr const char* blank = "________";

/// A cell to be ticked.
constexpr const char* tick_box = "[ ]";

inline bool is_blank_to_fill(std::string_view cell) {
    return !cell.empty() && cell.find_first_not_of('_') == std::string_view::npos;
}

} // namespace boardmark::report
