#pragma once

#include <algorithm>
#include <string_view>

namespace boardmark::input {

/// "materials.*" of "materials.*.absorption"; nothing of a key at the top.
inline std::string_view parent_of(std::string_view path) {
    const std::size_t dot = path.rfind('.');
    return dot == std::string_view::npos ? std::string_view{} : path.substr(0, dot);
}

/// "absorption" of "materials.*.absorption".
inline std::string_view last_part(std::string_view path) {
    return path.substr(path.rfind('.') + 1);
}

/// Whether a path as it is written stands at a place of the table of keys:
/// "materials.stone.absorption" at "materials.*.absorption".
inline bool stands_for(std::string_view pattern, std::string_view path) {
    while (!pattern.empty() && !path.empty()) {
        const std::string_view part = pattern.substr(0, pattern.find('.'));
        const std::string_view written = path.substr(0, path.find('.'));
        if (part != "*" && part != written) {
            return false;
        }
        pattern.remove_prefix(std::min(part.size() + 1, pattern.size()));
        path.remove_prefix(std::min(written.size() + 1, path.size()));
    }
    return pattern.empty() && path.empty();
}

} // namespace boardmark::input
