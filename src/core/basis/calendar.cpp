#include <boardmark/core/basis/calendar.hpp>

#include <array>
#include <cstdio>

namespace boardmark::core {

std::string date_text(Day day) {
    const std::chrono::year_month_day date{day};
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text.data();
}

Day months_after(Day day, int months) {
    const std::chrono::year_month_day date =
        std::chrono::year_month_day{day} + std::chrono::months{months};
    return date.ok() ? Day{date} : Day{date.year() / date.month() / std::chrono::last};
}

int days_between(Day from, Day to) {
    return static_cast<int>((to - from).count());
}

} // namespace boardmark::core
