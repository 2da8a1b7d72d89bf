#include "figure.hpp"

#include "../writing/finite.hpp"

#include <fmt/format.h>

namespace boardmark::report {

std::string coordinate(double value) {
    return fmt::format("{:.1f}", finite(value));
}

} // namespace boardmark::report
