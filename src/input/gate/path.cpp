#include "path.hpp"

namespace boardmark::input {

std::string dotted(const Path& path) {
    std::string text;
    for (std::size_t i = 0; i < path.size(); ++i) {
        text += i > 0 ? "." : "";
        text += path[i];
    }
    return text;
}

} // namespace boardmark::input
