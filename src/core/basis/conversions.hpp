#pragma once

namespace boardmark::core {

constexpr double hours_of_day = 24;
constexpr double mm_in_m = 1000;
constexpr double whole_percent = 100;

} // namespace boardmark::core
