#include <boardmark/front/input_file.hpp>

namespace boardmark::front {

std::string shown_name(const std::string& path) {
    return path == "-" ? "<stdin>" : path.empty() ? "''" : path;
}

} // namespace boardmark::front
