#pragma once

#include <boardmark/core/mix/mix.hpp>

#include <cstddef>

namespace boardmark::report {

/// The widest line of a text that no terminal narrows: of a file, a pipe, a library's string.
constexpr std::size_t page_width = 100;

/// How a text report is written.
struct TextStyle {
    core::UnitSystem system; ///< units shown
    bool explain = false;    ///< adds the reason, the source and the inputs of every value
    bool all = false;        ///< lists the checks that hold, not their count alone
    bool colour = false;
    std::size_t width = page_width; ///< columns of the widest line, at least 60
};

} // namespace boardmark::report
