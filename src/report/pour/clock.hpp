#pragma once

#include <optional>
#include <string>

namespace boardmark::report {

inline constexpr int minutes_in_hour = 60;

/// A time of the day to the minute: "07:48" where the start is known, else from the start on,
/// "0:48" or "-0:12". The day after has "+1 d".
std::string clock_text(double hours, std::optional<int> start_min);

/// The same for a time that must not be passed: never later than it is.
std::string latest_clock_text(double hours, std::optional<int> start_min);

} // namespace boardmark::report
