#pragma once

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

} // namespace boardmark::input
