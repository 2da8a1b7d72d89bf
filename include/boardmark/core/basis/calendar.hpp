#pragma once

#include <chrono>
#include <optional>
#include <string>

namespace boardmark::core {

/// A day of the calendar.
using Day = std::chrono::sys_days;

/// "2027-05-10"
std::string date_text(Day day);

/// The same day some months later or earlier; where that month is too short for it, its last day:
/// a month after 2027-01-31 is 2027-02-28.
///
/// @param months negative: earlier
Day months_after(Day day, int months);

/// Days from one day to another; negative where the other is earlier.
int days_between(Day from, Day to);

} // namespace boardmark::core
