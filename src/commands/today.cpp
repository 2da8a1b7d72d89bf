#include "today.hpp"

#include <boardmark/units/date.hpp>

#include "failure.hpp"

#include <fmt/format.h>

#include <chrono>

namespace boardmark::commands {

int today_of(const Arguments& arguments) {
    const auto written = arguments.value(today_option.name);
    if (!written) {
        const auto now = std::chrono::system_clock::now();
        return static_cast<int>(
            std::chrono::floor<std::chrono::days>(now).time_since_epoch().count());
    }
    const auto day = units::read_date(*written);
    if (!day) {
        throw wrong_command_line(fmt::format("--today: '{}' is not a date", *written),
                                 "write for example '--today 2026-11-25'");
    }
    return *day;
}

} // namespace boardmark::commands
