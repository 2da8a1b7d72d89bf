#include "terminal.hpp"

#include <boardmark/text/wrap.hpp>

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <string_view>

namespace boardmark::commands {
namespace {

constexpr std::size_t unknown_width = 0;

/// COLUMNS where it is a whole number of columns above zero.
std::size_t stated_columns() {
    const char* written = std::getenv("COLUMNS");
    const std::string_view text = written ? written : "";
    constexpr std::size_t most_digits = 6;
    const bool is_number = !text.empty() && text.size() <= most_digits &&
                           text.find_first_not_of("0123456789") == text.npos;
    return is_number ? std::strtoul(text.data(), nullptr, 10) : unknown_width;
}

std::size_t window_columns(int descriptor) {
    struct winsize window {};
    return ::ioctl(descriptor, TIOCGWINSZ, &window) == 0 ? window.ws_col : unknown_width;
}

} // namespace

std::optional<std::size_t> terminal_width(int descriptor) {
    if (::isatty(descriptor) != 1) {
        return std::nullopt;
    }
    const std::size_t stated = stated_columns();
    const std::size_t columns = stated != unknown_width ? stated : window_columns(descriptor);
    return columns == unknown_width
               ? std::nullopt
               : std::optional{std::clamp(columns, narrowest_page, widest_page)};
}

std::string for_standard_error(const std::string& text) {
    const auto width = terminal_width(STDERR_FILENO);
    return width ? text::fitted(text, *width) : text;
}

} // namespace boardmark::commands
