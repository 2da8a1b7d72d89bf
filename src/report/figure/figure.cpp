#include "figure.hpp"

#include <fmt/format.h>

namespace boardmark::report {

std::string coordinate(double value) {
    return fmt::format("{:.1f}", value);
}

} // namespace boardmark::report
