#include "part_option.hpp"

#include <boardmark/text/closest.hpp>

#include "failure.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {

std::string part_option(const Arguments& arguments, const std::vector<std::string_view>& names) {
    const auto written = arguments.value("wall");
    if (!written) {
        return "";
    }
    if (std::ranges::count(names, std::string_view{*written}) == 0) {
        const auto near = text::closest(*written, names);
        throw wrong_command_line(fmt::format("--wall: the file has no '{}'", *written),
                                 near ? fmt::format("did you mean '{}'?", *near)
                                      : fmt::format("one of '{}'", fmt::join(names, "', '")));
    }
    return *written;
}

} // namespace boardmark::commands
