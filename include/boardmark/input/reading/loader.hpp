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

/// The text of a file, or why there is none.
using Loaded = std::variant<std::string, LoadFailure>;

/// Gets the text of a file that a file names, by its name there: relative to that file. It may be
/// empty: then a file that names another is at fault.
using Loader = std::function<Loaded(const std::string& name)>;

/// What a loader gets, an empty one too.
inline Loaded loaded_by(const Loader& load, const std::string& name) {
    return load ? load(name) : LoadFailure{"this text names another file, and no loader was given"};
}

} // namespace boardmark::input
