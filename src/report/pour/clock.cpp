#include "clock.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

namespace boardmark::report {
namespace {

constexpr double of_half_a_minute = 1e-6; // half a minute is half a minute
constexpr int minutes_in_day = 24 * minutes_in_hour;

std::string clock_of(int minutes, std::optional<int> start_min) {
    if (!start_min) {
        const int count = std::abs(minutes);
        return fmt::format("{}{}:{:02}", minutes < 0 ? "-" : "", count / minutes_in_hour,
                           count % minutes_in_hour);
    }
    const int from_midnight = *start_min + minutes;
    const int day =
        static_cast<int>(std::floor(static_cast<double>(from_midnight) / minutes_in_day));
    const int of_day = from_midnight - day * minutes_in_day;
    const std::string time =
        fmt::format("{:02}:{:02}", of_day / minutes_in_hour, of_day % minutes_in_hour);
    return day == 0 ? time : fmt::format("{} {:+} d", time, day);
}

} // namespace

std::string clock_text(double hours, std::optional<int> start_min) {
    return clock_of(static_cast<int>(std::lround(minutes_in_hour * hours + of_half_a_minute)),
                    start_min);
}

std::string latest_clock_text(double hours, std::optional<int> start_min) {
    return clock_of(static_cast<int>(std::floor(minutes_in_hour * hours + of_half_a_minute)),
                    start_min);
}

} // namespace boardmark::report
