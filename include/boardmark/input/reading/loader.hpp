#pragma once

#include <functional>
#include <string>
#include <variant>

namespace boardmark::input {

/// Why another file could not be read.
struct LoadFailure {
    std::string reason;
    std::string advice = {}; ///< what to write or do instead; empty: to check the name
};

/// Gets the text of a file that a file names, by its name there: relative to that file.
using Loader = std::function<std::variant<std::string, LoadFailure>(const std::string& name)>;

} // namespace boardmark::input
