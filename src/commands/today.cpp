#include "today.hpp"

#include <boardmark/units/date.hpp>

#include "failure.hpp"

#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <cstdlib>
#include <string_view>

namespace boardmark::commands {

namespace {

/// The clock, or the moment that SOURCE_DATE_EPOCH puts in its place, as reproducible builds do.
std::chrono::seconds seconds_now() {
    const char* fixed = std::getenv("SOURCE_DATE_EPOCH");
    long long seconds = 0;
    if (fixed) {
        const std::string_view text{fixed};
        const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), seconds);
        if (fault == std::errc{} && end == text.data() + text.size()) {
            return std::chrono::seconds{seconds};
        }
    }
    return std::chrono::duration_cast<std::chrono::seconds>(
        std::chrono::system_clock::now().time_since_epoch());
}

} // namespace

int today_of(const Arguments& arguments) {
    const auto written = arguments.value(today_option.name);
    if (!written) {
        const auto now = std::chrono::sys_seconds{seconds_now()};
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
