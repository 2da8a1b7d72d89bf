#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace boardmark::units {

/// Reads `YEAR-MONTH-DAY` (ISO 8601, years 1900 to 2999): days since 1970-01-01. Nothing where the
/// text is no such date or the calendar has no such day.
std::optional<int> read_date(std::string_view text);

/// Writes a day as `2026-03-02`.
std::string written_date(int days);

} // namespace boardmark::units
